/** Waits for a task of its own, so that what the hand does meanwhile is answered first. */
export function ownTask(): Promise<void> {
  return new Promise((next) => setTimeout(next));
}
