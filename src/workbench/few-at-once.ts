/** Starts `work` on each in turn, on no more than `most` at a time. @returns what each gives, in the same order. */
export function fewAtOnce<T, R>(
  all: readonly T[],
  most: number,
  work: (one: T, index: number) => Promise<R>,
): readonly Promise<R>[] {
  const started: Promise<R>[] = [];
  for (const [i, one] of all.entries()) {
    const before = started[i - most] ?? Promise.resolve();
    const start = () => work(one, i);
    started.push(before.then(start, start));
  }
  return started;
}
