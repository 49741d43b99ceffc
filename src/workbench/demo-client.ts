import type { Held } from '../drawer/model.ts';
import type { Notebook } from '../notebook/model.ts';
import type { Picture } from '../storage/database.ts';
import type { DemoAnswer, DemoRequest } from '../workers/demo-worker.ts';

/** The demo: its notebook at once; its pictures are drawn off the page's thread and arrive one by one. */
export interface Demo {
  readonly notebook: Notebook;
  /** Calls back with each picture; resolves after the last, or when it is stopped. Never rejects: a paper without its picture shows its inks. */
  draw(onPicture: (picture: Picture) => void, signal: AbortSignal): Promise<void>;
}

export async function makeDemo(id: string): Promise<Demo> {
  const { default: notebook } = await import('virtual:demo-notebook');
  return {
    notebook: { ...notebook, id },
    draw: (onPicture, signal) => drawPictures(wantedPictures(notebook), onPicture, signal),
  };
}

/** True for a demo that holds no paper of the reader's own. */
export function isDemo(notebook: Notebook): boolean {
  return (
    notebook.id.startsWith('demo-') &&
    notebook.drawer.sheets.every((sheet) => sheet.sides.A.pictureId?.startsWith('demo-') === true)
  );
}

function drawPictures(
  wanted: DemoRequest,
  onPicture: (picture: Picture) => void,
  signal: AbortSignal,
): Promise<void> {
  return new Promise((resolve) => {
    const worker = new Worker(new URL('../workers/demo-worker.ts', import.meta.url), {
      type: 'module',
      name: 'demo',
    });
    const end = () => {
      worker.terminate();
      resolve();
    };
    worker.onmessage = ({ data }: MessageEvent<DemoAnswer>) => {
      if (data.kind === 'done') end();
      else onPicture({ id: data.id, ...data.picture, thumb: data.thumb, addedAt: new Date().toISOString() });
    };
    worker.onerror = end;
    signal.addEventListener('abort', end);
    worker.postMessage(wanted);
  });
}

/** All pictures of the demo, those of its studies first and in their order. */
function wantedPictures(notebook: Notebook): DemoRequest {
  const shown = notebook.leaves.flatMap((leaf): readonly Held[] =>
    leaf.kind === 'study' ? [...(leaf.anchor === null ? [] : [leaf.anchor]), ...leaf.candidates] : [],
  );
  const rank = (sheetId: string, side: 'A' | 'B') => {
    const at = shown.findIndex((held) => held.kind === 'sheet' && held.id === sheetId && held.side === side);
    return at < 0 ? Infinity : at;
  };
  const all = notebook.drawer.sheets.flatMap((sheet) =>
    (['A', 'B'] as const).flatMap((side) => {
      const pictureId = sheet.sides[side]?.pictureId ?? null;
      return pictureId === null ? [] : [{ pictureId, sheetId: sheet.id, side }];
    }),
  );
  return all.sort((a, b) => {
    const [one, other] = [rank(a.sheetId, a.side), rank(b.sheetId, b.side)];
    return one === other ? 0 : one - other;
  });
}
