import type { Notebook } from '../../../src/notebook/model.ts';
import { UnreadableImage } from '../../../src/sheet/unreadable.ts';
import { openShelf, type Shelf } from '../../../src/storage/shelf.ts';
import type { Demo } from '../../../src/workbench/demo-client.ts';
import { type ReadClient, ReadingCancelled } from '../../../src/workbench/reading/read-client.ts';
import { Session, type SessionOptions } from '../../../src/workbench/session.ts';
import { handSide } from '../../support/sides.ts';
import { sampleNotebook } from '../notebook/sample-notebook.ts';
import { smallPng } from '../storage/small-pictures.ts';

/** A reader that needs no worker: it looks at the file's first letter. "!" can't be read, "…" waits to be cancelled. */
export function quickReader(): ReadClient {
  const waiting = new Map<string, (error: Error) => void>();
  return {
    async read({ id, bytes }, onProgress) {
      const first = new TextDecoder().decode(new Uint8Array(bytes).subarray(0, 1));
      onProgress?.({ id, kind: 'progress', stage: 'reading', fraction: 0.4 });
      await Promise.resolve();
      if (first === '!') throw new UnreadableImage('This file is not a picture, whatever its name says.');
      if (first === '?') await new Promise<void>((_, reject) => waiting.set(id, reject));
      const side = handSide({
        base: 'cream',
        hex: '#f4e8cd',
        inks: [[first === 'b' ? '#1f3a5f' : '#c23b4e', 0.2]],
      });
      const places = { width: 1, height: 1, labels: Uint8Array.of(1) };
      const picture = { bytes: smallPng().buffer, type: 'image/png' as const, width: 3, height: 2 };
      const done = {
        id,
        kind: 'done' as const,
        side,
        places,
        width: 300,
        height: 200,
        fullWidth: 3000,
        fullHeight: 2000,
        notes: [],
        picture,
        thumb: picture,
      };
      return { side, places, done };
    },
    look: (id) => Promise.resolve({ id, kind: 'looked', corners: null, blocks: [], ratio: 1.5 }),
    cancel: (id) => waiting.get(id)?.(new ReadingCancelled('cancelled')),
    warm: () => {},
    close: () => {},
  };
}

export function demoOf(notebook: Notebook = sampleNotebook()): (id: string) => Promise<Demo> {
  return (id) => Promise.resolve({ notebook: { ...notebook, id }, draw: () => Promise.resolve() });
}

/** A session on a shelf of its own, without a page. */
export function openSession(options: SessionOptions = {}): Promise<Session> {
  return Session.open({
    shelf: options.shelf ?? freshShelf(),
    client: quickReader(),
    makeDemo: demoOf(),
    small: null,
    delayMs: 1,
    retryMs: [5],
    ...options,
  });
}

let count = 0;
export const freshShelf = (): Shelf => openShelf({ name: `shelf-${++count}` });
export const pictureFile = (name: string, text = `a picture called ${name}`): File =>
  new File([text], name, { type: 'image/png' });
