import { inverse, type Matrix, product, type Triple, times } from './matrix.ts';
import type { Xyz } from './model.ts';

export type AdaptationMethod = 'bradford' | 'cat16';

/**
 * The colour that looks under `toWhite` as the given one does under `fromWhite`.
 * `degree` 0–1 is how far the eye has adapted (default 1, fully; 0 leaves the colour alone).
 * Source: `bradford`. For CAT16, which the engine alone offers: Li et al., Color Res. Appl. 42(6):703–718 (2017),
 * doi 10.1002/col.22131, one step, both whites at Y = 1.
 */
export function adaptXyz(
  xyz: Xyz,
  fromWhite: Xyz,
  toWhite: Xyz,
  method: AdaptationMethod = 'bradford',
  degree = 1,
): Xyz {
  const [x, y, z] = times(adaptationMatrix(fromWhite, toWhite, method, degree), [xyz.x, xyz.y, xyz.z]);
  return { x, y, z };
}

/** The same as a matrix on XYZ, to be kept where many colours share one pair of whites. */
export function adaptationMatrix(
  fromWhite: Xyz,
  toWhite: Xyz,
  method: AdaptationMethod = 'bradford',
  degree = 1,
): Matrix {
  const cone = coneMatrices[method];
  const from = times(cone, triple(fromWhite));
  const to = times(cone, triple(toWhite));
  const [l, m, s] = [0, 1, 2].map((i) => degree * (to[i]! / from[i]!) + 1 - degree) as [
    number,
    number,
    number,
  ];
  return product(inverse(cone), product([l, 0, 0, 0, m, 0, 0, 0, s], cone));
}

/** XYZ to sharpened cone responses. Sources as above. */
const coneMatrices: Readonly<Record<AdaptationMethod, Matrix>> = {
  bradford: [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296],
  cat16: [0.401288, 0.650173, -0.051461, -0.250268, 1.204414, 0.045854, -0.002079, 0.048952, 0.953127],
};

function triple({ x, y, z }: Xyz): Triple {
  return [x, y, z];
}
