import { describe, expect, it } from 'vitest';
import { filesUnder, sourceFile } from '../support/source-tree.ts';

/** What elements say to each other and to the page: the map of it against the code. No outside source; it is our own. */

const map = sourceFile('components/support/events.ts');
const names = [...map.code.matchAll(/^ {2}'(qw-[\w-]+)':/gm)].map((match) => match[1]!);
const code = filesUnder('components')
  .filter(({ path }) => path !== map.path && !/\/alone[\w-]*\.ts$|support\/(show|sample)-/.test(path))
  .map((file) => file.code)
  .join('\n');

/** The same without names of elements and without what only hears. */
const said = code
  .replace(/@customElement\('[^']*'\)/g, '')
  .replace(/addEventListener\('[^']*'/g, '')
  .replace(/^\s*'qw-[\w-]+':.*$/gm, '');

describe('what elements say', () => {
  it('is listed once, each name in its place', () => {
    expect(names.length).toBeGreaterThan(60);
    expect(new Set(names).size).toBe(names.length);
  });

  it('is heard by somebody', () => {
    const heard = (name: string) =>
      new RegExp(`@${name}=|^\\s*'${name}':|addEventListener\\('${name}'`, 'm').test(code);
    expect(names.filter((name) => !heard(name))).toEqual([]);
  });

  it('is said by somebody', () => {
    // What a message offers is said by a name that is put together: its two names stand there as words.
    const offered = ['qw-undo', 'qw-reload'];
    expect(said).toMatch(/`qw-\$\{offers\}`/);
    expect(names.filter((name) => !offered.includes(name) && !said.includes(`'${name}'`))).toEqual([]);
  });

  it('is answered by one command each', () => {
    const answered = filesUnder('components/shell').flatMap((file) =>
      [...file.code.matchAll(/^ {2}'(qw-[\w-]+)':/gm)].map((match) => match[1]!),
    );
    expect(answered.filter((name, i) => answered.indexOf(name) !== i)).toEqual([]);
  });
});
