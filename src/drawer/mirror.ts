import type { Drawer } from './model.ts';

type List = keyof Drawer;
type Thing<L extends List = List> = Drawer[L][number];

/** A drawer put together elsewhere from what is handed over of it: things that are new or changed, then their order. */
export class DrawerMirror {
  drawer: Drawer = { sheets: [], plains: [], parts: [] };
  private readonly known: { readonly [L in List]: Map<string, Thing<L>> } = {
    sheets: new Map(),
    plains: new Map(),
    parts: new Map(),
  };

  take(things: { readonly [L in List]?: Drawer[L] }): void {
    for (const list of lists) {
      for (const thing of things[list] ?? []) (this.known[list] as Map<string, Thing>).set(thing.id, thing);
    }
  }

  /** The drawer as these ids have it, in their order; what is not among them is forgotten. */
  order(ids: { readonly [L in List]: readonly string[] }): void {
    const inOrder = <L extends List>(list: L) => {
      const known = this.known[list] as Map<string, Thing<L>>;
      const there = new Set(ids[list]);
      for (const id of known.keys()) if (!there.has(id)) known.delete(id);
      return ids[list].flatMap((id) => known.get(id) ?? []) as unknown as Drawer[L];
    };
    this.drawer = { sheets: inOrder('sheets'), plains: inOrder('plains'), parts: inOrder('parts') };
  }
}

const lists = ['sheets', 'plains', 'parts'] as const;

/** What of a drawer is not yet known elsewhere, and which things are: kept by whoever hands it over. */
export class DrawerNews {
  private readonly told: { readonly [L in List]: Map<string, Thing> } = {
    sheets: new Map(),
    plains: new Map(),
    parts: new Map(),
  };

  /** Things that are new or not the same any more; they count as told from now on, and what is gone is forgotten. */
  of(drawer: Drawer): Drawer {
    const fresh = <L extends List>(list: L): Drawer[L] => {
      const told = this.told[list];
      const things: readonly Thing[] = drawer[list];
      const news = things.filter((thing) => told.get(thing.id) !== thing);
      const there = new Set(things.map(({ id }) => id));
      for (const id of told.keys()) if (!there.has(id)) told.delete(id);
      for (const thing of news) told.set(thing.id, thing);
      return news as unknown as Drawer[L];
    };
    return { sheets: fresh('sheets'), plains: fresh('plains'), parts: fresh('parts') };
  }
}
