import type { SpecialFinish } from '../../src/sheet/model.ts';

/** What no picture can show, with what to say of it. */
export const specialFinishes: readonly { readonly value: SpecialFinish; readonly label: string }[] = [
  { value: 'foil', label: 'foil' },
  { value: 'glitter', label: 'glitter' },
  { value: 'fluorescent', label: 'fluorescent' },
  { value: 'pearl', label: 'pearl' },
];
