/** What to call the way to put a picture in: a finger cannot drop one. `drop` where there is a mouse, else `choose`. */
export function byHand(drop: string, choose: string): string {
  return matchMedia('(pointer: coarse)').matches ? choose : drop;
}
