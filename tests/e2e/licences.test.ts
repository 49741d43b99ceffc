import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { packageFolder } from '../../.ci/licences.mjs';
import { root } from '../support/source-tree.ts';

const text = readFileSync(join(inject('pageFolder'), 'licences.txt'), 'utf8');
const entries = text.split(/^-{80}$/m).map((entry) => entry.trim());
const entryOf = (name: string) =>
  entries.find((entry) => new RegExp(`^${name} \\d`).test(entry)) ?? `no ${name}`;

describe('the licences beside the built page', () => {
  // Held against the packages that package.json names; two of them are for the terminal alone.
  const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  const shipped = Object.keys(dependencies).filter((name) => !['sharp', '@resvg/resvg-js'].includes(name));
  it.each(shipped)('name %s, with words of its own licence', (name) => {
    expect(entryOf(name)).toMatch(/permi(t|ssion)|redistribution/i);
    expect(entryOf(name)).toMatch(/warranty|warranties/i);
  });

  it.each(['lit-html', '@lit/reactive-element', 'pako', 'tslib', 'd3-interpolate', 'workbox-precaching'])(
    'name %s, which others bring along',
    (name) => expect(entryOf(name)).toMatch(/warranty|warranties/i),
  );

  it('hold the whole of the longer licences', () => {
    expect(entryOf('@fontsource/literata')).toContain('SIL OPEN FONT LICENSE Version 1.1');
    expect(entryOf('libheif-js')).toContain('GNU LESSER GENERAL PUBLIC LICENSE');
    expect(entryOf('chroma-js')).toContain('Apache');
  });

  it('do not name what is only used for building', () => {
    for (const name of ['vite', 'typescript', 'playwright', 'axe-core'])
      expect(entryOf(name)).toBe(`no ${name}`);
  });
});

describe('the package of a module', () => {
  const of = (id: string) =>
    packageFolder(id)
      ?.slice(root.length + 1)
      .replaceAll('\\', '/') ?? null;
  it('is the innermost one, wherever the module lies in it', () => {
    expect(of(join(root, 'node_modules/lit/index.js'))).toBe('node_modules/lit');
    expect(of(`\0${join(root, 'node_modules/@pdf-lib/fontkit/dist/fontkit.es.js')}?commonjs-proxy`)).toBe(
      'node_modules/@pdf-lib/fontkit',
    );
    expect(of('node_modules/lit/x.css?inline')).toBe('node_modules/lit');
    expect(of(join(root, 'src/index.ts'))).toBeNull();
    expect(of('virtual:demo-notebook')).toBeNull();
  });
});
