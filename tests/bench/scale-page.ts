/** What is looked at from inside the page. Each function is sent there, so it uses nothing from outside itself. */

interface Watched {
  tasks: { at: number; took: number }[];
  opened: number | null;
}

/** Runs before the page does: notes long tasks, and when the open leaf stands there. */
export function watch(leaf: string): void {
  const watched: Watched = { tasks: [], opened: null };
  (globalThis as unknown as { watched: Watched }).watched = watched;
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries())
      watched.tasks.push({ at: startTime, took: duration });
  }).observe({ type: 'longtask', buffered: true });
  const find = (root: ParentNode | null | undefined, steps: readonly string[]): Element | null => {
    const [step, ...rest] = steps;
    const found = step === undefined ? null : (root?.querySelector(step) ?? null);
    return rest.length === 0 ? found : find(found?.shadowRoot, rest);
  };
  const look = () => {
    if (find(document, leaf.split(' >> '))) watched.opened = performance.now();
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

/** When the leaf stood there, in ms after the page was asked for; null while it does not. */
export function openedAt(): number | null {
  return (globalThis as unknown as { watched: Watched }).watched.opened;
}

/** The moment in the page, in ms. */
export function moment(): number {
  return performance.now();
}

/** The longest task since a moment, in ms; 0 where none took over 50 ms. */
export async function longestSince(from: number): Promise<number> {
  // Tasks are told of a little after they end.
  await new Promise((go) => setTimeout(go, 120));
  const { tasks } = (globalThis as unknown as { watched: Watched }).watched;
  return Math.max(0, ...tasks.filter(({ at, took }) => at + took >= from).map(({ took }) => took));
}

/** Opens the drawer, and waits until papers stand in it and are painted. @returns ms */
export async function openDrawer(): Promise<number> {
  const drawer = document.querySelector('qw-app')!.shadowRoot!.querySelector('qw-drawer')!.shadowRoot!;
  const from = performance.now();
  drawer.querySelector<HTMLButtonElement>('.pull')!.click();
  while (!drawer.querySelector('.grid .one')) await new Promise(requestAnimationFrame);
  await new Promise(requestAnimationFrame);
  return performance.now() - from;
}

/** Scrolls the open drawer, a screenful every four turns of the screen, and looks whether papers stand there. */
export async function scrollDrawer(
  turns: number,
): Promise<{ readonly took: number; readonly empty: number; readonly drawn: number }> {
  const drawer = document.querySelector('qw-app')!.shadowRoot!.querySelector('qw-drawer')!.shadowRoot!;
  const panel = drawer.querySelector('.panel')!;
  const from = performance.now();
  let empty = 0;
  let drawn = 0;
  for (let turn = 0; turn < turns; turn++) {
    panel.scrollTop += panel.clientHeight / 4;
    await new Promise(requestAnimationFrame);
    await new Promise(requestAnimationFrame);
    const { top, bottom } = panel.getBoundingClientRect();
    const papers = [...drawer.querySelectorAll('.grid .one')];
    drawn = Math.max(drawn, papers.length);
    const seen = papers.some((paper) => {
      const box = paper.getBoundingClientRect();
      return box.bottom > top && box.top < bottom;
    });
    if (!seen) empty += 1;
  }
  return { took: performance.now() - from, empty, drawn };
}

/** Types into the drawer's field and waits until what is listed is drawn. @returns ms */
export async function seekInDrawer(words: string): Promise<number> {
  const element = document.querySelector('qw-app')!.shadowRoot!.querySelector('qw-drawer')!;
  const field = element.shadowRoot!.querySelector<HTMLInputElement>('input[type=search]')!;
  const from = performance.now();
  field.value = words;
  field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  await (element as unknown as { updateComplete: Promise<unknown> }).updateComplete;
  element.getBoundingClientRect();
  return performance.now() - from;
}

/** Chooses what kind of thing is looked for on the study, and waits until the answer is drawn. @returns ms */
export async function filterFound(value: string): Promise<number> {
  const app = document.querySelector('qw-app')!.shadowRoot!;
  const find = app.querySelector('qw-open-find')!.shadowRoot!.querySelector('qw-find')!;
  const root = find.shadowRoot!;
  const select = [...root.querySelectorAll('select')].at(-1)!;
  const from = performance.now();
  select.value = value;
  select.dispatchEvent(new Event('change', { bubbles: true }));
  const isBusy = () => root.querySelector('ol')?.getAttribute('aria-busy') !== 'false';
  while (!isBusy() && performance.now() - from < 500) await new Promise((go) => setTimeout(go));
  while (isBusy()) await new Promise((go) => setTimeout(go));
  return performance.now() - from;
}

/** Waits until the margin has said that it saves and then that all is saved. @returns ms */
export async function savedAfter(): Promise<number> {
  const from = performance.now();
  const isSaved = () => {
    const note = document.querySelector('qw-app')!.shadowRoot!.querySelector('qw-note')?.shadowRoot;
    return note?.querySelector('.margin span:last-child')?.textContent === 'saved';
  };
  const pause = () => new Promise((go) => setTimeout(go));
  while (isSaved() && performance.now() - from < 3000) await pause();
  while (!isSaved()) await pause();
  return performance.now() - from;
}
