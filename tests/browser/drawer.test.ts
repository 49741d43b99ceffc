import type { LitElement } from 'lit';
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

  describe('with a thousand papers', () => {
    /** Papers that note when their picture is asked for. */
    function many() {
      const asked = new Set<string>();
      const all = Array.from({ length: 1000 }, (_, n): DrawerPaper => {
        const key = `k-${n}`;
        return {
          ...papers[0]!,
          key,
          name: `Paper ${n}`,
          get picture() {
            asked.add(key);
            return null;
          },
        };
      });
      return { all, asked };
    }

    const settled = async (element: HTMLElement) => {
      for (let turn = 0; turn < 6; turn++) await new Promise(requestAnimationFrame);
      await drawn(element);
    };

    async function stands(open: boolean) {
      const { all, asked } = many();
      const style = 'height: 600px; width: 400px; overflow: hidden';
      const element = await standAlone('qw-drawer', { style, papers: all, open, onStudy: true });
      await settled(element);
      return { element, asked, all };
    }

    it.each([true, false])(
      'draws those in view and asks only for their pictures (open: %s)',
      async (open) => {
        const { element, asked } = await stands(open);
        const [one, scroller] = open ? ['.one', '.panel'] : ['.mini', '.papers'];
        const drawnPapers = () => [...element.shadowRoot!.querySelectorAll(one)];
        expect(drawnPapers().length).toBeGreaterThan(5);
        expect(drawnPapers().length).toBeLessThan(80);
        expect(asked.size).toBeLessThan(120);
        expect(asked.has('k-900')).toBe(false);
        const box = within(element, scroller);
        // As high as all of them.
        expect(box.scrollHeight).toBeGreaterThan(open ? 40_000 : 60_000);
        box.scrollTop = box.scrollHeight;
        await settled(element);
        box.scrollTop = box.scrollHeight;
        await settled(element);
        expect(
          drawnPapers().at(-1)!.textContent + (drawnPapers().at(-1)!.getAttribute('title') ?? ''),
        ).toContain('Paper 999');
        expect(drawnPapers().length).toBeLessThan(80);
        expect(asked.has('k-500')).toBe(false);
      },
    );

    it.each([true, false])(
      'says of each which of how many it is, and has nothing that axe finds (open: %s)',
      async (open) => {
        const { element } = await stands(open);
        const items = [...element.shadowRoot!.querySelectorAll(open ? '[role=listitem]' : 'li')];
        expect(items.map((item) => item.getAttribute('aria-posinset'))).toEqual(
          items.map((_, n) => `${n + 1}`),
        );
        expect(new Set(items.map((item) => item.getAttribute('aria-setsize')))).toEqual(new Set(['1000']));
        element.style.overflow = 'auto';
        expect(await axeTroubles()).toEqual([]);
      },
    );

    it('goes from paper to paper by the arrows, to the last by End, and keeps the one in hand when it is scrolled away', async () => {
      const { element } = await stands(true);
      const inHand = () => element.shadowRoot!.activeElement;
      const press = async (key: string) => {
        inHand()!.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        await settled(element);
      };
      within(element, '.one').focus();
      for (const [key, name] of [
        ['ArrowRight', 'Paper 1'],
        ['ArrowDown', 'Paper 4'],
        ['ArrowLeft', 'Paper 3'],
        ['ArrowUp', 'Paper 0'],
        ['ArrowUp', 'Paper 0'],
        ['End', 'Paper 999'],
        ['Home', 'Paper 0'],
      ] as const) {
        await press(key);
        expect(inHand()!.querySelector('b')!.textContent).toBe(name);
      }
      within(element, '.panel').scrollTop = 20_000;
      await settled(element);
      expect(inHand()!.querySelector('b')!.textContent).toBe('Paper 0');
      expect(element.shadowRoot!.querySelectorAll('.one').length).toBeLessThan(80);
      await press('ArrowRight');
      expect(inHand()!.querySelector('b')!.textContent).toBe('Paper 1');
    });

    it('shows a paper that is picked above the others, in hand, and puts it back in its place', async () => {
      const { element } = await stands(true);
      const inHand = () => element.shadowRoot!.activeElement as HTMLElement;
      within(element, '.panel').scrollTop = 20_000;
      await settled(element);
      const far = [...element.shadowRoot!.querySelectorAll<HTMLElement>('.grid .one')].at(-1)!;
      const name = far.querySelector('b')!.textContent;
      far.focus();
      far.click();
      await settled(element);
      expect(inHand().closest('.picked')!.querySelector('b')!.textContent).toBe(name);
      expect(inHand().getAttribute('aria-expanded')).toBe('true');
      expect(inHand().getBoundingClientRect().top).toBeLessThan(700);
      inHand().click();
      await settled(element);
      expect(inHand().closest('.grid')).not.toBeNull();
      expect(inHand().querySelector('b')!.textContent).toBe(name);
    });

    it('finds one of them by name, and says how many there are of that name', async () => {
      const { element } = await stands(true);
      const field = within<HTMLInputElement>(element, 'input');
      field.value = 'paper 77';
      field.dispatchEvent(new InputEvent('input'));
      await settled(element);
      const names = [...element.shadowRoot!.querySelectorAll('.grid b')].map((one) => one.textContent);
      expect(names).toEqual(['Paper 77', ...Array.from({ length: 10 }, (_, n) => `Paper 77${n}`)]);
      expect(within(element, '[aria-live]').textContent).toBe('11 papers of that name');
    });

    it('draws the lines that come into view with what those that left were drawn with, each as high as it is', async () => {
      const { element, all } = await stands(true);
      const rows = () => [...element.shadowRoot!.querySelectorAll<HTMLElement>('.grid .row')];
      const panel = within(element, '.panel');
      panel.scrollTop = 3000;
      await settled(element);
      const before = new Set(rows());
      for (const top of [4000, 9000, 8000]) {
        panel.scrollTop = top;
        await settled(element);
        expect(rows().filter((row) => !before.has(row)).length).toBeLessThan(4);
        // In order, none twice, each with its own papers, and no gap or overlap between two.
        const places = rows().map(({ dataset }) => Number(dataset.index));
        expect(places).toEqual(places.map((_, i) => places[0]! + i));
        for (const [i, row] of rows().entries()) {
          const names = [...row.querySelectorAll('b')].map((name) => name.textContent);
          expect(names).toEqual(all.slice(places[i]! * 3, places[i]! * 3 + 3).map(({ name }) => name));
          const next = rows()[i + 1];
          if (next)
            expect(next.getBoundingClientRect().top - row.getBoundingClientRect().bottom).toBeCloseTo(16, 0);
        }
      }
    });

    it('knows how high each line is that it has drawn, also one that took over from another as high', async () => {
      const { element, all } = await stands(true);
      const about = 'a sheet of which there is a good deal more to be said than of any other';
      Object.assign(element, {
        papers: all.map(({ key, name, bands }) => ({ key, name, about, bands, picture: null })),
      });
      await settled(element);
      const panel = within(element, '.panel');
      for (let step = 0; step < 12; step++) {
        panel.scrollTop += 300;
        await settled(element);
      }
      const row = within(element, '.grid .row');
      const { top, height } = row.getBoundingClientRect();
      // Otherwise than it guesses of a line that it has not drawn.
      expect(Math.abs(height - 152)).toBeGreaterThan(1);
      expect(Number(row.dataset.index)).toBeGreaterThan(10);
      expect(top - within(element, '.grid').getBoundingClientRect().top).toBeCloseTo(
        Number(row.dataset.index) * (Math.round(height) + 16),
        0,
      );
    });

    it.each([true, false])(
      'asks for the pictures of what stands still, not of what passes by (open: %s)',
      async (open) => {
        const { element, asked } = await stands(open);
        const box = within(element, open ? '.panel' : '.papers');
        const before = asked.size;
        const inPassing = new Promise<readonly [string | undefined, number]>((tell) => {
          const look = async () => {
            // Drawn in the turn of the scroll itself, before the list can come to rest.
            for (let n = 0; n < 20; n++) await (element as unknown as LitElement).updateComplete;
            const last = [...element.shadowRoot!.querySelectorAll<HTMLElement>('[data-at]')].at(-1);
            tell([last?.dataset.at, asked.size]);
          };
          box.addEventListener('scroll', () => void look(), { once: true });
        });
        box.scrollTop = 5000;
        const [at, count] = await inPassing;
        expect(Number(at)).toBeGreaterThan(70);
        expect(count).toBe(before);
        await expect.poll(() => asked.has(`k-${at}`), { timeout: 5000 }).toBe(true);
      },
    );

    it('draws a picture once it has come', async () => {
      let address: string | null = null;
      const all = many().all.map((paper) => ({ ...paper, picture: null }));
      const withPicture = {
        ...all[0]!,
        get picture() {
          return address;
        },
      };
      const element = await standAlone('qw-drawer', { papers: [withPicture, ...all.slice(1)], pictures: 0 });
      const first = () => within(element, 'qw-miniature').shadowRoot!.querySelector('img');
      expect(first()).toBeNull();
      address = 'data:image/gif;base64,R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7';
      Object.assign(element, { pictures: 1 });
      await settled(element);
      expect(first()!.src).toBe(address);
    });
  });

  it('shows no picture under another paper’s name while that paper’s own is on its way', async () => {
    const dot = (width: number) =>
      `data:image/svg+xml,<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="1"/>`;
    const element = await standAlone<HTMLElement & { picture: string }>('qw-miniature', { picture: dot(1) });
    const image = () => element.shadowRoot!.querySelector('img')!;
    const isSeen = () => getComputedStyle(image()).visibility === 'visible';
    await expect.poll(() => image().naturalWidth).toBe(1);
    expect(isSeen()).toBe(true);
    const one = image();
    element.picture = dot(2);
    await (element as unknown as LitElement).updateComplete;
    expect(image()).toBe(one);
    expect(isSeen()).toBe(false);
    await expect.poll(isSeen).toBe(true);
    expect(image().naturalWidth).toBe(2);
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
