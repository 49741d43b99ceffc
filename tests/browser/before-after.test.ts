import { describe, expect, it } from 'vitest';
import '../../components/study/tried/qw-before-after.ts';
import type { QwBeforeAfter } from '../../components/study/tried/qw-before-after.ts';
import type { TriedPair, TriedPaper, TriedView } from '../../components/study/tried/tried-view.ts';
import { anchorView, candidateView, needsABridge } from '../support/hand-made.ts';
import { axeTroubles, heard, standAlone, within } from '../support/stand-alone.ts';

const paper = ({ name }: { name: string }, side = needsABridge.anchor): TriedPaper => ({
  name,
  picture: null,
  places: null,
  side,
  inside: new Map(),
  changes: [],
});
const before: TriedPair = {
  anchor: paper(anchorView),
  candidate: paper(candidateView, needsABridge.candidate),
  between: null,
  distance: 'apart',
  verdict: 'needs-a-bridge',
  summary: 'Two colours nearly match.',
};
const view: TriedView = {
  before,
  after: {
    ...before,
    between: { as: 'strip', hex: '#804020' },
    verdict: 'holds-together',
    summary: 'It holds.',
  },
  clauses: ['a strip of kraft lies between them'],
  lifts: ['a near miss'],
};

describe('what is tried', () => {
  it.each(['light', 'dark'] as const)('has nothing that axe finds, in %s', async (look) => {
    await standAlone('qw-before-after', { view }, look);
    expect(await axeTroubles()).toEqual([]);
  });

  it('shows both verdicts, what is done, and what that lifts', async () => {
    const element = await standAlone('qw-before-after', { view });
    expect(within(element, 'h3').textContent).toBe('A strip of kraft lies between them.');
    expect(within(element, '.before').textContent).toContain('Needs a bridge.');
    expect(within(element, '.after').textContent).toContain('Holds together.');
    expect(within(element, '.gone').textContent).toBe('No longer against them: a near miss.');
  });

  it('draws the strip where the papers were apart, in its own colour', async () => {
    const element = await standAlone<QwBeforeAfter>('qw-before-after', { view });
    await element.pictured();
    const [was, is] = element.shadowRoot!.querySelectorAll('canvas');
    const middle = (canvas: HTMLCanvasElement) =>
      [...canvas.getContext('2d')!.getImageData(canvas.width / 2, canvas.height / 2, 1, 1).data].slice(0, 3);
    expect(middle(was!)).toEqual([0xba, 0xba, 0xba]);
    expect(middle(is!)).toEqual([0x80, 0x40, 0x20]);
  });

  it('draws again what differs, and not what is only said anew', async () => {
    const element = await standAlone<QwBeforeAfter>('qw-before-after', { view });
    await element.pictured();
    const after = element.shadowRoot!.querySelectorAll('canvas')[1]!;
    const middle = () => [
      ...after.getContext('2d')!.getImageData(after.width / 2, after.height / 2, 1, 1).data,
    ];
    const mark = () => after.getContext('2d')!.fillRect(0, 0, 1, 1);
    const corner = () => [...after.getContext('2d')!.getImageData(0, 0, 1, 1).data];
    mark();
    const marked = corner();
    element.view = { ...view, lifts: [] };
    await element.pictured();
    expect(corner()).toEqual(marked);
    element.view = { ...view, after: { ...view.after, between: { as: 'mat', hex: '#203040' } } };
    await element.pictured();
    expect(corner()).not.toEqual(marked);
    expect(middle()).not.toEqual([0x80, 0x40, 0x20, 0xff]);
  });

  it('hands on one picture of both when it is kept, and leaves all as it was', async () => {
    const element = await standAlone<QwBeforeAfter>('qw-before-after', { view });
    const kept = heard<{ picture: Blob }>(element, 'qw-keep-supposed');
    const left = heard(element, 'qw-leave-it');
    within(element, '.ways button:nth-child(1)').click();
    await expect.poll(() => kept.length).toBe(1);
    expect(kept[0]!.picture.type).toBe('image/jpeg');
    const picture = await createImageBitmap(kept[0]!.picture);
    expect(picture.width).toBeGreaterThan(2 * picture.height);
    within(element, '.ways button:nth-child(2)').click();
    expect(left).toHaveLength(1);
  });
});
