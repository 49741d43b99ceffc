import { describe, expect, it } from 'vitest';
import '../../components/notebook/qw-board-leaf.ts';
import '../../components/notebook/qw-empty.ts';
import '../../components/notebook/qw-leaves.ts';
import '../../components/notebook/qw-messages.ts';
import '../../components/notebook/qw-note.ts';
import '../../components/notebook/qw-sheet-leaf.ts';
import '../../components/notebook/qw-sources.ts';
import '../../components/notebook/qw-upkeep.ts';
import { unbroken } from '../../components/support/unbroken.ts';
import { anchorView } from '../support/hand-made.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const leaves = [
  { id: 'a', title: 'What is left', about: 'note' },
  { id: 'b', title: '', about: 'study, 1 candidate' },
];
const note = { id: 'n', kind: 'note', title: 'Old stock', text: 'Nine sheets.' };
const board = {
  id: 'b',
  kind: 'board',
  title: 'For Thursday',
  studyId: 's',
  candidate: null,
  words: '',
  size: 'square',
};
const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><title>x</title></svg>';
const source = {
  id: 's-1',
  short: 'Someone 1901',
  full: 'Someone, A title.',
  kind: 'published',
  what: 'A table.',
};

/** Each element of the family as it mostly stands, and as it stands with nothing. */
const shown: [name: string, tag: string, properties: Record<string, unknown>][] = [
  [
    'the list of leaves',
    'qw-leaves',
    { leaves, current: 'a', kinds: [{ kind: 'note', label: 'Note', about: 'words' }] },
  ],
  ['an empty list of leaves', 'qw-leaves', {}],
  ['a note', 'qw-note', { leaf: note, margin: ['leaf 1'] }],
  ['a board', 'qw-board-leaf', { leaf: board, svg }],
  ['a board without a pair', 'qw-board-leaf', { leaf: board }],
  [
    'a sheet',
    'qw-sheet-leaf',
    { leaf: { id: 'l', kind: 'sheet', title: 'Bunting', sheetId: 's', text: '' }, paper: anchorView },
  ],
  ['the sources', 'qw-sources', { sources: [source], current: 's-1' }],
  [
    'messages and readings',
    'qw-messages',
    {
      messages: [{ id: 'm', kind: 'trouble', says: 'That file is empty.' }],
      readings: [{ id: 'r', fileName: 'a.png', stage: 'reading', fraction: 0.4 }],
    },
  ],
  ['the upkeep', 'qw-upkeep', { kept: [{ id: 'k', title: 'Last year', saved: '2 March', sound: true }] }],
  ['an empty notebook', 'qw-empty', {}],
];

describe('the elements of a notebook', () => {
  it.each(shown)('%s has nothing that axe finds, in either light', async (_name, tag, properties) => {
    for (const look of ['light', 'dark'] as const) {
      await standAlone(tag, properties, look);
      expect(await axeTroubles()).toEqual([]);
    }
  });
});

describe('the list of leaves', () => {
  it('links to every leaf in order and says which is open', async () => {
    const element = await standAlone('qw-leaves', { leaves, current: 'b' });
    const links = [...element.shadowRoot!.querySelectorAll('a')];
    expect(links.map((link) => link.getAttribute('href'))).toEqual(['#a', '#b']);
    expect(links.map((link) => link.getAttribute('aria-current'))).toEqual(['false', 'page']);
    expect(links[1]!.textContent).toContain('No title yet');
  });

  it('asks for a new leaf, for another place, and to take a leaf out', async () => {
    const element = await standAlone('qw-leaves', {
      leaves,
      current: 'b',
      kinds: [{ kind: 'note', label: 'Note', about: '' }],
    });
    const asked = ['qw-add-leaf', 'qw-move-leaf', 'qw-remove-leaf'].map((name) => heard(element, name));
    within(element, '.add').click();
    await drawn(element);
    within(element, '.kind').click();
    const [up, , out] = element.shadowRoot!.querySelectorAll<HTMLButtonElement>('.handles button');
    up!.click();
    out!.click();
    expect(asked).toEqual([[{ kind: 'note' }], [{ id: 'b', to: 0 }], [{ id: 'b' }]]);
  });
});

describe('the kinds of leaf', () => {
  const kinds = [
    { kind: 'note', label: 'Note', about: 'words' },
    { kind: 'board', label: 'Board', about: 'a picture', notNow: 'once you have said yours' },
  ];

  it('are put away by Escape, by leaving them, and when another leaf is opened', async () => {
    const element = await standAlone<HTMLElement & { current: string }>('qw-leaves', {
      leaves,
      current: 'a',
      kinds,
    });
    const add = within<HTMLButtonElement>(element, '.add');
    const ways = [
      () => add.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true })),
      () => add.dispatchEvent(new FocusEvent('focusout', { bubbles: true })),
      () => (element.current = element.current === 'a' ? 'b' : 'a'),
    ];
    for (const leave of ways) {
      add.click();
      await drawn(element);
      expect(add.getAttribute('aria-expanded')).toBe('true');
      leave();
      await drawn(element);
      expect(add.getAttribute('aria-expanded')).toBe('false');
    }
  });

  it('say why one cannot be added now', async () => {
    const element = await standAlone('qw-leaves', { leaves, current: 'a', kinds });
    within(element, '.add').click();
    await drawn(element);
    const board = [...element.shadowRoot!.querySelectorAll<HTMLButtonElement>('.kind')].at(-1)!;
    expect(board.disabled).toBe(true);
    expect(board.textContent).toContain('once you have said yours');
  });
});

describe('what is told', () => {
  it('can be undone where it says so', async () => {
    const element = await standAlone('qw-messages', {
      messages: [{ id: 'm', kind: 'note', says: 'Taken out. Undo brings it back.', offers: 'undo' }],
    });
    const undone = heard(element, 'qw-undo');
    [...element.shadowRoot!.querySelectorAll('button')]
      .find((one) => one.textContent?.includes('Undo'))!
      .click();
    expect(undone).toHaveLength(1);
  });

  it('can start a study with the paper that it tells of', async () => {
    const element = await standAlone('qw-messages', {
      messages: [
        {
          id: 'm',
          kind: 'note',
          says: '“Old dots” is in the drawer.',
          offers: 'study',
          key: 'sheet:dots:A',
        },
      ],
    });
    const taken = heard(element, 'qw-take');
    within(element, '.told .word').click();
    expect(taken).toEqual([{ key: 'sheet:dots:A', as: 'anchor' }]);
  });

  it('is one card of several pictures being read, which stops all of them', async () => {
    const readings = ['a.png', 'b.png', 'c.png'].map((fileName, i) => ({
      id: `r${i}`,
      fileName,
      stage: i === 0 ? 'reading' : 'waiting',
      fraction: i === 0 ? 0.6 : 0,
    }));
    const element = await standAlone('qw-messages', { readings });
    expect(element.shadowRoot!.querySelectorAll('li')).toHaveLength(1);
    expect(within(element, 'label').textContent).toBe('3 pictures to read. a.png: reading');
    expect(within<HTMLProgressElement>(element, 'progress').value).toBe(20);
    const stopped = heard<{ id: string }>(element, 'qw-stop-reading');
    within(element, 'li button').click();
    expect(stopped.map(({ id }) => id)).toEqual(['r0', 'r1', 'r2']);
    expect(await axeTroubles()).toEqual([]);
  });
});

describe('other notebooks that are kept', () => {
  const kept = [
    { id: 'k', title: 'Last year', saved: '2 March', sound: true },
    { id: 't', title: 'A notebook that can’t be read', saved: '1 March', sound: false },
  ];

  it('are asked for when their place is opened, and opened again where they are sound', async () => {
    const element = await standAlone('qw-upkeep', { kept });
    const asked = heard(element, 'qw-ask-kept');
    const opened = heard(element, 'qw-open-kept');
    within<HTMLDetailsElement>(element, 'details').open = true;
    await new Promise((next) => setTimeout(next, 50));
    expect(asked).toHaveLength(1);
    within(element, '[aria-label^="Open Last year"]').click();
    expect(opened).toEqual([{ id: 'k' }]);
    const saved = heard(element, 'qw-save-kept');
    within(element, '[aria-label^="Save A notebook that can’t be read"]').click();
    expect(saved).toEqual([{ id: 't' }]);
  });

  it('stand below what of this one could not be read, which can be saved as a file', async () => {
    const setAside = [
      { name: 'Rose vine', why: 'The weight is too large.' },
      { name: 'A leaf without a title', why: 'Something in it is not what it should be.' },
    ];
    const element = await standAlone('qw-upkeep', {
      kept,
      value: { undoes: null, redoes: null, lastBackup: null, theme: 'system', hand: 'right', setAside },
    });
    const wanted = heard(element, 'qw-save-set-aside');
    const section = within(element, 'section[aria-label="What could not be read"]');
    expect(section.textContent).toContain('2 things in this notebook could not be read.');
    expect([...section.querySelectorAll('li')].map((line) => line.textContent)).toEqual([
      'Rose vineThe weight is too large.',
      'A leaf without a titleSomething in it is not what it should be.',
    ]);
    section.querySelector('button')!.click();
    expect(wanted).toEqual([{}]);
    section.querySelector('details')!.open = true;
    await drawn(element);
    expect(await axeTroubles()).toEqual([]);
  });

  it('are removed for good only when that was said twice', async () => {
    const element = await standAlone('qw-upkeep', { kept });
    const removed = heard(element, 'qw-remove-kept');
    within<HTMLDetailsElement>(element, 'details').open = true;
    within(element, '[aria-label="Remove Last year"]').click();
    expect(removed).toEqual([]);
    await drawn(element);
    within(element, '[aria-label="Remove Last year for good"]').click();
    expect(removed).toEqual([{ id: 'k' }]);
  });
});

describe('a title', () => {
  it('keeps what was written on Enter, and puts the old words back on Escape', async () => {
    const element = await standAlone('qw-note', { leaf: note });
    const titles = heard(element, 'qw-retitle');
    const words = within(element, 'qw-title', 'span');
    words.focus();
    words.textContent = '  New  stock ';
    words.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
    expect(titles).toEqual([{ title: 'New stock' }]);
    words.focus();
    words.textContent = 'A slip';
    words.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    expect(words.textContent).toBe('New stock');
    expect(titles).toHaveLength(1);
  });
});

describe('a title that was given', () => {
  const marked = () => getSelection()!.toString();

  it('is marked as a whole when it is gone into; one that was written is not', async () => {
    for (const [title, found] of [
      ['Bunting', 'Bunting'],
      ['The last bunting', ''],
    ]) {
      const paper = { ...anchorView, name: 'Bunting' };
      const leaf = { id: 'l', kind: 'sheet', title, sheetId: 's', text: '' };
      const element = await standAlone('qw-sheet-leaf', { leaf, paper });
      getSelection()!.removeAllRanges();
      within(element, 'qw-title').focus();
      expect(marked()).toBe(found);
    }
  });
});

describe('a sheet', () => {
  it('leads back to every study that it lies on', async () => {
    const element = await standAlone('qw-sheet-leaf', {
      leaf: { id: 'l', kind: 'sheet', title: 'Bunting', sheetId: 's', text: '' },
      paper: anchorView,
      studies: [
        { id: 'one', title: 'Does it hold?' },
        { id: 'two', title: '' },
      ],
    });
    const ways = [...element.shadowRoot!.querySelectorAll('.ways a')];
    expect(ways.map((way) => [way.getAttribute('href'), way.textContent!.trim()])).toEqual([
      ['#one', 'On the study “Does it hold?”: back to it'],
      ['#two', 'On the study without a title: back to it'],
    ]);
    expect(await axeTroubles()).toEqual([]);
  });
});

describe('an empty notebook', () => {
  it('speaks of dropping only where there is a mouse to drop with', async () => {
    const real = window.matchMedia;
    const words: (string | null)[] = [];
    for (const isFinger of [false, true]) {
      window.matchMedia = (query) => ({ ...real(query), matches: query === '(pointer: coarse)' && isFinger });
      words.push(within(await standAlone('qw-empty'), 'h2').textContent);
    }
    window.matchMedia = real;
    expect(words).toEqual([
      'Drop two photographs of paper here, or choose them.',
      'Choose two photographs of paper.',
    ]);
  });
});

describe('words that no line breaks', () => {
  it.each([
    ['side A of two', 'side A of two'],
    ['repeat 18 mm, 12 × 12 in', 'repeat 18_mm, 12_×_12_in'],
    ['220 g/m² (80 lb cover)', '220_g/m² (80_lb cover)'],
    ['8½ × 11 in, 88 % sure', '8½_×_11_in, 88_% sure'],
    ['2 inks in 3 places', '2 inks in 3 places'],
  ])('%s', (words, found) => {
    expect(unbroken(words)).toBe(found.replaceAll('_', '\u00a0'));
  });
});

describe('a note', () => {
  it('hands on what is written when it is left', async () => {
    const element = await standAlone('qw-note', { leaf: note });
    const texts = heard(element, 'qw-write');
    const text = within<HTMLTextAreaElement>(element, 'qw-writing', 'textarea');
    text.focus();
    text.value = 'Eight sheets.';
    text.dispatchEvent(new InputEvent('input'));
    text.blur();
    expect(texts).toEqual([{ text: 'Eight sheets.' }]);
  });
});

describe('a board', () => {
  it('asks for each kind of file and for another size', async () => {
    const element = await standAlone('qw-board-leaf', { leaf: board, svg });
    const [saved, sizes] = [heard<{ as: string }>(element, 'qw-save-board'), heard(element, 'qw-set-size')];
    for (const button of element.shadowRoot!.querySelectorAll<HTMLButtonElement>('.ways button'))
      button.click();
    within(element, 'qw-choice').shadowRoot!.querySelectorAll('input')[1]!.click();
    expect(saved.map(({ as }) => as)).toEqual(['png', 'pdf', 'svg']);
    expect(sizes).toEqual([{ value: 'a4' }]);
  });
});

describe('messages', () => {
  it('say trouble at once, and can be put away; a reading can be stopped', async () => {
    const element = await standAlone('qw-messages', shown.find(([, tag]) => tag === 'qw-messages')![2]);
    const asked = ['qw-dismiss', 'qw-stop-reading'].map((name) => heard(element, name));
    expect(within(element, '[role=alert]').textContent).toBe('That file is empty.');
    for (const button of element.shadowRoot!.querySelectorAll('button')) button.click();
    expect(asked).toEqual([[{ id: 'm' }], [{ id: 'r' }]]);
  });
});

describe('the sources', () => {
  it('turn to the entry that was asked for', async () => {
    const element = await standAlone('qw-sources', {
      sources: [source, { ...source, id: 's-2' }],
      current: 's-2',
    });
    expect(element.shadowRoot!.activeElement?.id).toBe('s-2');
  });
});
