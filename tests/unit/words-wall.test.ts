import { parseSync } from 'vite';
import { describe, expect, it } from 'vitest';
import { findingWords } from '../../src/harmony/words/finding-sentences.ts';
import { filesUnder, type SourceFile } from '../support/source-tree.ts';

// The rule is ours: sentences stand in the `words` folder of their room, so that a second language is those folders.

const src = filesUnder('src').filter(({ path }) => !path.endsWith('.d.ts'));

/** What findings are called in the code; the sentences on them stand in words. */
const findingNames: ReadonlySet<string> = new Set(Object.keys(findingWords));

/** Texts that are no sentences of the page, and stay where they are: sources, the drawn scenario, a licence. */
const ownTexts = /^src\/(colour\/sources[\w-]*|demo\/.*|workers\/libheif\/notice)\.ts$/;

/** How many sentences still stand beside code, and where. A number here only ever falls, and no file comes in. */
const stillMixed: Readonly<Record<string, number>> = {
  'src/cli/arguments.ts': 13,
  'src/cli/colour-note.ts': 1,
  'src/cli/decode.ts': 3,
  'src/cli/load-libheif.ts': 1,
  'src/cli/read-picture.ts': 1,
  'src/cli/report.ts': 1,
  'src/cli/write-file.ts': 2,
  'src/harmony/reasons/kinship.ts': 3,
  'src/harmony/reasons/other-voices.ts': 1,
  'src/storage/bundle-read.ts': 9,
  'src/storage/bundle-write.ts': 1,
  'src/storage/migrate.ts': 4,
  'src/storage/notebook-file.ts': 8,
  'src/storage/pdf-scene.ts': 2,
  'src/storage/read-records.ts': 3,
  'src/storage/refusal.ts': 5,
  'src/storage/save-records.ts': 1,
  'src/storage/schema-notebook.ts': 1,
  'src/storage/shelf.ts': 1,
  'src/storage/svg-to-png.ts': 2,
  'src/storage/without-metadata.ts': 1,
  'src/storage/zip-directory.ts': 2,
  'src/workbench/book.ts': 1,
  'src/workbench/bundles.ts': 6,
  'src/workbench/drawer-client.ts': 2,
  'src/workbench/kit.ts': 1,
  'src/workbench/open-bundle.ts': 1,
  'src/workbench/read-client.ts': 1,
  'src/workbench/read-files.ts': 3,
  'src/workbench/readings.ts': 2,
  'src/workbench/save-bundle.ts': 1,
  'src/workbench/session.ts': 4,
  'src/workbench/sheet-work.ts': 5,
  'src/workbench/small-picture.ts': 2,
  'src/workers/decode-tiff.ts': 2,
  'src/workers/decode.ts': 4,
  'src/workers/read-worker.ts': 1,
};

describe('the wall around words', () => {
  it('sees sentences in plain strings and in templates, and none in code, names or errors for programmers', () => {
    const found = (code: string) => sentencesIn({ path: 'src/sheet/x.ts', code });
    expect(found("const a = 'This file holds no notebook.';")).toHaveLength(1);
    expect(found(`const a = \`\${b} holds a little too much for \${c}.\`;`)).toHaveLength(1);
    expect(found("say({ text: x ? 'The paper is too small.' : '' });")).toHaveLength(1);
    expect(found("throw new StorageTrouble('torn', 'This file is torn and stays shut.');")).toHaveLength(1);
    expect(found("throw new RangeError('An ink needs a share above 0.');")).toEqual([]);
    expect(found("type A = 'near miss' | 'a b c d e f';")).toEqual([]);
    expect(found("if (kind === 'bright against muted') return 'sky blue';")).toEqual([]);
    expect(found('const a = `<rect width="1" fill="red" class="paper sheet one"/>`;')).toEqual([]);
  });

  it('lets sentences stand in words folders only', () => {
    const mixed = src
      .filter(({ path }) => !isOutside(path))
      .map((file) => [file.path, sentencesIn(file).length] as const)
      .filter(([, count]) => count > 0);
    expect(Object.fromEntries(mixed)).toEqual(stillMixed);
  });
});

function isOutside(path: string): boolean {
  return /\/words\//.test(path) || ownTexts.test(path);
}

/**
 * Texts of four words and more, most of them in lower case, as "line: text". Kinds of findings ("strong contrast of colour")
 * are names. What is thrown as a plain Error, RangeError or TypeError tells a programmer
 * that something was called wrongly, and is no sentence for her; types are no texts.
 */
function sentencesIn({ path, code }: Pick<SourceFile, 'path' | 'code'>): string[] {
  const found: string[] = [];
  const look = (node: unknown): void => {
    if (Array.isArray(node)) node.forEach(look);
    if (!isNode(node) || isForProgrammers(node)) return;
    const text = textOf(node);
    if (text !== null && !findingNames.has(text) && isSentence(text))
      found.push(`${code.slice(0, node.start).split('\n').length}: ${text}`);
    Object.values(node).forEach(look);
  };
  look(parseSync(path, code).program);
  return found;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
}

function isForProgrammers(node: Node): boolean {
  if (/^TS(Type|Interface|Literal|Union|Indexed)/.test(node.type) || node.type.startsWith('Import'))
    return true;
  const thrown = node.type === 'ThrowStatement' && isNode(node.argument) ? node.argument : null;
  const callee = thrown?.type === 'NewExpression' && isNode(thrown.callee) ? thrown.callee : null;
  return /^(Error|RangeError|TypeError)$/.test(String(callee?.name ?? ''));
}

function textOf(node: Node): string | null {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : null;
  if (node.type !== 'TemplateLiteral') return null;
  const pieces = node.quasis as readonly { value: { cooked: string } }[];
  return pieces.map(({ value }) => value.cooked).join(' … ');
}

/** Markup is left out: its tags say nothing to a reader. Names of typefaces begin with capitals. */
function isSentence(text: string): boolean {
  const words = text
    .replace(/<[^>]*>|\b[\w-]+="[^"]*"/g, ' ')
    .split(/\s+/)
    .filter((word) => /^[“"(]?[A-Za-z’'-]+[.,;:?!)”"]*$/.test(word));
  return words.length >= 4 && words.filter((word) => /^[“"(]?[a-z]/.test(word)).length >= 3;
}
