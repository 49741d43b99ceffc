import type { Places } from '../model.ts';
import { nothing } from './label-counts.ts';

/** Longer side of a map of places. */
const longest = 512;

/** A label map brought down to at most 512 on its longer side, each place the label at its middle; labels are renamed by `name`. */
export function placesOf(labels: Uint8Array, width: number, height: number, name: readonly number[]): Places {
  const scale = Math.min(1, longest / Math.max(width, height));
  const w = Math.max(1, Math.round(width * scale));
  const h = Math.max(1, Math.round(height * scale));
  const out = new Uint8Array(w * h);
  for (let y = 0; y < h; y++) {
    const sy = Math.min(height - 1, Math.floor(((y + 0.5) * height) / h));
    for (let x = 0; x < w; x++) {
      const k = labels[sy * width + Math.min(width - 1, Math.floor(((x + 0.5) * width) / w))]!;
      out[y * w + x] = k === nothing ? nothing : name[k]!;
    }
  }
  return { width: w, height: h, labels: out };
}
