// The order in which test files start: whole readers at the page first, then by size, so that what takes longest does
// not begin when all else is done. The runner's own order goes by times that a fresh clone has not measured yet.
import { statSync } from 'node:fs';

export class LongFirst {
  sort(files) {
    const rank = ({ project, moduleId }) => (project.name === 'e2e' ? 1e9 : 0) + statSync(moduleId).size;
    return [...files].sort((one, other) => rank(other) - rank(one));
  }

  shard() {
    throw new Error('The tests are not shared out among machines.');
  }
}
