import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's root, absolute. */
export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** One import, export-from or import() of a source file. */
export interface Import {
  /** As written. */
  readonly to: string;
  /** The file it leads to, from the root with forward slashes, or null where it is a package. */
  readonly file: string | null;
  readonly typeOnly: boolean;
  readonly line: number;
}

export interface SourceFile {
  /** From the root, with forward slashes. */
  readonly path: string;
  readonly text: string;
  /** The text with its comments blanked out; lines and columns stay where they were. */
  readonly code: string;
  readonly imports: readonly Import[];
}

/** Every file with one of these endings under a folder, sorted by path; none where the folder is missing. */
export function filesUnder(folder: string, endings: readonly string[] = ['.ts']): readonly SourceFile[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort()
    .map(sourceFile);
}

export function sourceFile(path: string): SourceFile {
  const text = readFileSync(join(root, path), 'utf8');
  const code = blankComments(text);
  return { path, text, code, imports: importsOf(path, code) };
}

/** `path:line text` of every match of a pattern in the code of these files. */
export function matches(
  files: readonly SourceFile[],
  pattern: RegExp,
  of: 'code' | 'text' = 'code',
): string[] {
  return files.flatMap((file) =>
    [...file[of].matchAll(new RegExp(pattern, withG(pattern.flags)))].map(
      (match) => `${file.path}:${lineAt(file[of], match.index)} ${match[0].trim()}`,
    ),
  );
}

/** The quoted strings of a file's code, with their lines; a template gives its literal pieces. */
export function stringsOf(file: SourceFile): { text: string; line: number }[] {
  const strings = [...file.code.matchAll(/'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g)];
  return strings.map((match) => ({
    text: (match[1] ?? match[2] ?? match[3] ?? '').replace(/\$\{[^}]*\}/g, ' '),
    line: lineAt(file.code, match.index),
  }));
}

/** Every import in code without comments. */
export function importsOf(path: string, code: string): Import[] {
  const pattern =
    /(?:^|[;}\s])(?:(import|export)\s+(type\s)?(?:[\w*{][^'"`;=()]*?\sfrom\s*)?|import\s*\(\s*)['"]([^'"\n]+)['"]/g;
  return [...code.matchAll(pattern)].map((match) => {
    const to = match[3]!.replace(/\?.*$/, '');
    const typeOnly = match[2] !== undefined || /^\s*import\s*\{(\s*type\s+\w+[^,}]*,?)+\s*\}/.test(match[0]);
    const file = to.startsWith('.') ? join(dirname(path), to).split(sep).join('/') : null;
    return { to, file, typeOnly, line: lineAt(code, match.index + match[0].length) };
  });
}

/** Comments become blanks, so that lines and columns stay. */
export function blankComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\/|(?<![:'"`\\])\/\/[^\n]*/g, (comment) =>
    comment.replace(/[^\n]/g, ' '),
  );
}

function lineAt(text: string, index: number): number {
  return text.slice(0, index).split('\n').length;
}

function withG(flags: string): string {
  return flags.includes('g') ? flags : `${flags}g`;
}

/** Every one of these files that a file leads to, however far, by imports and by the workers that it starts. */
export function reachedFrom(path: string, files: readonly SourceFile[]): string[] {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const reached = new Set([path]);
  for (const at of reached) {
    const file = byPath.get(at);
    for (const link of file?.imports ?? []) if (link.file) reached.add(link.file);
    for (const worker of workersOf(file)) reached.add(worker);
  }
  return [...reached];
}

/** Workers that a file starts: they are named by an address, not imported. */
function workersOf(file: SourceFile | undefined): string[] {
  const named = [...(file?.code.matchAll(/new URL\('([^']+\.ts)', import\.meta\.url\)/g) ?? [])];
  return named.map((match) => join(dirname(file!.path), match[1]!));
}
