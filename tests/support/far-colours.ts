import type { LinkNumbers } from '../../src/harmony/measure/link-kind.ts';

/** Two full, strong colours with nothing in common: each check changes what it asks about. */
export const farColours: LinkNumbers = {
  deltaE00: 30,
  hueSteps: 25,
  valueSteps: 0,
  offSteps: 20,
  chromatic: true,
  whites: false,
  size: 1,
  missSize: 1,
  seen: 1,
  tint: 1,
  strong: 1,
};
