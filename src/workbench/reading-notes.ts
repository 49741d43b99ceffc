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
