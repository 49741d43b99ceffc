import type { TestSequencer } from 'vitest/node';

export class LongFirst implements TestSequencer {
  sort: TestSequencer['sort'];
  shard: TestSequencer['shard'];
}
