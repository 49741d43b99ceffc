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
    expect(found("reject(new Error('what looks through it has stopped'));")).toEqual([]);
    expect(found(`const a = \`M\${x} \${y}h\${b} v \${c} h \${d} Z\`;`)).toEqual([]);
    expect(found('const a = `<rect width="1" fill="red" class="paper sheet one"/>`;')).toEqual([]);
  });

  it('lets sentences stand in words folders only', () => {
    const beside = src.filter(({ path }) => !isOutside(path));
    expect(beside.flatMap((file) => sentencesIn(file).map((text) => `${file.path}:${text}`))).toEqual([]);
  });
});

function isOutside(path: string): boolean {
  return /\/words\//.test(path) || ownTexts.test(path);
}

/**
 * Texts of four words and more, most of them in lower case, as "line: text". Kinds of findings ("strong contrast of colour")
 * are names. A plain Error, RangeError or TypeError tells a programmer
 * that something went or was called wrongly, and is no sentence for her; types are no texts.
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
  const callee = node.type === 'NewExpression' && isNode(node.callee) ? node.callee : null;
  return /^(Error|RangeError|TypeError)$/.test(String(callee?.name ?? ''));
}

function textOf(node: Node): string | null {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : null;
  if (node.type !== 'TemplateLiteral') return null;
  const pieces = node.quasis as readonly { value: { cooked: string } }[];
  return pieces.map(({ value }) => value.cooked).join(' … ');
}

/** Markup is left out: its tags say nothing to a reader. Names of typefaces begin with capitals; steps of a path are letters. */
function isSentence(text: string): boolean {
  const words = text
    .replace(/<[^>]*>|\b[\w-]+="[^"]*"/g, ' ')
    .split(/\s+/)
    .filter((word) => /^[“"(]?[A-Za-z’'-]+[.,;:?!)”"]*$/.test(word));
  if (words.every((word) => word.length === 1)) return false;
  return words.length >= 4 && words.filter((word) => /^[“"(]?[a-z]/.test(word)).length >= 3;
}
