import { rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { Refusal } from './refusal.ts';
import { noFolderFor, notWritable } from './words/refusals.ts';

/**
 * Puts a whole file in its place, or leaves what was there.
 * @throws Refusal in one sentence that names the file.
 */
export async function writeWhole(file: string, folder: string, content: string | Uint8Array): Promise<void> {
  const path = resolve(folder, file);
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    await writeFile(beside, content, { flag: 'wx' });
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') throw new Refusal(noFolderFor(file));
    throw new Refusal(notWritable(file, code));
  }
}
