/**
 * Waits for a task of its own, so that what the hand does meanwhile is answered first, and what is drawn together does not
 * hold up the hand.
 */
export function ownTurn(): Promise<void> {
  return new Promise((next) => setTimeout(next));
}
