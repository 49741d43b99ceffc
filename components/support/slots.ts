/**
 * Which of a few slots each drawn line stands in. A line keeps its slot for as long as it is drawn; lines that come into
 * view take the slots of those that left it.
 */
export class Slots {
  private held: ReadonlyMap<number, number> = new Map();

  /** The slot of each of these lines, which are told by their places, in ascending order. */
  of(lines: readonly number[]): readonly number[] {
    const before = this.held;
    const stays = new Set(lines);
    const free = [...before].filter(([line]) => !stays.has(line)).map(([, slot]) => slot);
    const fresh = lines.filter((line) => !before.has(line));
    let next = 1 + Math.max(-1, ...before.values());
    /*
     * The outermost of the new lines takes over from the line farthest from it, and the slots in between turn round: so a
     * list that is drawn by moving elements moves those of lines that left, never one that stays and may have the keyboard.
     */
    const isBelow = fresh.length > 0 && lines.at(-1) === fresh.at(-1);
    const short = Math.max(0, fresh.length - free.length);
    const made = Array.from({ length: short }, () => next++);
    const given = isBelow
      ? [...made, ...free.slice(0, fresh.length).reverse()]
      : [...free.slice(-fresh.length).reverse(), ...made];
    const taken = new Map(fresh.map((line, i) => [line, given[i]!]));
    const slots = lines.map((line) => before.get(line) ?? taken.get(line)!);
    this.held = new Map(lines.map((line, i) => [line, slots[i]!]));
    return slots;
  }
}
