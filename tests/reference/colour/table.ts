import { readFileSync } from 'node:fs';

/** Rows of a table under reference-data, each by its column names. */
export function table(path: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../../../reference-data/${path}`, import.meta.url), 'utf8');
  const [head, ...lines] = text.trim().split('\n');
  const names = head!.trim().split(',');
  return lines.map((line) =>
    Object.fromEntries(
      line
        .trim()
        .split(',')
        .map((cell, i) => [names[i]!, cell]),
    ),
  );
}

/** The same with every cell a number. */
export function numbers(path: string): Record<string, number>[] {
  return table(path).map((row) =>
    Object.fromEntries(Object.entries(row).map(([name, cell]) => [name, Number(cell)])),
  );
}
