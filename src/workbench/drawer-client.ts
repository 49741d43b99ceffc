import type { DrawerFilter } from '../drawer/filter.ts';
import type { DrawerMatches, FilterChoices, HeldAgainst, Wish } from '../drawer/look-through.ts';
import { DrawerNews } from '../drawer/mirror.ts';
import type { Drawer } from '../drawer/model.ts';
import type { KeptSide, Sheet } from '../sheet/model.ts';
import { ownTurn } from '../storage/own-turn.ts';
import type { DrawerAnswer, DrawerRequest } from '../workers/drawer-messages.ts';

/** What was found, and what can be asked for. */
export interface LookedThrough extends DrawerMatches {
  readonly choices: FilterChoices;
}

export interface DrawerClient {
  /**
   * Looks through the drawer off the page's thread. What the worker does not know yet of it is handed over first, a little
   * at a time.
   * @throws where the worker stopped; asked again, a fresh one is started.
   */
  find(
    drawer: Drawer,
    study: HeldAgainst,
    wish: Wish,
    filter: DrawerFilter,
    most: number,
  ): Promise<LookedThrough>;
  close(): void;
}

/** Things that are handed over in one task. Ours: a hundred sheets take some 3 ms. */
const inOneTask = 100;

/** A worker, what it knows, and who waits for it. */
interface Lane {
  readonly worker: Worker;
  readonly news: DrawerNews;
  readonly waiting: Map<number, { resolve(found: LookedThrough): void; reject(error: Error): void }>;
  drawer: Drawer | null;
}

export function startDrawerClient(make: () => Worker = makeDrawerWorker): DrawerClient {
  let lane: Lane | null = null;
  let count = 0;
  /** One question after the other: each is asked of the drawer that was handed over with it. */
  let last: Promise<unknown> = Promise.resolve();

  const end = (why: Error) => {
    const ended = lane;
    lane = null;
    ended?.worker.terminate();
    for (const { reject } of ended?.waiting.values() ?? []) reject(why);
  };

  const start = (): Lane => {
    const fresh: Lane = { worker: make(), news: new DrawerNews(), waiting: new Map(), drawer: null };
    fresh.worker.onmessage = ({ data: { id, ...found } }: MessageEvent<DrawerAnswer>) => {
      fresh.waiting.get(id)?.resolve(found);
      fresh.waiting.delete(id);
    };
    const stopped = () => {
      if (fresh === lane) end(new Error('What looks through the drawer has stopped.'));
    };
    fresh.worker.onerror = stopped;
    fresh.worker.onmessageerror = stopped;
    return fresh;
  };

  const handOver = async ({ worker, news }: Lane, drawer: Drawer) => {
    const tell = (request: DrawerRequest) => worker.postMessage(request);
    const { sheets, plains, parts } = news.of(drawer);
    for (const some of inParts(sheets)) {
      tell({ kind: 'things', sheets: some.map(bare) });
      await ownTurn();
    }
    for (const some of inParts(plains)) tell({ kind: 'things', plains: some });
    for (const some of inParts(parts)) {
      tell({ kind: 'things', parts: some.map(({ asRead: _, hand: __, ...part }) => part) });
      await ownTurn();
    }
    const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
    tell({
      kind: 'drawer',
      sheets: ids(drawer.sheets),
      plains: ids(drawer.plains),
      parts: ids(drawer.parts),
    });
  };

  return {
    find(drawer, study, wish, filter, most) {
      const ask = async () => {
        const mine = (lane ??= start());
        if (mine.drawer !== drawer) await handOver(mine, drawer);
        mine.drawer = drawer;
        if (mine !== lane) throw new Error('What looks through the drawer has stopped.');
        const id = ++count;
        const { anchor, candidates, distance } = study;
        const answer = new Promise<LookedThrough>((resolve, reject) =>
          mine.waiting.set(id, { resolve, reject }),
        );
        mine.worker.postMessage({
          kind: 'find',
          id,
          study: { anchor, candidates, distance },
          wish,
          filter,
          most,
        } satisfies DrawerRequest);
        return { answer };
      };
      const asked = last.then(ask, ask);
      last = asked.catch(() => {});
      return asked.then(({ answer }) => answer);
    },
    close: () => end(new Error('The page is shut.')),
  };
}

function makeDrawerWorker(): Worker {
  return new Worker(new URL('../workers/drawer-worker.ts', import.meta.url), {
    type: 'module',
    name: 'drawer',
  });
}

function inParts<T>(list: readonly T[]): readonly (readonly T[])[] {
  const parts = Math.ceil(list.length / inOneTask);
  return Array.from({ length: parts }, (_, i) => list.slice(i * inOneTask, (i + 1) * inOneTask));
}

/** A sheet without what is of no use in looking: pictures, and how a reading came to be. */
function bare(sheet: Sheet): Sheet {
  const { A, B } = sheet.sides;
  return { ...sheet, sides: B === undefined ? { A: bareSide(A) } : { A: bareSide(A), B: bareSide(B) } };
}

function bareSide({ reading }: KeptSide): KeptSide {
  return { reading, pictureId: null };
}
