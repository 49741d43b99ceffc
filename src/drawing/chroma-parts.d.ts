/** The parts of chroma-js that are used here, by themselves: the whole of it is four times as large on the page. */

declare module 'chroma-js/src/generator/mix.js' {
  /** A colour between two, `at` 0–1, in a space by name. */
  export default function mix(from: string, to: string, at: number, space: 'oklab'): { hex(): string };
}

declare module 'chroma-js/src/utils/contrast.js' {
  /** Contrast ratio of two colours, 1–21. */
  export default function contrast(one: string, other: string): number;
}

declare module 'chroma-js/src/interpolator/oklab.js';
declare module 'chroma-js/src/io/hex/index.js';
declare module 'chroma-js/src/io/rgb/index.js';
declare module 'chroma-js/src/ops/alpha.js';
