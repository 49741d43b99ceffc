/** 0 up to one number, 1 from the other on, straight between. */
export function ramp(v: number, from: number, to: number): number {
  const t = (v - from) / (to - from);
  return t <= 0 ? 0 : Math.min(t, 1);
}
