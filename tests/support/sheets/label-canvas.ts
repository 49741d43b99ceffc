/** A canvas of labels: which ink lies where, drawn at several samples a pixel so that edges come out soft. */
export class LabelCanvas {
  readonly width: number;
  readonly height: number;
  readonly labels: Uint8Array;

  constructor(width: number, height: number) {
    this.width = width;
    this.height = height;
    this.labels = new Uint8Array(width * height);
  }

  /** Fills every place of the box where `inside(x, y)` holds; how many places changed. */
  fillWhere(
    x0: number,
    y0: number,
    x1: number,
    y1: number,
    label: number,
    inside: (x: number, y: number) => boolean,
  ): number {
    let changed = 0;
    const left = Math.max(0, Math.floor(x0));
    const right = Math.min(this.width, Math.ceil(x1));
    const bottom = Math.min(this.height, Math.ceil(y1));
    const { labels, width } = this;
    for (let y = Math.max(0, Math.floor(y0)); y < bottom; y++)
      for (let x = left, i = y * width + left; x < right; x++, i++) {
        if (labels[i] === label || !inside(x + 0.5, y + 0.5)) continue;
        labels[i] = label;
        changed++;
      }
    return changed;
  }

  ellipse(cx: number, cy: number, rx: number, ry: number, turn: number, label: number): number {
    const c = Math.cos(turn);
    const s = Math.sin(turn);
    const r = Math.max(rx, ry);
    return this.fillWhere(cx - r, cy - r, cx + r, cy + r, label, (x, y) => {
      const u = ((x - cx) * c + (y - cy) * s) / rx;
      const v = (-(x - cx) * s + (y - cy) * c) / ry;
      return u * u + v * v <= 1;
    });
  }

  rect(x: number, y: number, w: number, h: number, label: number): number {
    return this.fillWhere(
      x,
      y,
      x + w,
      y + h,
      label,
      (px, py) => px >= x && px < x + w && py >= y && py < y + h,
    );
  }

  line(x1: number, y1: number, x2: number, y2: number, width: number, label: number): number {
    const dx = x2 - x1;
    const dy = y2 - y1;
    const len2 = dx * dx + dy * dy || 1;
    const r = width / 2;
    return this.fillWhere(
      Math.min(x1, x2) - r,
      Math.min(y1, y2) - r,
      Math.max(x1, x2) + r,
      Math.max(y1, y2) + r,
      label,
      (x, y) => {
        const t = Math.max(0, Math.min(1, ((x - x1) * dx + (y - y1) * dy) / len2));
        const ex = x - x1 - t * dx;
        const ey = y - y1 - t * dy;
        return ex * ex + ey * ey <= r * r;
      },
    );
  }

  /** A closed polygon of points, even-odd. */
  polygon(points: readonly (readonly [number, number])[], label: number): number {
    const xs = points.map((p) => p[0]);
    const ys = points.map((p) => p[1]);
    const crossings: number[] = [];
    let row = Number.NaN;
    return this.fillWhere(
      Math.min(...xs),
      Math.min(...ys),
      Math.max(...xs),
      Math.max(...ys),
      label,
      (x, y) => {
        if (y !== row) {
          row = y;
          crossings.length = 0;
          for (let i = 0, j = xs.length - 1; i < xs.length; j = i++)
            if (ys[i]! > y !== ys[j]! > y)
              crossings.push(((xs[j]! - xs[i]!) * (y - ys[i]!)) / (ys[j]! - ys[i]!) + xs[i]!);
        }
        let odd = false;
        for (let i = 0; i < crossings.length; i++) if (x < crossings[i]!) odd = !odd;
        return odd;
      },
    );
  }
}
