import type { Notebook } from '../notebook/model.ts';
import type { Picture } from '../storage/database.ts';
import type { DemoAnswer } from '../workers/demo.worker.ts';

/** The demo as it arrives: its notebook, and later its pictures, which are drawn and packed meanwhile. */
export interface Demo {
  readonly notebook: Notebook;
  readonly pictures: Promise<readonly Picture[]>;
}

/** Draws and reads the demo off the page's thread. @throws Error where the browser has no workers. */
export function makeDemo(
  id: string,
  make: () => Worker = () =>
    new Worker(new URL('../workers/demo.worker.ts', import.meta.url), { type: 'module', name: 'demo' }),
): Promise<Demo> {
  return new Promise((resolve, reject) => {
    const worker = make();
    const arrived: Picture[] = [];
    let allHere: (pictures: readonly Picture[]) => void = () => {};
    const pictures = new Promise<readonly Picture[]>((here) => {
      allHere = here;
    });
    worker.onmessage = ({ data }: MessageEvent<DemoAnswer>) => {
      if (data.kind === 'notebook') resolve({ notebook: { ...data.notebook, id }, pictures });
      else if (data.kind === 'picture') {
        arrived.push({ id: data.id, ...data.picture, thumb: data.thumb, addedAt: new Date().toISOString() });
      } else {
        worker.terminate();
        allHere(arrived);
      }
    };
    worker.onerror = (event) => {
      worker.terminate();
      allHere(arrived);
      reject(new Error(event.message));
    };
  });
}

/** True for a demo that holds no paper of the reader's own. */
export function isDemo(notebook: Notebook): boolean {
  return (
    notebook.id.startsWith('demo-') &&
    notebook.drawer.sheets.every((sheet) => sheet.sides.A.pictureId?.startsWith('demo-') === true)
  );
}
