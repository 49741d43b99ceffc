/**
 * Waits for a task of its own. An element that takes long to draw the first time waits its turn before it does, so that
 * what is drawn together does not hold up the hand.
 */
export function ownTurn(): Promise<void> {
  return new Promise((next) => setTimeout(next));
}
