import {
  type Rgb as CuloriRgb,
  type Lab65,
  modeLab65,
  modeLrgb,
  modeOklab,
  modeRgb,
  modeXyz65,
  type Oklab,
  useMode,
  type Xyz65,
} from 'culori/fn';
import type { Lab, OkLab, Rgb, Xyz } from './model.ts';

/**
 * The one door to culori. Its modes are registered here, once, and its colours never leave this file:
 * what goes in and comes out are our own plain values, white D65 throughout.
 */
const toRgb = useMode(modeRgb);
useMode(modeLrgb);
const toXyz = useMode(modeXyz65);
const toLab = useMode(modeLab65);
const toOklab = useMode(modeOklab);

/** XYZ (Y = 1 for white) of gamma-encoded sRGB. */
export function xyzFromRgb({ r, g, b }: Rgb): Xyz {
  const { x, y, z } = toXyz({ mode: 'rgb', r, g, b });
  return { x, y, z };
}

/** Gamma-encoded sRGB of XYZ; outside the gamut the channels leave 0–1. */
export function rgbFromXyz({ x, y, z }: Xyz): Rgb {
  return plainRgb(toRgb({ mode: 'xyz65', x, y, z } satisfies Xyz65));
}

/** CIELAB D65 of XYZ. */
export function labFromXyz({ x, y, z }: Xyz): Lab {
  return plainLab(toLab({ mode: 'xyz65', x, y, z } satisfies Xyz65));
}

/** XYZ of CIELAB D65. */
export function xyzFromLab({ l, a, b }: Lab): Xyz {
  const { x, y, z } = toXyz({ mode: 'lab65', l, a, b } satisfies Lab65);
  return { x, y, z };
}

/** CIELAB D65 of gamma-encoded sRGB. */
export function labFromRgb({ r, g, b }: Rgb): Lab {
  return plainLab(toLab({ mode: 'rgb', r, g, b }));
}

/** Gamma-encoded sRGB of CIELAB D65, unmapped. */
export function rgbFromLab({ l, a, b }: Lab): Rgb {
  return plainRgb(toRgb({ mode: 'lab65', l, a, b } satisfies Lab65));
}

/** OKLab of gamma-encoded sRGB. */
export function oklabFromRgb({ r, g, b }: Rgb): OkLab {
  const lab = toOklab({ mode: 'rgb', r, g, b });
  return { l: lab.l, a: lab.a, b: lab.b };
}

/** Gamma-encoded sRGB of OKLab, unmapped. */
export function rgbFromOklab({ l, a, b }: OkLab): Rgb {
  return plainRgb(toRgb({ mode: 'oklab', l, a, b } satisfies Oklab));
}

function plainRgb({ r, g, b }: CuloriRgb): Rgb {
  return { r, g, b };
}

function plainLab({ l, a, b }: Lab65): Lab {
  return { l, a, b };
}
