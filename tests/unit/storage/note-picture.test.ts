import { describe, expect, it } from 'vitest';
import { emptyNotebook } from '../../../src/notebook/empty.ts';
import type { NoteLeaf } from '../../../src/notebook/model.ts';
import { pictureIdsOf, withPictureIds } from '../../../src/storage/pictures-of.ts';

const note: NoteLeaf = {
  id: 'n1',
  kind: 'note',
  title: 'What if?',
  text: '',
  picture: { pictureId: 'picture-1', alt: 'Two pictures.' },
};
const notebook = { ...emptyNotebook('b1'), leaves: [note] };

/** Source: ours; what is kept on a note is in every backup, and is not tidied away. */
describe('a picture on a note', () => {
  it('is one of the notebook’s pictures', () => {
    expect([...pictureIdsOf(notebook)]).toEqual(['picture-1']);
  });

  it('goes by its new id where a backup is opened, and the note stays where its picture is missing', () => {
    const [renamed] = withPictureIds(notebook, new Map([['picture-1', 'picture-2']])).leaves;
    expect(renamed).toEqual({ ...note, picture: { pictureId: 'picture-2', alt: 'Two pictures.' } });
    const [bare] = withPictureIds(notebook, new Map()).leaves;
    expect(bare).toEqual({ id: 'n1', kind: 'note', title: 'What if?', text: '' });
  });
});
