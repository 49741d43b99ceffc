import { hexFromOklch } from '../../../src/colour/gamut.ts';
import type { Drawing, MarkRef, SceneNode } from '../../../src/drawing/model.ts';
import type { Base, BaseKind, Ink, Side } from '../../../src/sheet/model.ts';

/** A node with where it stands on the whole drawing. */
export interface Placed {
  readonly node: SceneNode;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  /** The nearest mark that it belongs to. */
  readonly mark: MarkRef | undefined;
}

/** Every node of a drawing or list, groups unfolded, with offsets summed up. */
export function flat(nodes: readonly SceneNode[], x = 0, y = 0, scale = 1, mark?: MarkRef): Placed[] {
  return nodes.flatMap((node) => {
    const own = node.mark ?? mark;
    const here: Placed = { node, x, y, scale, mark: own };
    if (node.type !== 'group') return [here];
    const k = node.scale ?? 1;
    return [
      here,
      ...flat(node.children, x + (node.x ?? 0) * scale, y + (node.y ?? 0) * scale, scale * k, own),
    ];
  });
}

export function marks(drawing: Drawing): MarkRef[] {
  return flat(drawing.nodes).flatMap(({ node }) => (node.mark ? [node.mark] : []));
}

/** The group that draws a mark of these inks. */
export function markNode(drawing: Drawing, kind: MarkRef['kind'], ...inks: string[]): Placed {
  const found = flat(drawing.nodes).find(
    ({ node }) => node.mark?.kind === kind && node.mark.inks.join() === inks.join(),
  );
  if (!found) throw new Error(`no ${kind} mark of ${inks.join()}`);
  return found;
}

/** A side of made-up inks, given as [l, c, h, share], base first. */
export function sideOf(
  first: 'A' | 'a',
  kind: BaseKind,
  ...rows: [number, number, number | null, number][]
): Side {
  const [base, ...inks] = rows.map(([l, c, h, share], i): Ink => {
    const id = String.fromCharCode(first.charCodeAt(0) + i);
    return {
      id,
      hex: hexFromOklch({ l, c, h }),
      oklch: [l, c, h],
      name: `ink ${id}`,
      share,
      accent: share < 0.05,
    };
  });
  return {
    base: { ...(base as Ink), kind, printed: null } as Base,
    inks,
    print: { busyness: 0.2, repeatMm: null, scale: null },
    light: { known: false, note: 'The light is unknown.' },
  };
}
