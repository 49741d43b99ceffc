import { newId } from '../new-id.ts';
import type { ReadingInProgress } from '../session-types.ts';
import type { StateHolder } from '../state-holder.ts';

/** The readings that are shown as underway; one that is no longer among them was cancelled or is done. */
export interface ReadingList {
  /** @returns the new reading's id. */
  begin(fileName: string, studyId?: string | null): string;
  show(id: string, change: Partial<ReadingInProgress>): void;
  has(id: string): boolean;
  end(id: string): void;
}

export function listReadings(holder: StateHolder): ReadingList {
  const change = (id: string, how: (one: ReadingInProgress) => readonly ReadingInProgress[]) =>
    holder.set({ readings: holder.state.readings.flatMap((one) => (one.id === id ? how(one) : [one])) });
  return {
    begin(fileName, studyId = null) {
      const id = newId('reading');
      const forStudy = studyId === null ? {} : { studyId };
      const reading: ReadingInProgress = { id, fileName, stage: 'waiting', fraction: 0, ...forStudy };
      holder.set({ readings: [...holder.state.readings, reading] });
      return id;
    },
    show: (id, what) => change(id, (one) => [{ ...one, ...what }]),
    has: (id) => holder.state.readings.some((one) => one.id === id),
    end: (id) => change(id, () => []),
  };
}
