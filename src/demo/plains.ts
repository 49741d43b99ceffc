import type { Plain } from '../sheet/model.ts';
import { inkFromHex, plainOf } from '../sheet/plain.ts';
import { colours } from './colours.ts';

/** The plain things in the orchard's drawer. */
export const demoPlains: readonly Plain[] = [
  {
    ...plainOf({ name: 'Kraft cardstock', kind: 'cardstock', hex: '#bf976a' }),
    weight: { gsm: 270, lb: 100, grade: 'cover' },
  },
  {
    ...plainOf({ name: 'Cream cardstock', kind: 'cardstock', hex: colours.cream }),
    weight: { gsm: 216, lb: 80, grade: 'cover' },
  },
  plainOf({ name: 'Navy letters', kind: 'letters', hex: colours.navy }),
  plainOf({ name: 'White thread', kind: 'thread', hex: '#f7f5ef' }),
  plainOf({ name: 'Charcoal ink pad', kind: 'ink pad', hex: colours.charcoal }),
  plainOf({ name: 'Leaf tape', kind: 'tape', hex: colours.leaf }),
  {
    id: 'letters-bare-wood',
    name: 'Bare wooden letters',
    kind: 'letters',
    ink: inkFromHex('#dcc39a'),
    takesColour: true,
  },
];
