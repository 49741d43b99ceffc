import { expect, it } from 'vitest';
import type { HandMade, Ink } from '../../../src/sheet/model.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { underLight } from '../../../src/workbench/reading/hand-light.ts';

const ink = (id: string, hex: string): Ink => inkFromHex(hex, id, 0.2);
const cream = ink('A', '#f4d29c');
const coral = ink('B', '#e2725b');

it('a correction is known again under another light, though every colour has moved far', () => {
  const rename: HandMade = { change: { kind: 'rename', ink: 'B', name: 'quince' }, inks: { B: coral } };
  const add: HandMade = { change: { kind: 'add', spot: { x: 0.2, y: 0.3 } }, inks: {}, hex: '#777777' };
  const [renamed, added] = underLight(
    [rename, add],
    [add],
    [cream, coral],
    ['#808a99', '#f4f0ea', '#c8506e'],
  );
  expect(renamed?.inks.B).toMatchObject({ id: 'B', hex: '#c8506e', share: 0.2 });
  expect(added?.hex).toBe('#808a99');
});

it('an ink that was not among those that were read stays as it was remembered', () => {
  const told: HandMade = {
    change: { kind: 'set-share', ink: 'C', share: 0.1 },
    inks: { C: ink('C', '#1f3a5f') },
  };
  const [after] = underLight([told], [], [cream, coral], ['#f4f0ea', '#c8506e']);
  expect(after?.inks.C?.hex).toBe('#1f3a5f');
});
