import axe from 'axe-core';
import { afterEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import '../../components/picture/qw-inks-by-hand.ts';
import '../../components/picture/qw-is-paper.ts';
import '../../components/picture/qw-light.ts';
import '../../components/picture/stage/qw-near.ts';
import '../../components/picture/qw-part.ts';
import '../../components/picture/qw-plain-form.ts';
import '../../components/picture/qw-sheet-form.ts';
import '../../components/picture/qw-straighten.ts';
import '../../components/shell/open/qw-open-sources.ts';
import type { KnownColour } from '../../components/picture/known-colour.ts';
import type { Ink, Sheet, Side } from '../../src/sheet/model.ts';

const known: KnownColour = { hex: '#e2725b', says: 'moderate reddish orange, Munsell 10R 6/10' };
const colourOf = (text: string) => (text === '#e2725b' ? known : undefined);
const corners = [
  { x: 0.2, y: 0.1 },
  { x: 0.8, y: 0.2 },
  { x: 0.7, y: 0.9 },
  { x: 0.1, y: 0.8 },
] as const;
const side: Side = {
  base: { ...ink('A', 'cream', 0.7), kind: 'cream', printed: false },
  inks: [ink('B', 'navy', 0.2), ink('C', 'coral', 0.1)],
  print: { busyness: 0.2, repeatMm: null, scale: null },
  light: { known: false, note: '' },
};
const sheet: Sheet = {
  id: 's',
  name: 'Regatta bunting',
  sides: { A: { reading: { ...side, tags: { motifs: ['dot'] } }, pictureId: null } },
  sizeMm: { width: 305, height: 305 },
  weight: null,
  count: 2,
  note: '',
};

afterEach(() => document.body.replaceChildren());

describe('qw-is-paper', () => {
  const held = { kind: 'sheet', id: 's', side: 'A' } as const;

  it('asks on the picture itself, is answered by one tap, and asks no more then', async () => {
    const tool = await shown('qw-is-paper', { picture: picture(), name: 'Bunting', held, corners });
    expect((await axe.run(tool)).violations).toEqual([]);
    expect(coloured(tool.shadowRoot!)).toEqual([]);
    const line = tool.shadowRoot!.querySelector('.edge')!.getAttribute('d');
    expect(line).toBe('M20 10L80 20L70 90L10 80Z');
    const said = listen(tool, 'qw-paper-is');
    press(tool, 'Yes, cut it out');
    await tool.updateComplete;
    expect(said).toEqual([{ held, is: 'cut out' }]);
    const buttons = tool.shadowRoot!.querySelectorAll<HTMLButtonElement>('.fields button');
    expect([...buttons].every(({ disabled }) => disabled)).toBe(true);
  });

  it('takes “the whole picture” for an answer, and leads to the corners', async () => {
    const tool = await shown('qw-is-paper', { picture: picture(), name: 'Bunting', held, corners });
    const [said, closer] = [listen(tool, 'qw-paper-is'), listen(tool, 'qw-look-closer')];
    press(tool, 'Move its corners');
    press(tool, 'No, the whole picture is the paper');
    expect(closer).toEqual([{ held, tool: 'straighten' }]);
    expect(said).toEqual([{ held, is: 'whole' }]);
  });
});

describe('qw-near', () => {
  it('is enlarged with the keyboard and told how large it is; nothing in it is a colour', async () => {
    const tool = await shown('qw-near', { picture: picture(), name: 'Bunting' });
    expect((await axe.run(tool)).violations).toEqual([]);
    expect(coloured(tool.shadowRoot!)).toEqual([]);
    const root = tool.shadowRoot!;
    const wide = () => root.querySelector('.stage')!.getBoundingClientRect().width;
    const [whole, says] = [wide(), () => root.querySelector('output')!.textContent];
    expect(says()).toBe('whole picture');
    root.querySelector<HTMLElement>('.mat')!.focus();
    await userEvent.keyboard('++');
    await tool.updateComplete;
    expect(wide() / whole).toBeCloseTo(2.25, 2);
    expect(says()).toBe('2.3 ×');
    await userEvent.keyboard('---');
    await tool.updateComplete;
    expect(wide()).toBeCloseTo(whole, 0);
  });

  it('leaves a wheel without Ctrl to the page where it stands on one', async () => {
    const tool = await shown('qw-near', { picture: picture(), name: 'Bunting' });
    const mat = tool.shadowRoot!.querySelector('.mat')!;
    const turn = (ctrlKey: boolean) => {
      const event = new WheelEvent('wheel', {
        deltaY: -100,
        ctrlKey,
        bubbles: true,
        composed: true,
        cancelable: true,
      });
      mat.dispatchEvent(event);
      return event.defaultPrevented;
    };
    expect(turn(false)).toBe(false);
    expect(turn(true)).toBe(true);
    await tool.updateComplete;
    expect(tool.shadowRoot!.querySelector('output')!.textContent).toBe('1.4 ×');
  });
});

describe('qw-straighten', () => {
  it('gives back the corners that it was given, with the size', async () => {
    const tool = await shown('qw-straighten', { picture: picture(), corners });
    const heard = listen(tool, 'qw-corners');
    press(tool, 'Straighten the sheet');
    expect(heard).toEqual([{ corners: [...corners], sizeMm: { width: 304.8, height: 304.8 } }]);
  });

  it('says what came of it and shows it, and leads on only once a corner is moved again', async () => {
    const done = { picture: picture(), sizeMm: { width: 305, height: 305 } };
    const tool = await shown('qw-straighten', { picture: picture(), corners, name: 'Regatta bunting', done });
    const root = tool.shadowRoot!;
    expect(root.querySelector('.done')!.textContent).toBe('Straightened: 12\u00a0×\u00a012\u00a0in.');
    expect(root.querySelector('figure img')!.getAttribute('alt')).toBe('Regatta bunting, straightened');
    expect(root.querySelector('.main')).toBeNull();
    handles(tool)[0]!.focus();
    await userEvent.keyboard('{ArrowRight}');
    await tool.updateComplete;
    expect(root.querySelector('.main')!.textContent).toBe('Straighten the sheet');
  });

  it('moves a corner by the arrow keys, further with Shift, and says where it is', async () => {
    const tool = await shown('qw-straighten', { picture: picture(), corners });
    const heard = listen<{ corners: { x: number; y: number }[] }>(tool, 'qw-corners');
    const handle = handles(tool)[0]!;
    handle.focus();
    await userEvent.keyboard('{ArrowRight}{Shift>}{ArrowRight}{/Shift}{ArrowDown}');
    await tool.updateComplete;
    press(tool, 'Straighten the sheet');
    expect(heard[0]!.corners[0]!.x).toBeCloseTo(0.2 + 0.005 + 0.05, 9);
    // The picture is 3 : 2, and a step down is as long as a step across.
    expect(heard[0]!.corners[0]!.y).toBeCloseTo(0.1 + 0.005 * 1.5, 9);
    expect(handle.getAttribute('aria-valuetext')).toBe('26 % across, 11 % down');
  });

  it('moves a corner with mouse or finger, enlarges what is under it, and keeps inside the picture', async () => {
    for (const pointerType of ['mouse', 'touch']) {
      const tool = await shown('qw-straighten', { picture: picture(), corners });
      const box = stageBox(tool);
      const handle = handles(tool)[2]!;
      const middle = { x: box.left + 0.7 * box.width, y: box.top + 0.9 * box.height };
      point(handle, 'pointerdown', middle, pointerType);
      point(handle, 'pointermove', { x: middle.x + 0.1 * box.width, y: middle.y + 500 }, pointerType);
      await tool.updateComplete;
      expect(tool.renderRoot.querySelector('.glass')).not.toBeNull();
      point(handle, 'pointerup', middle, pointerType);
      await tool.updateComplete;
      expect(tool.renderRoot.querySelector('.glass')).toBeNull();
      const heard = listen<{ corners: { x: number; y: number }[] }>(tool, 'qw-corners');
      press(tool, 'Straighten the sheet');
      expect(heard[0]!.corners[2]!.x).toBeCloseTo(0.8, 2);
      expect(heard[0]!.corners[2]!.y).toBe(1);
    }
  });

  it('puts a corner back where a drag was interrupted, and all of them when asked', async () => {
    const tool = await shown('qw-straighten', { picture: picture(), corners });
    const handle = handles(tool)[0]!;
    const box = stageBox(tool);
    const at = { x: box.left + 0.2 * box.width, y: box.top + 0.1 * box.height };
    point(handle, 'pointerdown', at);
    point(handle, 'pointermove', { x: at.x + 40, y: at.y });
    point(handle, 'pointercancel', at);
    await tool.updateComplete;
    expect(handle.style.left).toBe('20%');
    handle.focus();
    await userEvent.keyboard('{ArrowRight}');
    await tool.updateComplete;
    press(tool, 'Put the corners back');
    await tool.updateComplete;
    expect(handle.style.left).toBe('20%');
  });

  it('does not take corners that cross, and says so', async () => {
    const [a, b, c, d] = corners;
    const tool = await shown('qw-straighten', { picture: picture(), corners: [b, a, c, d] });
    expect(button(tool, 'Straighten the sheet').disabled).toBe(true);
    expect(tool.renderRoot.querySelector('[role=status]')?.textContent).toContain('corners cross');
  });

  it('turns the sheet a quarter: the corner at its bottom left becomes its top left', async () => {
    const tool = await shown('qw-straighten', { picture: picture(), corners });
    const heard = listen<{ corners: unknown[] }>(tool, 'qw-corners');
    press(tool, 'Turn it a quarter');
    press(tool, 'Straighten the sheet');
    expect(heard[0]!.corners[0]).toEqual(corners[3]);
  });

  it('takes any size, in inches or millimetres', async () => {
    const tool = await shown('qw-straighten', { picture: picture(), corners });
    const size = tool.renderRoot.querySelector('qw-size')!;
    await choose(size, 0, 'A4');
    await choose(size, 0, 'another size');
    await fill(size, 'Width', '3');
    const heard = listen<{ sizeMm: { width: number; height: number } }>(tool, 'qw-corners');
    press(tool, 'Straighten the sheet');
    expect(heard[0]!.sizeMm.width).toBeCloseTo(76.2, 9);
    expect(heard[0]!.sizeMm.height).toBe(297);
    await fill(size, 'Width', '-4');
    expect(size.sizeMm.width).toBeCloseTo(76.2, 9);
  });

  it('redraws when its corners are set anew', async () => {
    const tool = await shown('qw-straighten', { picture: picture(), corners });
    Object.assign(tool, { corners: [{ x: 0.5, y: 0.1 }, ...corners.slice(1)] });
    await tool.updateComplete;
    expect(handles(tool)[0]!.style.left).toBe('50%');
  });
});

describe('qw-light', () => {
  it.each(['touch', 'mouse'] as const)('lays the frame inside what was tapped: %s', async (pointer) => {
    const tool = await shown('qw-light', { picture: picture(), kind: 'white' });
    const framing = tool.renderRoot.querySelector('qw-framing')!;
    await framing.updateComplete;
    await framing.renderRoot.querySelector('img')!.decode();
    const ground = framing.renderRoot.querySelector<HTMLElement>('.ground')!;
    const box = ground.getBoundingClientRect();
    const at = { x: box.left + 0.3 * box.width, y: box.top + 0.45 * box.height };
    point(ground, 'pointerdown', at, pointer);
    point(ground, 'pointerup', at, pointer);
    ground.dispatchEvent(new MouseEvent('click', { clientX: at.x, clientY: at.y }));
    // The square of the picture lies from 40 to 140 of 300 × 200 pixels.
    const { x, y, width, height } = framing.frame!;
    expect(x).toBeGreaterThan(39 / 300);
    expect(y).toBeGreaterThan(39 / 200);
    expect(x + width).toBeLessThan(141 / 300);
    expect(y + height).toBeLessThan(141 / 200);
    expect(width * height).toBeGreaterThan((0.6 * 100 * 100) / (300 * 200));
  });

  it('asks for a frame before it takes a card, and gives its reflectance', async () => {
    const tool = await shown('qw-light', { picture: picture(), kind: 'white' });
    expect(button(tool, 'Correct the light').disabled).toBe(true);
    const framing = tool.renderRoot.querySelector('qw-framing')!;
    await framing.updateComplete;
    drawFrame(framing, [0.5, 0.5], [0.75, 0.6]);
    await tool.updateComplete;
    const heard = listen<{ kind: string; reflectance: number; frame: Record<string, number> }>(
      tool,
      'qw-card',
    );
    press(tool, 'Correct the light');
    expect(heard[0]).toMatchObject({ kind: 'white', reflectance: 0.9 });
    for (const [key, value] of Object.entries({ x: 0.5, y: 0.5, width: 0.25, height: 0.1 })) {
      expect(heard[0]!.frame[key]).toBeCloseTo(value, 2);
    }
  });

  it('takes a grey card at 18 % unless told otherwise', async () => {
    const frame = { x: 0.1, y: 0.1, width: 0.2, height: 0.2 };
    const tool = await shown('qw-light', { picture: picture(), kind: 'grey', frame });
    const heard = listen<{ reflectance: number }>(tool, 'qw-card');
    press(tool, 'Correct the light');
    await fill(tool, 'Share of light', '50');
    press(tool, 'Correct the light');
    expect(heard.map(({ reflectance }) => reflectance)).toEqual([0.18, 0.5]);
  });

  it('gives a chart its frame and nothing else, and no card nothing at all', async () => {
    const frame = { x: 0.1, y: 0.1, width: 0.6, height: 0.4 };
    const tool = await shown('qw-light', { picture: picture(), kind: 'chart', frame });
    const heard = listen(tool, 'qw-card');
    press(tool, 'Correct the light');
    Object.assign(tool, { kind: 'none' });
    await tool.updateComplete;
    press(tool, 'Leave the light as it is');
    expect(heard).toEqual([{ kind: 'chart', frame }, { kind: 'none' }]);
  });

  it('shows before and after, and lets the correction be undone', async () => {
    const tool = await shown('qw-light', { picture: picture(), kind: 'none' });
    expect(button(tool, 'Undo the correction').disabled).toBe(true);
    Object.assign(tool, { corrected: picture() });
    await tool.updateComplete;
    expect([...tool.renderRoot.querySelectorAll('figcaption')].map((one) => one.textContent)).toEqual([
      'as it was taken',
      'light corrected',
    ]);
    const heard = listen(tool, 'qw-card-undo');
    press(tool, 'Undo the correction');
    expect(heard.length).toBe(1);
  });
});

describe('qw-part', () => {
  it('gives a drawn frame with its name and its size in millimetres', async () => {
    const tool = await shown('qw-part', {
      picture: picture(),
      name: 'Bunting',
      sizeMm: { width: 300, height: 200 },
    });
    const framing = tool.renderRoot.querySelector('qw-framing')!;
    await framing.updateComplete;
    drawFrame(framing, [0.1, 0.1], [0.6, 0.6]);
    await tool.updateComplete;
    expect(tool.renderRoot.querySelector('[role=status]')?.textContent).toMatch(
      /^1(49|50|51) × (99|100|101) mm \(/,
    );
    const heard = listen<{ name: string; sizeMm: { width: number } }>(tool, 'qw-part');
    press(tool, 'Keep this part');
    expect(heard[0]!.name).toBe('Bunting, a part');
    expect(heard[0]!.sizeMm.width).toBeCloseTo(150, -1);
  });

  it('lets a block that was found be picked', async () => {
    const frame = { x: 0.5, y: 0, width: 0.5, height: 0.5 };
    const tool = await shown('qw-part', {
      picture: picture(),
      name: 'Quilt',
      offers: [{ frame, name: 'the star block' }],
    });
    const heard = listen(tool, 'qw-part');
    const framing = tool.renderRoot.querySelector('qw-framing')!;
    await framing.updateComplete;
    framing.renderRoot.querySelector<HTMLElement>('[aria-label="Take the star block"]')!.click();
    await tool.updateComplete;
    await fill(tool, 'What to call it', 'Star');
    press(tool, 'Keep this part');
    expect(heard[0]).toMatchObject({ frame, name: 'Star' });
  });

  it('keeps an oval, and a shape that was drawn by hand', async () => {
    const tool = await shown('qw-part', { picture: picture(), name: 'Quilt' });
    const heard = listen<{ frame: { width: number }; outline?: readonly object[] }>(tool, 'qw-part');
    const framing = tool.renderRoot.querySelector('qw-framing')!;
    await framing.updateComplete;
    const shape = async (value: string) => {
      tool.renderRoot
        .querySelector('qw-choice')!
        .dispatchEvent(new CustomEvent('qw-choose', { detail: { value } }));
      await tool.updateComplete;
      await framing.updateComplete;
    };
    await shape('oval');
    press(tool, 'Lay a frame in the middle');
    await tool.updateComplete;
    press(tool, 'Keep this part');
    expect(heard[0]!.outline!.length).toBe(48);

    await shape('by hand');
    expect(tool.renderRoot.textContent).not.toContain('Lay a frame in the middle');
    const ground = framing.renderRoot.querySelector<HTMLElement>('.ground')!;
    const box = ground.getBoundingClientRect();
    const at = (x: number, y: number) => ({ x: box.left + x * box.width, y: box.top + y * box.height });
    point(ground, 'pointerdown', at(0.2, 0.2), 'touch');
    for (const [x, y] of [
      [0.4, 0.2],
      [0.6, 0.2],
      [0.5, 0.4],
      [0.4, 0.6],
      [0.3, 0.4],
    ] as const)
      point(ground, 'pointermove', at(x, y), 'touch');
    point(ground, 'pointerup', at(0.25, 0.3), 'touch');
    await tool.updateComplete;
    press(tool, 'Keep this part');
    expect(heard[1]!.outline!.length).toBeLessThan(8);
    expect(heard[1]!.frame.width).toBeCloseTo(0.4, 1);
  });

  it('is done with a keyboard alone', async () => {
    const tool = await shown('qw-part', { picture: picture(), name: 'Quilt' });
    const heard = listen<{ frame: Record<string, number> }>(tool, 'qw-part');
    press(tool, 'Lay a frame in the middle');
    const framing = tool.renderRoot.querySelector('qw-framing')!;
    await framing.updateComplete;
    expect(framing.shadowRoot!.activeElement?.className).toBe('inside');
    await userEvent.keyboard('{ArrowLeft}');
    framing.renderRoot.querySelectorAll<HTMLElement>('.handle')[2]!.focus();
    await userEvent.keyboard('{Shift>}{ArrowRight}{/Shift}');
    await tool.updateComplete;
    press(tool, 'Keep this part');
    expect(heard[0]!.frame.x).toBeCloseTo(0.395, 9);
    expect(heard[0]!.frame.width).toBeCloseTo(0.25, 9);
  });

  it('lays a frame by a finger’s tap, and leaves a finger’s stroke to the page', async () => {
    const tool = await shown('qw-part', { picture: picture(), name: 'Quilt' });
    const framing = tool.renderRoot.querySelector('qw-framing')!;
    await framing.updateComplete;
    drawFrame(framing, [0.1, 0.1], [0.6, 0.6], 'touch');
    expect(framing.frame).toBeNull();
    const ground = framing.renderRoot.querySelector<HTMLElement>('.ground')!;
    const box = ground.getBoundingClientRect();
    point(ground, 'pointerdown', { x: box.left, y: box.top }, 'touch');
    ground.dispatchEvent(
      new MouseEvent('click', { clientX: box.left + box.width / 2, clientY: box.top + box.height / 2 }),
    );
    expect(framing.frame!.x).toBeCloseTo(0.4, 2);
  });
});

describe('qw-inks-by-hand', () => {
  it('renames, merges, splits, keeps, sets aside and sets a share', async () => {
    const tool = await shown('qw-inks-by-hand', { side, picture: null });
    const heard = listen<{ edit: object }>(tool, 'qw-hand');
    press(tool, 'Correct', 2);
    await tool.updateComplete;
    const hand = tool.renderRoot.querySelector('qw-ink-hand')!;
    await hand.updateComplete;
    await fill(hand, 'Name', 'salmon');
    await fill(hand, 'Share', '12.5');
    press(hand, 'Keep it as it is');
    press(hand, 'Split it in two');
    hand.renderRoot.querySelector<HTMLSelectElement>('#into')!.value = 'B';
    press(hand, 'Merge');
    press(hand, 'Set aside');
    expect(heard.map(({ edit }) => edit)).toEqual([
      { kind: 'rename', ink: 'C', name: 'salmon' },
      { kind: 'set-share', ink: 'C', share: 0.125 },
      { kind: 'keep', ink: 'C' },
      { kind: 'split', ink: 'C' },
      { kind: 'merge', from: 'C', into: 'B' },
      { kind: 'set-aside', ink: 'C', reason: 'shadow' },
    ]);
  });

  it('does not let a base be merged away or set aside, nor a share be nonsense', async () => {
    const tool = await shown('qw-inks-by-hand', { side });
    const heard = listen(tool, 'qw-hand');
    press(tool, 'Correct', 0);
    await tool.updateComplete;
    const hand = tool.renderRoot.querySelector('qw-ink-hand')!;
    await hand.updateComplete;
    expect(hand.renderRoot.textContent).not.toMatch(/Merge|Set aside/);
    await fill(hand, 'Share', '140');
    await fill(hand, 'Share', '');
    await fill(hand, 'Name', '  ');
    expect(heard).toEqual([]);
  });

  it('adds an ink from a tap on the picture, and tells the spot as it moves', async () => {
    const tool = await shown('qw-inks-by-hand', { side, picture: picture() });
    const heard = listen<{ edit: { kind: string; spot: { x: number; y: number } } }>(tool, 'qw-hand');
    const spots = listen(tool, 'qw-spot');
    press(tool, 'Add an ink from the picture');
    await tool.updateComplete;
    const spotting = tool.renderRoot.querySelector('qw-spotting')!;
    await spotting.updateComplete;
    await loaded(spotting);
    const ground = spotting.renderRoot.querySelector<HTMLElement>('.ground')!;
    const box = ground.getBoundingClientRect();
    ground.dispatchEvent(
      new MouseEvent('click', { clientX: box.left + box.width / 4, clientY: box.top + box.height / 2 }),
    );
    Object.assign(tool, { spotReads: known });
    await tool.updateComplete;
    expect(tool.renderRoot.querySelector('.read')?.textContent).toContain(known.says);
    press(tool, 'Add this ink');
    expect(heard[0]!.edit.kind).toBe('add');
    expect(heard[0]!.edit.spot.x).toBeCloseTo(0.25, 2);
    expect(spots.length).toBe(2);
  });

  it('moves the spot of an ink by the keyboard, from where it was read', async () => {
    const tool = await shown('qw-inks-by-hand', {
      side,
      picture: picture(),
      spots: { B: { x: 0.3, y: 0.4 } },
    });
    const heard = listen<{ edit: { spot: { x: number } } }>(tool, 'qw-hand');
    press(tool, 'Correct', 1);
    await tool.updateComplete;
    const hand = tool.renderRoot.querySelector('qw-ink-hand')!;
    await hand.updateComplete;
    press(hand, 'Read it from another spot');
    await tool.updateComplete;
    const spotting = tool.renderRoot.querySelector('qw-spotting')!;
    await spotting.updateComplete;
    spotting.renderRoot.querySelector<HTMLElement>('.handle')!.focus();
    await userEvent.keyboard('{ArrowRight}');
    await tool.updateComplete;
    press(tool, 'Read it here');
    expect(heard[0]!.edit).toMatchObject({ kind: 'move-spot', ink: 'B' });
    expect(heard[0]!.edit.spot.x).toBeCloseTo(0.305, 9);
  });

  it('adds a colour that no picture shows, with its finish', async () => {
    const tool = await shown('qw-inks-by-hand', { side, colourOf });
    const heard = listen(tool, 'qw-hand');
    press(tool, 'Add one that no picture shows');
    await tool.updateComplete;
    const typed = tool.renderRoot.querySelector('qw-typed-colour')!;
    await typed.updateComplete;
    expect(button(tool, 'Add it').disabled).toBe(true);
    await write(typed, '#e2725b');
    await tool.updateComplete;
    press(tool, 'Add it');
    expect(heard).toEqual([{ edit: { kind: 'add', hex: '#e2725b', special: 'foil' } }]);
  });

  it('takes back what was set aside', async () => {
    const tool = await shown('qw-inks-by-hand', {
      side,
      aside: [{ ink: ink('Z', 'grey', 0.1), reason: 'shadow' }],
    });
    const heard = listen(tool, 'qw-hand');
    expect(tool.renderRoot.textContent).toContain('a shadow');
    press(tool, 'Take it back');
    expect(heard).toEqual([{ edit: { kind: 'keep', ink: 'Z' } }]);
  });
});

describe('qw-plain-form', () => {
  it('gives a plain of a typed colour, named by the colour where no name was written', async () => {
    const tool = await shown('qw-plain-form', { colourOf });
    const heard = listen(tool, 'qw-plain');
    await write(tool.renderRoot.querySelector('qw-typed-colour')!, '#e2725b');
    await tool.updateComplete;
    press(tool, 'Put it in the drawer');
    expect(heard).toEqual([
      {
        name: 'moderate reddish orange cardstock',
        kind: 'cardstock',
        from: { text: '#e2725b' },
        hex: '#e2725b',
        takesColour: false,
      },
    ]);
  });

  it('says what is no colour once the field is left, and keeps nothing', async () => {
    const tool = await shown('qw-plain-form', { colourOf });
    const typed = tool.renderRoot.querySelector('qw-typed-colour')!;
    await write(typed, 'reddish');
    typed.renderRoot.querySelector('input')!.dispatchEvent(new FocusEvent('blur'));
    await typed.updateComplete;
    expect(typed.renderRoot.querySelector('[role=status]')?.textContent).toContain(
      'no colour that can be understood',
    );
    expect(typed.renderRoot.querySelector('input')!.getAttribute('aria-invalid')).toBe('true');
    expect(button(tool, 'Put it in the drawer').disabled).toBe(true);
  });

  it('gives a plain read from one tap', async () => {
    const tool = await shown('qw-plain-form', { colourOf, picture: picture() });
    tool.renderRoot
      .querySelector('qw-choice')!
      .dispatchEvent(new CustomEvent('qw-choose', { detail: { value: 'tapped' } }));
    await tool.updateComplete;
    const heard = listen(tool, 'qw-plain');
    press(tool, 'Put the spot in the middle');
    Object.assign(tool, { spotReads: known });
    await tool.updateComplete;
    await fill(tool, 'What to call it', 'Terracotta thread');
    await choose(tool, 0, 'thread');
    press(tool, 'Put it in the drawer');
    expect(heard[0]).toMatchObject({
      name: 'Terracotta thread',
      kind: 'thread',
      from: { spot: { x: 0.5, y: 0.5 } },
    });
  });
});

describe('qw-sheet-form', () => {
  it('tells one thing at a time', async () => {
    const tool = await shown('qw-sheet-form', { sheet });
    const heard = listen<{ change: object }>(tool, 'qw-sheet-details');
    await fill(tool, 'Name', 'Old bunting');
    await fill(tool, 'How many there are', '3');
    await choose(tool.renderRoot.querySelector('qw-size')!, 0, 'A4');
    tick(tool, 'floral');
    tick(tool, 'dot');
    tick(tool, 'watercolour');
    expect(heard.map(({ change }) => change)).toEqual([
      { name: 'Old bunting' },
      { count: 3 },
      { sizeMm: { width: 210, height: 297 } },
      { side: 'A', motifs: ['floral', 'dot'] },
      { side: 'A', motifs: [] },
      { side: 'A', finishes: ['watercolour'] },
    ]);
  });

  it('says what the reading takes the print for and how sure it is, until somebody has said what it shows', async () => {
    const guessed = { ...side, motif: { family: 'dots', sure: 0.7 } } as const;
    const untagged = { ...sheet, sides: { A: { reading: guessed, pictureId: null } } };
    const tool = await shown('qw-sheet-form', { sheet: untagged });
    const heard = listen<{ change: object }>(tool, 'qw-sheet-details');
    expect(tool.renderRoot.textContent).toContain('takes this for dots (70 % sure)');
    press(tool, 'That is right');
    expect(heard).toEqual([{ change: { side: 'A', motifs: ['dot'] } }]);
    const told = { ...guessed, tags: { motifs: ['stripe'] } } as const;
    Object.assign(tool, { sheet: { ...sheet, sides: { A: { reading: told, pictureId: null } } } });
    await tool.updateComplete;
    expect(tool.renderRoot.textContent).not.toContain('takes this for');
  });

  it('takes a weight in grams, in pounds with its grade, or from the scales', async () => {
    const tool = await shown('qw-sheet-form', { sheet });
    const heard = listen<{ change: { weight: object } }>(tool, 'qw-sheet-details');
    const weight = tool.renderRoot.querySelector('qw-weight')!;
    await choose(weight, 0, 'g/m²');
    await fill(weight, 'Grams a square metre', '216');
    await choose(weight, 0, 'pounds and grade');
    await choose(weight, 1, 'text');
    await fill(weight, 'Pounds', '80');
    await choose(weight, 0, 'I weighed it');
    await fill(weight, 'Grams of one sheet', '20.1');
    await fill(weight, 'Grams of one sheet', '0');
    expect(heard.map(({ change }) => change.weight)).toEqual([
      { by: 'gsm', gsm: 216 },
      { by: 'pounds', lb: 80, grade: 'text' },
      { by: 'scales', grams: 20.1 },
    ]);
  });

  it('asks for the other side’s picture where there is none, and speaks of the side that is chosen', async () => {
    const tool = await shown('qw-sheet-form', { sheet });
    const asked = listen(tool, 'qw-other-side');
    press(tool, 'Add the other side’s picture');
    expect(asked.length).toBe(1);
    Object.assign(tool, {
      sheet: { ...sheet, sides: { ...sheet.sides, B: { reading: side, pictureId: null } } },
    });
    await tool.updateComplete;
    tool.renderRoot
      .querySelector('qw-choice')!
      .dispatchEvent(new CustomEvent('qw-choose', { detail: { value: 'B' } }));
    await tool.updateComplete;
    const heard = listen(tool, 'qw-sheet-details');
    tick(tool, 'stripe');
    expect(heard).toEqual([{ change: { side: 'B', motifs: ['stripe'] } }]);
  });
});

describe('what is said of the HEIC decoder', () => {
  it('names its licence, and shows the whole of it when asked', async () => {
    const page = await shown('qw-open-sources', {});
    const licence = page.renderRoot.querySelector('qw-licence')!;
    await licence.updateComplete;
    expect(licence.renderRoot.textContent).toContain('GNU Lesser General Public License, version 3');
    licence.renderRoot.querySelector('details')!.open = true;
    await expect
      .poll(() => licence.renderRoot.querySelector('pre')!.textContent)
      .toContain('Version 3, 29 June 2007');
  });
});

describe('every tool on a picture', () => {
  const frame = { x: 0.1, y: 0.1, width: 0.3, height: 0.2 };
  it.each([
    ['qw-straighten', { corners }],
    ['qw-light', { kind: 'white', frame, corrected: picture() }],
    ['qw-light', { kind: 'chart', frame }],
    ['qw-part', { offers: [{ frame }] }],
    [
      'qw-inks-by-hand',
      { side, colourOf, kept: ['B'], aside: [{ ink: ink('Z', 'grey', 0.1), reason: 'shadow' }] },
    ],
    ['qw-plain-form', { colourOf }],
    ['qw-sheet-form', { sheet: { ...sheet, weight: { gsm: 118, lb: 80, grade: 'text' } } }],
  ] as const)('passes axe: %s', async (tag, properties) => {
    const tool = await shown(tag, { picture: picture(), ...properties });
    if (tag === 'qw-inks-by-hand') {
      press(tool, 'Correct', 1);
      press(tool, 'Add one that no picture shows');
      press(tool, 'Add an ink from the picture');
      await tool.updateComplete;
    }
    const found: axe.Result[] = [];
    for (const look of ['light', 'dark']) {
      document.documentElement.dataset.look = look;
      document.body.style.background = 'var(--qw-leaf)';
      await new Promise((resolve) => setTimeout(resolve, 50));
      found.push(...(await axe.run(document.body, { rules: { region: { enabled: false } } })).violations);
    }
    delete document.documentElement.dataset.look;
    expect(found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
  });

  it('has no colour of its own: all that is not paper or ink is grey', async () => {
    for (const [tag, properties] of [
      ['qw-straighten', { corners }],
      ['qw-light', { kind: 'white', frame }],
      ['qw-part', { offers: [{ frame }] }],
      ['qw-inks-by-hand', { side }],
      ['qw-sheet-form', { sheet }],
    ] as const) {
      const tool = await shown(tag, { picture: picture(), ...properties });
      expect(coloured(tool.renderRoot)).toEqual([]);
    }
  });

  it('gives every button, field and handle the height of a finger', async () => {
    const tool = await shown('qw-straighten', { picture: picture(), corners });
    for (const handle of handles(tool)) {
      expect(handle.getBoundingClientRect().width).toBeGreaterThanOrEqual(44);
      expect(handle.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
    }
    const form = await shown('qw-sheet-form', { sheet });
    for (const control of form.renderRoot.querySelectorAll(
      'input:not([type=checkbox]), select, .tick, button',
    )) {
      expect(control.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
    }
  });
});

interface Tool extends HTMLElement {
  readonly updateComplete: Promise<boolean>;
  readonly renderRoot: ShadowRoot;
}

async function shown<T extends keyof HTMLElementTagNameMap>(
  tag: T,
  properties: object,
): Promise<HTMLElementTagNameMap[T] & Tool> {
  const tool = Object.assign(document.createElement(tag), properties) as unknown as HTMLElementTagNameMap[T] &
    Tool;
  document.body.replaceChildren(tool);
  await tool.updateComplete;
  await loaded(tool);
  for (const inner of tool.renderRoot.querySelectorAll<Tool>('qw-framing, qw-spotting')) await loaded(inner);
  return tool;
}

/** Waits for the picture, since everything is measured on it. */
async function loaded(tool: {
  renderRoot: HTMLElement | DocumentFragment;
  updateComplete: Promise<boolean>;
}): Promise<void> {
  await tool.updateComplete;
  for (const img of tool.renderRoot.querySelectorAll('img')) await img.decode();
  await new Promise((resolve) => requestAnimationFrame(resolve));
  await tool.updateComplete;
}

function listen<Detail = unknown>(tool: HTMLElement, name: string): Detail[] {
  const heard: Detail[] = [];
  tool.addEventListener(name, (event) => heard.push((event as CustomEvent<Detail>).detail));
  return heard;
}

function button(
  tool: { renderRoot: HTMLElement | DocumentFragment },
  words: string,
  at = 0,
): HTMLButtonElement {
  const found = [...tool.renderRoot.querySelectorAll('button')].filter(
    (one) => one.textContent?.replace(/\s+/g, ' ').trim() === words,
  )[at];
  if (!found) throw new Error(`no button "${words}"`);
  return found;
}

function press(tool: { renderRoot: HTMLElement | DocumentFragment }, words: string, at = 0): void {
  button(tool, words, at).click();
}

function field<T extends Element>(tool: { renderRoot: HTMLElement | DocumentFragment }, words: string): T {
  const label = [...tool.renderRoot.querySelectorAll('label')].find((one) =>
    one.textContent?.trim().startsWith(words),
  );
  const found = label?.querySelector('input, select');
  if (!found) throw new Error(`no field "${words}"`);
  return found as unknown as T;
}

type Filled = { renderRoot: HTMLElement | DocumentFragment; updateComplete: Promise<boolean> };

async function fill(tool: Filled, words: string, value: string): Promise<void> {
  await tool.updateComplete;
  const input = field<HTMLInputElement>(tool, words);
  input.value = value;
  input.dispatchEvent(new Event('input', { bubbles: true }));
  input.dispatchEvent(new Event('change', { bubbles: true }));
  await tool.updateComplete;
}

async function write(tool: Filled, value: string): Promise<void> {
  await tool.updateComplete;
  const input = tool.renderRoot.querySelector('input')!;
  input.value = value;
  input.dispatchEvent(new Event('input', { bubbles: true }));
  await tool.updateComplete;
}

async function choose(tool: Filled, at: number, words: string): Promise<void> {
  await tool.updateComplete;
  const select = tool.renderRoot.querySelectorAll('select')[at]!;
  const option = [...select.options].find((one) => one.textContent?.trim().startsWith(words));
  if (!option) throw new Error(`no choice "${words}"`);
  select.value = option.value;
  select.dispatchEvent(new Event('change', { bubbles: true }));
  await tool.updateComplete;
}

function tick(tool: { renderRoot: HTMLElement | DocumentFragment }, words: string): void {
  field<HTMLInputElement>(tool, words).click();
}

function handles(tool: { renderRoot: HTMLElement | DocumentFragment }): HTMLElement[] {
  return [...tool.renderRoot.querySelectorAll<HTMLElement>('.handle')];
}

function stageBox(tool: { renderRoot: HTMLElement | DocumentFragment }): DOMRect {
  return tool.renderRoot.querySelector('.stage')!.getBoundingClientRect();
}

function point(on: Element, type: string, at: { x: number; y: number }, pointerType = 'mouse'): void {
  on.dispatchEvent(
    new PointerEvent(type, {
      clientX: at.x,
      clientY: at.y,
      pointerId: 1,
      pointerType,
      button: 0,
      bubbles: true,
    }),
  );
}

function drawFrame(
  framing: { renderRoot: HTMLElement | DocumentFragment },
  from: readonly [number, number],
  to: readonly [number, number],
  pointerType = 'mouse',
): void {
  const ground = framing.renderRoot.querySelector('.ground')!;
  const box = ground.getBoundingClientRect();
  const at = ([x, y]: readonly [number, number]) => ({
    x: box.left + x * box.width,
    y: box.top + y * box.height,
  });
  point(ground, 'pointerdown', at(from), pointerType);
  point(ground, 'pointermove', at(to), pointerType);
  point(ground, 'pointerup', at(to), pointerType);
}

/** Every colour in these styles that is not a grey, in this element and those inside it. */
function coloured(root: ShadowRoot): string[] {
  const names = ['color', 'backgroundColor', 'borderTopColor', 'outlineColor', 'fill', 'stroke'] as const;
  return [...root.querySelectorAll<HTMLElement>(':not(.swatch)')].flatMap((element) => {
    const style = getComputedStyle(element);
    const own = names.map((name) => style[name]).filter((value) => !grey(value));
    return [
      ...own.map((value) => `${element.className} ${value}`),
      ...(element.shadowRoot ? coloured(element.shadowRoot) : []),
    ];
  });
}

function grey(colour: string): boolean {
  const oklch = /^oklch\([\d.]+ ([\d.]+)/.exec(colour);
  if (oklch) return Number(oklch[1]) === 0;
  const rgb = /^rgba?\((\d+), (\d+), (\d+)/.exec(colour);
  return !rgb || (rgb[1] === rgb[2] && rgb[2] === rgb[3]);
}

function ink(id: string, trade: string, share: number): Ink {
  return { id, hex: '#808080', oklch: [0.6, 0, null], name: trade, trade, share, accent: false };
}

function picture(): string {
  const canvas = document.createElement('canvas');
  canvas.width = 300;
  canvas.height = 200;
  canvas.getContext('2d')!.fillRect(40, 40, 100, 100);
  return canvas.toDataURL();
}
