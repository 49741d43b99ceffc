import type { Places, Side } from '../../src/sheet/model.ts';

/** A picture of a sample paper and the places of its inks: rows of pennants under a line, drawn from the side's inks. */
export function drawSample(side: Side): { address: string; places: Places } {
  const size = 240;
  const labels = new Uint8Array(size * size);
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) labels[y * size + x] = labelAt(x, y, side.inks.length);
  }
  const canvas = document.createElement('canvas');
  canvas.width = size;
  canvas.height = size;
  const context = canvas.getContext('2d');
  const hexes = [side.base.hex, ...side.inks.map((ink) => ink.hex)];
  if (context) {
    labels.forEach((label, i) => {
      context.fillStyle = hexes[label] ?? side.base.hex;
      context.fillRect(i % size, Math.floor(i / size), 1, 1);
    });
  }
  return { address: canvas.toDataURL('image/png'), places: { width: size, height: size, labels } };
}

function labelAt(x: number, y: number, inks: number): number {
  const row = Math.floor(y / 40);
  const down = y - row * 40 - 6 - 3 * Math.sin((x / 60) * Math.PI * 2);
  if (down > -1 && down < 1.2 && inks >= 1) return 1;
  const pennant = Math.floor(x / 30);
  const across = Math.abs(x - pennant * 30 - 15);
  if (down < 1.2 || down > 27 || across > 12 * (1 - down / 27)) return 0;
  const ink = 1 + ((pennant + row * 3) % Math.max(1, inks - 1));
  const spot = Math.hypot(x - pennant * 30 - 15, down - 8) < 3;
  return spot && ink === 2 ? inks : ink;
}
