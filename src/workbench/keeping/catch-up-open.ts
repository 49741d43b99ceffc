import { keptTyping } from '../../storage/keep-typing.ts';
import { merge } from '../../storage/records/merge.ts';
import type { Shelf } from '../../storage/shelf.ts';
import { isSameWritten, type Written } from '../../storage/written.ts';
import type { Book } from '../book.ts';
import { newId } from '../new-id.ts';
import { otherTitleSays } from '../words/keeping-words.ts';
import type { KnownNotebooks } from './known-notebooks.ts';
import type { TypedTexts } from './typed-texts.ts';

export interface CatchUpTools {
  readonly shelf: Shelf;
  readonly book: Pick<Book, 'notebook' | 'takeFromOtherTab'>;
  readonly known: KnownNotebooks;
  readonly typing: TypedTexts;
  readonly say: (kind: 'trouble' | 'note', says: string) => void;
}

/**
 * Brings what other tabs stored into the open notebook. `take` is handed the two together where that differs from
 * what is on the shelf. @returns false where the notebook is no longer there
 */
export async function catchUpOpen(
  { shelf, book, known, typing, say }: CatchUpTools,
  id: string,
  take: (written: Written) => void,
): Promise<boolean> {
  const step = await shelf.catchUp(id);
  known.change(id, { revision: step?.revision ?? 0 });
  if (step === null || id !== book.notebook.id) return step !== null;
  const mine: Written = { notebook: book.notebook, choices: known.of(id).written.choices };
  const { written: merged, otherTitle } = merge(step.before, mine, step.now, newChoice);
  const written = keptTyping(merged, mine, typing.now(), newChoice);
  if (!isSameWritten(written, mine)) book.takeFromOtherTab(written.notebook);
  known.change(id, { written: { notebook: step.now.notebook, choices: step.now.choices } });
  // What came from the shelf need not go back to it; two tabs would answer each other for ever.
  const isOurs = !isSameWritten(written, step.now);
  if (isOurs) take({ notebook: book.notebook, choices: written.choices });
  else known.change(id, { written });
  known.show(id);
  if (otherTitle !== null) say('trouble', otherTitleSays(otherTitle));
  return true;
}

export const newChoice = (): string => newId('choice');
