import { describe, expect, it } from 'vitest';
import '../../components/study/qw-colour-it.ts';
import '../../components/study/qw-parts.ts';
import type { ColourIt, JudgedParts } from '../../src/harmony/model.ts';
import { needsABridge } from '../support/hand-made.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const frame = { x: 0, y: 0, width: 0.5, height: 1 };
const square = { frame, verdict: 'holds-together', worthCutting: true, answers: ['C'], alone: [] } as const;
const shading: JudgedParts = {
  width: 2,
  height: 1,
  cells: Uint8Array.from([1, 3]),
  squares: [
    square,
    { ...square, frame: { ...frame, x: 0.5 }, worthCutting: false, answers: [], alone: ['c'] },
  ],
  says: ['This square answers coral (C) and quarrels with nothing: worth cutting out.'],
  caution: 'Mind the blade.',
};
const { caution: _, ...withoutCaution } = shading;
const dot =
  'data:image/svg+xml,%3Csvg xmlns=%22http://www.w3.org/2000/svg%22 width=%222%22 height=%221%22/%3E';
const parts = {
  name: 'Quayside ledger',
  anchorName: 'Regatta bunting',
  picture: dot,
  comparison: needsABridge,
  shading,
  veil: Uint8ClampedArray.from([0, 215]),
  canKeep: true,
};
const kraft = { ...needsABridge.anchor.inks[0]!, hex: '#c8a878' };
const found: ColourIt = {
  regions: [{ hueDeg: [10, 40], lightness: [40, 60], chroma: [0.1, 0.15] }],
  best: kraft,
  answers: ['C', 'c'],
  nearest: {
    plain: { id: 'p', name: 'Rust ink pad', kind: 'ink pad', ink: kraft },
    onBase: kraft,
    deltaE00: 4.2,
  },
  says: 'Rust would tie most together: it answers coral (C) and raspberry (c).',
};
const colourIt = {
  names: { anchor: 'Regatta bunting', candidate: 'Quayside ledger' },
  comparison: needsABridge,
  found,
  things: [
    { id: 'b', name: 'Bare letters' },
    { id: '', name: 'White cardstock' },
  ],
  thing: 'b',
};

describe('which parts', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds, in %s', async (look) => {
    const element = await standAlone('qw-parts', { view: parts }, look);
    within<HTMLDetailsElement>(element, 'details').open = true;
    expect(await axeTroubles()).toEqual([]);
  });

  it('veils in grey what does not hold, and nothing else', async () => {
    const element = await standAlone('qw-parts', { view: parts });
    const pixels = within<HTMLCanvasElement>(element, 'canvas')
      .getContext('2d')!
      .getImageData(0, 0, 2, 1).data;
    expect(pixels[3]).toBe(0);
    expect(pixels[7]).toBe(215);
    expect(new Set([pixels[4], pixels[5], pixels[6]]).size).toBe(1);
  });

  it('numbers the squares worth cutting out, says what each answers, and keeps one as a part', async () => {
    const element = await standAlone('qw-parts', { view: parts });
    expect(element.shadowRoot!.querySelectorAll('.sheet i')).toHaveLength(1);
    expect(within(element, 'ol li').textContent).toMatch(/1.*answers.*coral/s);
    const kept = heard(element, 'qw-keep-part');
    within(element, 'ol button').click();
    expect(kept).toEqual([{ frame, name: 'Quayside ledger, square 1' }]);
    expect(within(element, '.care').textContent).toBe(shading.caution);
    const none = await standAlone('qw-parts', { view: { ...parts, shading: withoutCaution } });
    expect(none.shadowRoot!.querySelector('.care')).toBeNull();
  });

  it('says so while the places are not known, and where there is no picture', async () => {
    const waiting = await standAlone('qw-parts', { view: { ...parts, shading: null, veil: null } });
    expect(within(waiting, '.soft').textContent).toContain('Looking');
    const none = await standAlone('qw-parts', { view: { ...parts, picture: null } });
    expect(within(none, '.soft').textContent).toContain('no picture');
  });
});

describe('colour it yourself', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds, in %s', async (look) => {
    await standAlone('qw-colour-it', { view: colourIt }, look);
    expect(await axeTroubles()).toEqual([]);
  });

  it('outlines the stretch on wheel and strip and fills nothing', async () => {
    const element = await standAlone('qw-colour-it', { view: colourIt });
    await drawn(element);
    for (const chart of ['qw-wheel', 'qw-strip']) {
      const region = within(element, chart, 'qw-drawing').shadowRoot!.querySelector('.region');
      expect(region, chart).not.toBeNull();
    }
    expect(within(element, 'ul').textContent).toContain('hue 10–40°');
  });

  it('names what it would answer and which of her inks comes nearest, with the number', async () => {
    const element = await standAlone('qw-colour-it', { view: colourIt });
    expect([...element.shadowRoot!.querySelectorAll('.says .chip')].map((chip) => chip.textContent)).toEqual([
      'C',
      'c',
    ]);
    expect(within(element, '.near').textContent).toMatch(/Rust ink pad.*4\.2/s);
    const asked = heard(element, 'qw-colour-what');
    const select = within<HTMLSelectElement>(element, 'select');
    select.value = '';
    select.dispatchEvent(new Event('change'));
    expect(asked).toEqual([{ value: '' }]);
  });

  it('says so where no one colour would do', async () => {
    const none: ColourIt = {
      regions: [],
      best: null,
      answers: [],
      nearest: null,
      says: 'No one colour answers both.',
    };
    const element = await standAlone('qw-colour-it', { view: { ...colourIt, found: none } });
    expect(within(element, '.says').textContent).toBe('No one colour answers both.');
    expect(element.shadowRoot!.querySelector('.charts')).toBeNull();
  });
});
