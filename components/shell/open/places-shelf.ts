import { heldKey } from '../../../src/drawer/held.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type { Places, Side } from '../../../src/sheet/model.ts';

/** Where the inks of a reading lie, asked for once a reading and remembered; null until it is known. */
export class PlacesShelf {
  /** Grows with every answer. */
  version = 0;
  private readonly known = new Map<string, { reading: Side; places: Places | null }>();
  private readonly ask: (held: Held) => Promise<Places | null>;
  private readonly arrived: () => void;

  constructor(ask: (held: Held) => Promise<Places | null>, arrived: () => void) {
    this.ask = ask;
    this.arrived = arrived;
  }

  get(held: Held, reading: Side): Places | null {
    const key = heldKey(held);
    const found = this.known.get(key);
    if (found?.reading === reading) return found.places;
    const entry: { reading: Side; places: Places | null } = { reading, places: null };
    this.known.set(key, entry);
    void this.ask(held).then(
      (places) => {
        if (!places || this.known.get(key) !== entry) return;
        entry.places = places;
        this.version += 1;
        this.arrived();
      },
      // Without the places the inks still light up in the charts; the session has said what went wrong.
      () => {},
    );
    return null;
  }
}
