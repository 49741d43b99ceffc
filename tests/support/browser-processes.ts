import { readdirSync, readFileSync } from 'node:fs';

export interface Process {
  readonly id: string;
  readonly command: string;
}

/** Processes of the browser with this profile, where the system tells of them (Linux); none elsewhere. */
export function processesOf(profile: string): readonly Process[] {
  try {
    const all = readdirSync('/proc')
      .filter((name) => /^\d+$/.test(name))
      .flatMap((id): (Process & { parent: string })[] => {
        try {
          const parent = /^PPid:\s+(\d+)/m.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1] ?? '';
          return [{ id, parent, command: readFileSync(`/proc/${id}/cmdline`, 'utf8').replaceAll('\0', ' ') }];
        } catch {
          return [];
        }
      });
    const found = all.filter(({ command }) => command.includes(profile)).map(({ id }) => id);
    const family = new Set(found);
    for (let before = -1; before !== family.size; ) {
      before = family.size;
      for (const { id, parent } of all) if (family.has(parent)) family.add(id);
    }
    return all.filter(({ id }) => family.has(id));
  } catch {
    return [];
  }
}

export function isPage({ command }: Process): boolean {
  return command.includes('--type=renderer');
}
