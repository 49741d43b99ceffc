/** What is needed of a transaction. */
interface Transaction {
  readonly done: Promise<void>;
  abort(): void;
}

/**
 * Does all of the work in a transaction and waits until it is through; where any of it fails, nothing was done. Left to
 * itself a transaction keeps what was written before a failure that is not one of its own requests'.
 */
export async function allOrNothing<T>(tx: Transaction, work: () => Promise<T>): Promise<T> {
  // Both promises may reject; the first one to do so is told, the other must not go unheard.
  tx.done.catch(() => {});
  try {
    const result = await work();
    await tx.done;
    return result;
  } catch (error) {
    try {
      tx.abort();
    } catch {
      // It is over already.
    }
    throw error;
  }
}

/** Makes several requests, and waits for all. Where one can't even be made, those made before it do not go unheard. */
export function all(requests: readonly (() => Promise<unknown>)[]): Promise<unknown> {
  const made: Promise<unknown>[] = [];
  for (const request of requests) {
    const promise = request();
    promise.catch(() => {});
    made.push(promise);
  }
  return Promise.all(made);
}
