import { unzipSync, zipSync } from 'fflate';
import { readBundle } from '../../src/storage/bundle/bundle-read.ts';
import { writeBundle } from '../../src/storage/bundle/bundle-write.ts';
import { StorageTrouble } from '../../src/storage/words/trouble.ts';
import { chanceOf } from '../support/chance.ts';
import { sampleNotebook } from '../unit/notebook/sample-notebook.ts';
import { joinedBytes, smallPng } from '../unit/storage/small-pictures.ts';

const times = Number(process.env.QUIREWISE_DAMAGES ?? 10_000);
const seed = Number(process.env.QUIREWISE_SEED ?? 1);

type Random = () => number;
const below = (random: Random, n: number) => Math.floor(random() * n);

/** Each takes a sound bundle and gives one that is not. */
const harms: Readonly<Record<string, (bytes: Uint8Array, random: Random) => Uint8Array>> = {
  'bytes changed': (bytes, random) => {
    for (let n = 1 + below(random, 8); n > 0; n--) bytes[below(random, bytes.length)] = below(random, 256);
    return bytes;
  },
  'bytes of the directory changed': (bytes, random) => {
    const from = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).indexOf(
      'PK\u0001\u0002',
      0,
      'latin1',
    );
    for (let n = 1 + below(random, 6); n > 0; n--)
      bytes[from + below(random, bytes.length - from)] = [0, 1, 0x7f, 0x80, 0xff, below(random, 256)][
        below(random, 6)
      ]!;
    return bytes;
  },
  'broken off': (bytes, random) => bytes.subarray(0, below(random, bytes.length)),
  'a piece taken out': (bytes, random) => {
    const from = below(random, bytes.length);
    return joinedBytes([bytes.subarray(0, from), bytes.subarray(from + 1 + below(random, 200))]);
  },
  'a piece put in twice': (bytes, random) => {
    const from = below(random, bytes.length);
    const to = from + 1 + below(random, 400);
    return joinedBytes([bytes.subarray(0, to), bytes.subarray(from)]);
  },
  'values of the notebook changed': (bytes, random) => {
    const files = unzipSync(bytes);
    const file = JSON.parse(new TextDecoder().decode(files['notebook.json'])) as { notebook: unknown };
    for (let n = 1 + below(random, 4); n > 0; n--) spoilValue(random() < 0.1 ? file : file.notebook, random);
    return zipSync({ ...files, 'notebook.json': new TextEncoder().encode(JSON.stringify(file)) });
  },
  'a picture’s bytes changed, with its checksum right': (bytes, random) => {
    const files = unzipSync(bytes);
    const name = Object.keys(files).filter((one) => one.startsWith('pictures/'))[below(random, 3)]!;
    const picture = files[name]!.slice();
    for (let n = 1 + below(random, 3); n > 0; n--)
      picture[below(random, picture.length)] = below(random, 256);
    return zipSync({
      ...files,
      [name]: random() < 0.3 ? picture.subarray(0, below(random, picture.length)) : picture,
    });
  },
};

const strange: readonly unknown[] = [
  null,
  true,
  -1,
  0,
  1e308,
  1e-9,
  '',
  '\u202E',
  '__proto__',
  'x'.repeat(5_000),
  [],
  {},
  [[]],
  { kind: 'sheet' },
  '../../x',
  'pictures/1.png',
  { __proto__: null, constructor: 1 },
];

/** Changes one value somewhere in a tree. */
function spoilValue(tree: unknown, random: Random): void {
  let at = tree as Record<string, unknown>;
  for (;;) {
    const keys = Object.keys(at);
    if (keys.length === 0) return;
    const key = keys[below(random, keys.length)]!;
    const next = at[key];
    if (typeof next === 'object' && next !== null && Object.keys(next).length > 0 && random() < 0.85) {
      at = next as Record<string, unknown>;
      continue;
    }
    if (random() < 0.25) delete at[key];
    else at[key] = strange[below(random, strange.length)];
    return;
  }
}

/**
 * Sound bundles harmed in all these ways by chance: each must end in one sentence, or open as a notebook of which a backup
 * opens again. What was handed on before a refusal is counted: whoever takes pictures must let go of those.
 */
export async function bench(print: (line: string) => void): Promise<void> {
  const png = smallPng();
  const picture = (id: string) =>
    Promise.resolve({
      id,
      bytes: png.buffer,
      type: 'image/png' as const,
      width: 3,
      height: 2,
      thumb: null,
      addedAt: '',
    });
  const source = { picture, isDecodable: () => Promise.resolve(true) };
  const write = async (notebook: Parameters<typeof writeBundle>[0], more = {}) => {
    const parts: Uint8Array<ArrayBuffer>[] = [];
    await writeBundle(notebook, { ...source, ...more }, (part) => void parts.push(part));
    return joinedBytes(parts);
  };
  const whole = await write(sampleNotebook());
  const kinds = Object.entries(harms);
  const random = chanceOf(seed);
  const sentences = new Map<string, number>();
  const tally = { refused: 0, opened: 0, aside: 0, bad: 0 };
  for (let n = 0; n < times; n++) {
    const [name, harm] = kinds[n % kinds.length]!;
    const harmed = harm(whole.slice(), random);
    let count = 0;
    const taker = {
      newId: (kind: string) => `${kind}-${++count}`,
      thumb: () => Promise.resolve(null),
      put: () => Promise.resolve(),
    };
    try {
      const { notebook, setAside } = await readBundle(new Blob([harmed.slice()]), taker);
      const again = await readBundle(new Blob([await write(notebook, { setAside })]), taker);
      if (again.setAside.length !== setAside.length)
        throw new Error('another number was set aside the second time');
      tally[setAside.length > 0 ? 'aside' : 'opened']++;
    } catch (error) {
      if (error instanceof StorageTrouble) {
        tally.refused++;
        const says = error.message.replace(/\d+/g, '…').replace(/\(.*\)/, '');
        sentences.set(says, (sentences.get(says) ?? 0) + 1);
      } else {
        tally.bad++;
        print(`NO SENTENCE (${name}, number ${n}): ${String(error)}`);
      }
    }
  }
  print(`${times} bundles harmed in ${kinds.length} ways, seed ${seed}:`);
  print(
    `${tally.refused} refused in a sentence, ${tally.opened} opened whole, ${tally.aside} opened with something set aside, ${tally.bad} neither`,
  );
  for (const [says, n] of [...sentences].sort((a, b) => b[1] - a[1]))
    print(`${String(n).padStart(6)}  ${says}`);
}
