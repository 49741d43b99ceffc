import type { Notebook } from '../../src/notebook/model.ts';
import type { Session } from '../../src/workbench/session-types.ts';

/** What runs in the page while it is being killed. Each function stands alone: it is sent there as text. */

/** What the page had called saved. */
export interface Noted {
  readonly id: string;
  readonly text: string;
  readonly sheets: readonly string[];
  readonly parts: readonly string[];
}

/** What stands there once it is opened again. */
export interface Found extends Noted {
  readonly choices: number;
  readonly setAside: number;
  readonly messages: readonly string[];
  readonly kept: readonly { readonly id: string; readonly title: string | null }[];
}

type App = Element & { readonly session: Session | null };

export function isOpen(): boolean {
  const app = document.querySelector('qw-app') as App | null;
  return app?.session?.state.notebook.leaves.some(({ id }) => id === 'leaf-note') ?? false;
}

/** Tells `told` of every state that the page calls saved, within 15 ms. */
export function tellSaved(told: string): void {
  let before: Notebook | null = null;
  setInterval(() => {
    const { session } = document.querySelector('qw-app') as App;
    const { notebook, saving } = session!.state;
    if (saving.status !== 'saved' || notebook === before) return;
    before = notebook;
    const note = notebook.leaves.find(({ id }) => id === 'leaf-note');
    const say = (window as unknown as Record<string, (noted: Noted) => void>)[told]!;
    say({
      id: notebook.id,
      text: note?.kind === 'note' ? note.text : '',
      sheets: notebook.drawer.sheets.slice(-40).map(({ id }) => id),
      parts: notebook.drawer.parts.slice(-40).map(({ id }) => id),
    });
  }, 15);
}

/** Something done beside the typing: a picture added, a part cut, the whole saved as a file and opened again. */
export async function act(what: 'add' | 'cut' | 'import', seed: number): Promise<void> {
  const { session } = document.querySelector('qw-app') as App;
  if (session === null) return;
  const { sheets } = session.state.notebook.drawer;
  if (what === 'add') {
    const canvas = new OffscreenCanvas(120, 120);
    const context = canvas.getContext('2d')!;
    context.fillStyle = `hsl(${(seed * 47) % 360} 60% 60%)`;
    context.fillRect(0, 0, 120, 120);
    context.fillStyle = `hsl(${(seed * 91) % 360} 70% 35%)`;
    context.fillRect(20, 20, 40, 70);
    const file = new File([await canvas.convertToBlob()], `added-${seed}.png`, { type: 'image/png' });
    await session.addPictures([file], { to: 'drawer' });
  } else if (what === 'cut') {
    const sheet = sheets[seed % sheets.length];
    const frame = { x: 0.1, y: 0.1, width: 0.5, height: 0.5 };
    const sizeMm = { width: 150, height: 150 };
    if (sheet) await session.cutPart({ sheetId: sheet.id, side: 'A', name: `Part ${seed}`, frame, sizeMm });
  } else {
    const made = await session.saveBundle();
    if (made) await session.openBundle(new File([made.blob], made.name));
  }
}

export async function whatStands(): Promise<Found> {
  const { session } = document.querySelector('qw-app') as App;
  const { notebook, choices, setAside, messages } = session!.state;
  const note = notebook.leaves.find(({ id }) => id === 'leaf-note');
  return {
    id: notebook.id,
    text: note?.kind === 'note' ? note.text : '',
    sheets: notebook.drawer.sheets.slice(-200).map(({ id }) => id),
    parts: notebook.drawer.parts.slice(-200).map(({ id }) => id),
    choices: choices.length,
    setAside: setAside.length,
    messages: messages.map(({ says }) => says),
    kept: (await session!.keptNotebooks()).map(({ id, title }) => ({ id, title })),
  };
}
