// Gathers the licences of every package that ends up in what is built, and puts them beside it as licences.txt.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { root } from './fresh.mjs';

/** In the service worker, which is put together after everything else, by its own tool. */
const inServiceWorker = ['workbox-core', 'workbox-precaching', 'workbox-routing', 'workbox-strategies'];

/**
 * Two plugins that share what they find: `page` for a build, and `worker` for the builds of its workers, which come first.
 * @param {{ more?: readonly string[] }} [options] packages that are shipped without being modules of the build.
 */
export function licences({ more = [] } = {}) {
  const found = new Set(more.map((name) => join(root, 'node_modules', name)));
  const look = (bundle) => {
    for (const part of Object.values(bundle)) {
      for (const id of part.type === 'chunk' ? part.moduleIds : part.originalFileNames) note(id);
    }
  };
  const note = (id) => {
    const folder = packageFolder(id);
    if (folder !== null) found.add(folder);
  };
  return {
    worker: { name: 'licences-of-workers', generateBundle: (_, bundle) => look(bundle) },
    page: {
      name: 'licences',
      // Style sheets are no modules any more when the files are written.
      transform: { filter: { id: /\.css/ }, handler: (_, id) => note(id) },
      generateBundle(_, bundle) {
        look(bundle);
        this.emitFile({ type: 'asset', fileName: 'licences.txt', source: licenceText([...found]) });
      },
    },
  };
}

/** The same for the page, which has a service worker. */
export const pageLicences = () => licences({ more: inServiceWorker });

/** The folder of the package that a module belongs to: the innermost, where packages lie in packages; null for our own. */
export function packageFolder(id) {
  // Made-up modules begin with a null character; a question follows where a file is not taken as it is.
  const path = resolve(root, id.replace(/^\0/, '').replace(/[?#].*$/, '')).replaceAll('\\', '/');
  const [folder] = /^.*\/node_modules\/(?:@[^/]+\/)?[^/@.][^/]*/.exec(path) ?? [];
  return folder === undefined || !existsSync(join(folder, 'package.json')) ? null : folder;
}

const mitText = readFileSync(join(root, 'LICENSE'), 'utf8').trim();

function licenceText(folders) {
  const ours = [`Quirewise\nLicence: MIT\n\n${mitText}`];
  const line = `\n\n${'-'.repeat(80)}\n\n`;
  return `What Quirewise is made of, with the licence of each part.\n\n${[...ours, ...folders.map(entry).sort()].join(line)}\n`;
}

function entry(folder) {
  const { name, version, license, author, homepage } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  );
  const texts = [folder, join(folder, 'libheif-wasm')].filter(existsSync).flatMap((place) =>
    readdirSync(place)
      .filter((file) => /^(licen[cs]e|copying|notice)/i.test(file))
      .map((file) => readFileSync(join(place, file), 'utf8').trim()),
  );
  const by = (typeof author === 'string' ? author : author?.name)?.replace(/\s*<.*>/, '');
  // Where a package names the licence and does not bring its text, the text is the same as of our own.
  if (texts.length === 0 && license === 'MIT')
    texts.push(mitText.replace(/^Copyright.*$/m, `Copyright (c) ${by ?? `the authors of ${name}`}`));
  if (texts.length === 0) throw new Error(`${name} brings no licence.`);
  const head = [`${name} ${version}`, `Licence: ${license ?? 'see below'}`];
  if (by) head.push(`By: ${by}`);
  if (homepage) head.push(`From: ${homepage}`);
  return [head.join('\n'), ...new Set(texts)].join('\n\n');
}
