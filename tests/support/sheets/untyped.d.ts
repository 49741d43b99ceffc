declare module 'quantize' {
  export default function quantize(
    pixels: readonly (readonly number[])[],
    colours: number,
  ): { palette(): number[][] } | false;
}

declare module 'rgbquant' {
  export default class RgbQuant {
    constructor(options: { colors: number });
    sample(pixels: Uint8ClampedArray, width: number): void;
    palette(tuples: boolean, noSort: boolean): number[][];
  }
}
