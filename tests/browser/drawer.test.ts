import { describe, expect, it } from 'vitest';
import { bandsOf, type DrawerPaper } from '../../components/drawer/drawer-view.ts';
import '../../components/drawer/qw-drawer.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const papers: readonly DrawerPaper[] = [
  'Pebble dot',
  'Kraft',
  'Grid',
  'Stripe',
  'Rose',
  'Linen',
  'Letters',
].map((name, n) => ({
  key: `k-${n}`,
  name,
  about: n === 1 ? 'cardstock' : 'sheet',
  picture: null,
  bands: [
    { hex: '#f4e8cd', share: 0.75 },
    { hex: '#1f3a5f', share: 0.25 },
  ],
}));

describe('the drawer', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds, shut and open, in %s', async (look) => {
    for (const open of [false, true]) {
      await standAlone('qw-drawer', { papers, open, onStudy: true }, look);
      expect(await axeTroubles()).toEqual([]);
    }
  });

  it('opens at the paper that is pressed on the rail, and offers what can be done with it', async () => {
    const element = await standAlone<HTMLElement & { open: boolean }>('qw-drawer', { papers, onStudy: true });
    const [asked, taken] = [heard(element, 'qw-drawer'), heard(element, 'qw-take')];
    const mini = within(element, 'li:nth-child(2) .mini');
    expect(mini.getAttribute('aria-label')).toBe('Show Kraft in the drawer');
    mini.click();
    expect(asked).toEqual([{ open: true }]);
    element.open = true;
    await drawn(element);
    for (const way of within(element, '.picked').querySelectorAll<HTMLButtonElement>('.ways button'))
      way.click();
    expect(taken).toEqual([
      { key: 'k-1', as: 'candidate' },
      { key: 'k-1', as: 'anchor' },
      { key: 'k-1', as: 'look' },
    ]);
  });

  it.each([
    [[], null],
    [['Hearts'], 'It lies on “Hearts”.'],
    [['', ''], 'It lies on 2 leaves.'],
    [['', 'Hearts'], 'It lies on “Hearts” and 1 more leaf.'],
    [['Hearts', 'Pips', 'A kit'], 'It lies on “Hearts” and 2 more leaves.'],
  ])(
    'says of a paper that is picked which leaves it lies on, before it is taken out: %j',
    async (liesOn, says) => {
      const element = await standAlone('qw-drawer', { papers: [{ ...papers[0]!, liesOn }], open: true });
      within(element, '.one').click();
      await drawn(element);
      const line = within(element, '.ways').querySelector('.lies');
      expect(line?.textContent ?? null).toBe(says);
    },
  );

  it('hands over the next paper where one is wanted', async () => {
    const element = await standAlone('qw-drawer', { papers, open: true, wanted: 'anchor', onStudy: true });
    const taken = heard(element, 'qw-take');
    expect(within(element, 'h2').textContent).toBe('Choose the anchor');
    within(element, '.one').click();
    expect(taken).toEqual([{ key: 'k-0', as: 'anchor' }]);
  });

  it('finds papers by name', async () => {
    const element = await standAlone('qw-drawer', { papers, open: true });
    const field = within<HTMLInputElement>(element, 'input');
    field.value = 'KRA';
    field.dispatchEvent(new InputEvent('input'));
    await drawn(element);
    expect([...element.shadowRoot!.querySelectorAll('.grid b')].map((name) => name.textContent)).toEqual([
      'Kraft',
    ]);
  });

  it('takes the keyboard when it opens, is shut by Escape, and gives the keyboard back', async () => {
    const element = await standAlone<HTMLElement & { open: boolean }>('qw-drawer', { papers });
    const asked = heard(element, 'qw-drawer');
    element.open = true;
    await drawn(element);
    expect(element.shadowRoot!.activeElement?.textContent).toContain('Shut');
    element.shadowRoot!.activeElement!.dispatchEvent(
      new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }),
    );
    expect(asked).toEqual([{ open: false }]);
    element.open = false;
    await drawn(element);
    expect(element.shadowRoot!.activeElement?.className).toBe('pull');
  });

  it('carries a dragged paper by its key', async () => {
    const element = await standAlone('qw-drawer', { papers });
    const dataTransfer = new DataTransfer();
    within(element, '.mini').dispatchEvent(new DragEvent('dragstart', { dataTransfer }));
    expect(dataTransfer.getData('application/x-quirewise-paper')).toBe('k-0');
  });

  it('draws a paper without a picture as bands of its inks', () => {
    expect(bandsOf(papers[0]!.bands)).toBe(
      'linear-gradient(to right, #f4e8cd 0.0% 75.0%, #1f3a5f 75.0% 100.0%)',
    );
  });
});
