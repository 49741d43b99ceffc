import { parseSync } from 'vite';

/** One change to a file: where, what it was, what it is now, and the whole text with it. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly was: string;
  readonly now: string;
  readonly text: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

interface Change {
  readonly start: number;
  readonly end: number;
  readonly now: string;
}

const turned: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '&&': ['||'],
  '||': ['&&'],
};

/** Every mutant of a file, in the order of its text. Types, texts, errors thrown and tables of data are left alone. */
export function mutantsOf(file: string, text: string): Mutant[] {
  const changes: Change[] = [];
  collect(parseSync(file, text).program as unknown as Node, text, changes, null);
  changes.sort((one, other) => one.start - other.start || one.end - other.end);
  return changes
    .map(({ start, end, now }) => ({
      file,
      line: text.slice(0, start).split('\n').length,
      was: short(text.slice(start, end)),
      now: short(now),
      text: text.slice(0, start) + now + text.slice(end),
    }))
    .filter((mutant) => parseSync(file, mutant.text).errors.length === 0);
}

function collect(node: Node, text: string, changes: Change[], parent: Node | null): void {
  if (isLeftAlone(node)) return;
  changes.push(...changesAt(node, text, parent));
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (child && typeof (child as Node).type === 'string') collect(child as Node, text, changes, node);
    }
  }
}

function isLeftAlone(node: Node): boolean {
  if (/^(TS(?!AsExpression|SatisfiesExpression|NonNullExpression)|Import|ExportAll|Throw)/.test(node.type))
    return true;
  return node.type === 'ArrayExpression' && isTable(node);
}

/** Eight literals and more, or rows of them: data that was measured elsewhere. */
function isTable(node: Node): boolean {
  const flat = literalsOf(node);
  return flat !== null && flat >= 8;
}

function literalsOf(node: Node): number | null {
  if (node.type === 'Literal') return 1;
  if (node.type === 'UnaryExpression') return literalsOf(node.argument as Node);
  if (node.type !== 'ArrayExpression') return null;
  const counts = (node.elements as Node[]).map((one) => (one ? literalsOf(one) : null));
  return counts.includes(null) ? null : counts.reduce<number>((sum, one) => sum + one!, 0);
}

function changesAt(node: Node, text: string, parent: Node | null): Change[] {
  const of = (part: unknown) => text.slice((part as Node).start, (part as Node).end);
  const whole = (now: string): Change => ({ start: node.start, end: node.end, now });
  switch (node.type) {
    case 'BinaryExpression':
    case 'LogicalExpression': {
      const sign = node.operator as string;
      if (sign === '??') return [whole(of(node.left))];
      if (sign === '+' && isText(node)) return [];
      return (turned[sign] ?? []).map((now) => whole(`(${of(node.left)}) ${now} (${of(node.right)})`));
    }
    case 'AssignmentExpression': {
      const now = { '+=': '-=', '-=': '+=', '*=': '/=', '/=': '*=' }[node.operator as string];
      return now ? [whole(`${of(node.left)} ${now} ${of(node.right)}`)] : [];
    }
    case 'IfStatement':
    case 'ConditionalExpression': {
      const test = node.test as Node;
      const negated: Change = { start: test.start, end: test.end, now: `!(${of(test)})` };
      const leaves = node.type === 'IfStatement' && !node.alternate && leavesEarly(node.consequent as Node);
      return leaves ? [negated, whole(';')] : [negated];
    }
    case 'ExpressionStatement':
      return (node.expression as Node).type === 'CallExpression' ? [whole(';')] : [];
    case 'Literal':
      return literal(node, parent).map(whole);
    case 'MemberExpression': {
      const { object, property } = node as unknown as { object: Node; property: Node };
      const other = { min: 'max', max: 'min' }[property.name as string];
      const isMath = object.type === 'Identifier' && object.name === 'Math';
      return other && isMath ? [{ start: property.start, end: property.end, now: other }] : [];
    }
    default:
      return [];
  }
}

function literal(node: Node, parent: Node | null): string[] {
  if (typeof node.value === 'boolean') return [String(!node.value)];
  // Below a millionth a number only keeps rounding or a division by zero away.
  if (typeof node.value !== 'number' || (node.value !== 0 && node.value < 1e-6)) return [];
  if (parent?.type === 'Property' && parent.key === node) return [];
  const { value } = node;
  if (!Number.isInteger(value) || value > 20)
    return [1.2, 1 / 1.2].map((by) => String(Number((value * by).toPrecision(8))));
  return value === 0 ? ['1'] : [String(value + 1), String(value - 1)];
}

function leavesEarly(node: Node): boolean {
  const last = node.type === 'BlockStatement' ? (node.body as Node[]).at(-1) : node;
  return last !== undefined && ['ReturnStatement', 'ContinueStatement', 'BreakStatement'].includes(last.type);
}

function isText(node: Node): boolean {
  return [node.left, node.right].some((one) => {
    const part = one as Node;
    return part.type === 'TemplateLiteral' || (part.type === 'Literal' && typeof part.value === 'string');
  });
}

const short = (text: string) => text.replace(/\s+/g, ' ').slice(0, 110);
