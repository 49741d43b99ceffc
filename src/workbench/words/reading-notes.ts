import type { Message } from '../session-types.ts';

/** What was done to pictures as they were opened, gathered so that one sentence is said once for all its files. */
export interface ReadingNotes {
  add(fileName: string, notes: readonly string[]): void;
  /** A message for each note, with the names of its files. */
  say(): readonly string[];
}

/** Files that are named in a message; of more than these only the number is told. Ours. */
const mostNamed = 3;

export function gatherNotes(): ReadingNotes {
  const files = new Map<string, string[]>();
  return {
    add(fileName, notes) {
      for (const note of notes) files.set(note, [...(files.get(note) ?? []), fileName]);
    },
    say: () => [...files].map(([note, names]) => `${namesOf(names)}: ${note}`),
  };
}

function namesOf(names: readonly string[]): string {
  const quoted = names.slice(0, mostNamed).map((name) => `“${name}”`);
  const more = names.length - quoted.length;
  const all = more > 0 ? [...quoted, `${more} more`] : quoted;
  const last = all.pop() ?? '';
  return all.length === 0 ? last : `${all.join(', ')} and ${last}`;
}

/** Files that could not be read, gathered so that one message tells of all of them. */
export interface UnreadFiles {
  add(fileName: string, why: string): void;
  /** Null where there was none. */
  say(): { readonly says: string; readonly more: Pick<Message, 'about' | 'list'> } | null;
}

/** Files that are listed, each with why; of more than these only the number is told. Ours. */
const mostListed = 12;

export function gatherUnread(): UnreadFiles {
  const all: { readonly name: string; readonly line: string }[] = [];
  return {
    add: (name, why) => all.push({ name, line: `“${name}”: ${why}` }),
    say() {
      const [first] = all;
      if (first === undefined) return null;
      if (all.length === 1) return { says: first.line, more: { about: first.name } };
      const more = all.length - mostListed;
      const list = all.slice(0, mostListed).map(({ line }) => line);
      return {
        says: `${all.length} files could not be read.`,
        more: { list: more > 0 ? [...list, `And ${more} more.`] : list },
      };
    },
  };
}
