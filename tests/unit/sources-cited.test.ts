import { parseSync } from 'vite';
import { describe, expect, it } from 'vitest';
import { sources } from '../../src/colour/sources.ts';
import { filesUnder, reachedFrom, type SourceFile } from '../support/source-tree.ts';

// The rule is ours: the list of sources, which the page shows, holds what the page uses, and nothing else.

const files = [...filesUnder('src'), ...filesUnder('components')];
const listed = new Set(sources.map(({ id }) => id));

describe('the list of sources', () => {
  it('is cited by lists of sources and by comments, and by nothing else', () => {
    const cited = (text: string): string[] => citedIn({ path: 'src/sheet/x.ts', text });
    expect(cited("say({ sources: ['oklab', 'munsell'] });")).toEqual(['oklab', 'munsell']);
    expect(cited("say({ sources: a ? ['b-1'] : both, kind: ['c'] });")).toEqual(['b-1']);
    expect(cited("const sources = ['oklab'];")).toEqual(['oklab']);
    expect(cited("const oklab = 'oklab'; // munsell")).toEqual([]);
    expect(cited('/** So. Source: `oklab` for this,\n * `munsell` for that. Else `none`. */')).toEqual([
      'oklab',
      'munsell',
    ]);
  });

  it('holds nothing that no code of the page cites', () => {
    const reached = new Set(
      ['components/shell/main.ts', 'src/demo/notebook.ts'].flatMap((door) => reachedFrom(door, files)),
    );
    const cited = new Set(files.filter(({ path }) => reached.has(path)).flatMap(citedIn));
    expect([...listed].filter((id) => !cited.has(id))).toEqual([]);
  });

  it('holds all that any code cites', () => {
    const unknown = files.flatMap((file) =>
      citedIn(file)
        .filter((id) => !listed.has(id))
        .map((id) => `${file.path} ${id}`),
    );
    expect(unknown).toEqual([]);
  });
});

/**
 * Ids that a file cites: in lists whose name ends in "sources" or "sourceIds", and in comments, in back quotes between
 * "Source:" and the end of the sentence.
 */
function citedIn({ path, text }: Pick<SourceFile, 'path' | 'text'>): string[] {
  if (/^src\/colour\/sources/.test(path)) return [];
  const { program, comments } = parseSync(path, text);
  const found: string[] = [];
  const look = (node: unknown, within: boolean): void => {
    if (Array.isArray(node)) for (const one of node) look(one, within);
    if (typeof node !== 'object' || node === null || !('type' in node)) return;
    const { type, key, id, elements } = node as Record<string, unknown>;
    const isList = within || /sources$|sourceIds$/i.test(nameOf(key) ?? nameOf(id) ?? '');
    if (type === 'ArrayExpression' && isList) for (const one of elements as unknown[]) take(one);
    for (const part of Object.values(node)) look(part, isList);
  };
  const take = (one: unknown): void => {
    const value = (one as { value?: unknown } | null)?.value;
    if (typeof value === 'string') found.push(value);
  };
  look(program, false);
  for (const { value } of comments) {
    for (const [, said] of value.matchAll(/Source:([^.]*)/g))
      for (const [, id] of said!.matchAll(/`([a-z0-9-]+)`/g)) found.push(id!);
  }
  return found;
}

function nameOf(node: unknown): string | null {
  return typeof node === 'object' && node !== null && 'name' in node ? String(node.name) : null;
}
