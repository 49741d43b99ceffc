import type { Plugin } from 'vite';

interface Pair {
  readonly page: Plugin;
  readonly worker: Plugin;
}
export function licences(options?: { readonly more?: readonly string[] }): Pair;
export function pageLicences(): Pair;
export function packageFolder(id: string): string | null;
