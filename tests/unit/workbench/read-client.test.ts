import { describe, expect, it } from 'vitest';
import { ReadingCancelled, startReadClient } from '../../../src/workbench/reading/read-client.ts';
import type { ReadAnswer, ReadRequest } from '../../../src/workers/messages.ts';

/** Workers that answer when they are told to. */
function workersInHand() {
  const made: HandWorker[] = [];
  const make = () => {
    const worker = new HandWorker();
    made.push(worker);
    return worker as unknown as Worker;
  };
  return { make, made };
}

class HandWorker {
  readonly asked: string[] = [];
  isEnded = false;
  onmessage: ((event: { data: ReadAnswer }) => void) | null = null;
  onerror: (() => void) | null = null;
  postMessage({ id }: ReadRequest): void {
    this.asked.push(id);
  }
  terminate(): void {
    this.isEnded = true;
  }
  fail(id: string): void {
    this.onmessage?.({ data: { id, kind: 'failed', says: `no ${id}` } });
  }
}

const small = () => new ArrayBuffer(4);
/** The head of a PNG of 24 megapixels. */
function large(): ArrayBuffer {
  const bytes = new Uint8Array(24);
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  new DataView(bytes.buffer).setUint32(16, 6000);
  new DataView(bytes.buffer).setUint32(20, 4000);
  return bytes.buffer;
}

function started(lanes: number) {
  const { make, made } = workersInHand();
  const client = startReadClient(make, lanes);
  const ends = new Map<string, string>();
  const ask = (id: string, bytes = small()) => {
    client.read({ id, bytes, options: {} }).catch((error: Error) => {
      ends.set(id, error instanceof ReadingCancelled ? 'cancelled' : error.message);
    });
  };
  const asked = () => made.map((worker) => worker.asked.join(' '));
  return { client, made, ask, asked, ends };
}
const turn = () => new Promise((next) => setTimeout(next));

describe('two workers', () => {
  it('read two pictures at the same time, and what waits goes to whichever is free', async () => {
    const { made, ask, asked, ends } = started(2);
    for (const id of ['a', 'b', 'c', 'd']) ask(id);
    expect(asked()).toEqual(['a', 'b']);
    made[1]!.fail('b');
    made[1]!.fail('c');
    await turn();
    expect(asked()).toEqual(['a', 'b c d']);
    expect([...ends]).toEqual([
      ['b', 'no b'],
      ['c', 'no c'],
    ]);
  });

  it('open one picture at a time of those that are reduced as they are opened; small ones pass them', async () => {
    const { made, ask, asked } = started(2);
    ask('large', large());
    ask('other large', large());
    ask('small');
    expect(asked()).toEqual(['large', 'small']);
    made[1]!.fail('small');
    expect(asked()).toEqual(['large', 'small']);
    made[0]!.fail('large');
    expect(asked()).toEqual(['large other large', 'small']);
  });

  it('are ended one by one: cancelling stops only the one that has that reading', async () => {
    const { client, made, ask, asked, ends } = started(2);
    for (const id of ['a', 'b', 'c']) ask(id);
    client.cancel('a');
    await turn();
    expect(made.map((worker) => worker.isEnded)).toEqual([true, false, false]);
    expect(asked()).toEqual(['a', 'b', 'c']);
    expect([...ends]).toEqual([['a', 'cancelled']]);
    made[0]!.fail('a');
    made[1]!.fail('b');
    await turn();
    expect(ends.get('b')).toBe('no b');
  });

  it('are as many as there is work for, and both are there once they are warm', () => {
    const { client, made, ask } = started(2);
    ask('a');
    expect(made).toHaveLength(1);
    client.warm();
    expect(made).toHaveLength(2);
    client.close();
    expect(made.every((worker) => worker.isEnded)).toBe(true);
  });
});

describe('one worker', () => {
  it('takes one picture after the other, and goes on with the next where one stops it', async () => {
    const { made, ask, asked, ends } = started(1);
    ask('a');
    ask('b');
    expect(asked()).toEqual(['a']);
    made[0]!.onerror?.();
    await turn();
    expect(ends.get('a')).toContain('the reader stopped');
    expect(asked()).toEqual(['a', 'b']);
  });
});
