/** How near a finger or pointer must come to a mark to mean it, in CSS pixels: half of a 44 px target. */
export const reachPx = 22;

/**
 * The mark meant by a point on the page: the one under it, otherwise the nearest mark of an ink within reach, so that
 * small marks are as easy to hit as large ones and a crowd of them shares the room. Null where none is near.
 */
export function markAt(root: ShadowRoot, clientX: number, clientY: number): SVGGElement | null {
  const hit = root.elementFromPoint(clientX, clientY)?.closest<SVGGElement>('.mark.ink, .mark.region');
  if (hit) return hit;
  let nearest: SVGGElement | null = null;
  let least = reachPx;
  for (const mark of root.querySelectorAll<SVGGElement>('.mark.ink')) {
    const box = mark.getBoundingClientRect();
    const dx = Math.max(box.left - clientX, 0, clientX - box.right);
    const dy = Math.max(box.top - clientY, 0, clientY - box.bottom);
    const distance = Math.hypot(dx, dy);
    if (distance < least) {
      least = distance;
      nearest = mark;
    }
  }
  const link = root.elementFromPoint(clientX, clientY)?.closest<SVGGElement>('.mark.link');
  // A link under the pointer wins over a mark that is only near it.
  return link && least > 3 ? link : nearest;
}
