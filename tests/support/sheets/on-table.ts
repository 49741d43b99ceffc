import { smoothNoise } from '../../../src/demo/chance.ts';
import type { Corners, PixelImage } from '../../../src/sheet/model.ts';
import { type Dice, dice } from './dice.ts';
import { type DrawnSheet, toImage } from './draw-sheet.ts';
import { unevenness } from './photograph.ts';
import { noise } from './spoil.ts';
import { linearOf, type Rgb3 } from './truth-colour.ts';

export const tables = ['wood', 'dark', 'grey', 'cloth'] as const;
export type Table = (typeof tables)[number];

export interface Pose {
  /** Turn on the table, and tilt of the camera with the direction it leans to; radians. */
  readonly turn: number;
  readonly tilt: number;
  readonly toward: number;
  /** Width of the sheet as a part of the picture's width, before the tilt. */
  readonly size: number;
  /** Where the middle of the sheet lies, as fractions of the picture. */
  readonly x: number;
  readonly y: number;
}

/** A pose that a hand with a phone makes: up to 25° of tilt, any small turn, the sheet well in view. */
export function poseOf(roll: Dice): Pose {
  return {
    turn: roll.between(-0.35, 0.35),
    tilt: (roll.between(0, 25) * Math.PI) / 180,
    toward: roll.between(0, 2 * Math.PI),
    size: roll.between(0.42, 0.52),
    x: roll.between(0.47, 0.53),
    y: roll.between(0.47, 0.53),
  };
}

/**
 * A sheet that lies on a table, through a pinhole camera: each pixel's ray is met with the plane of the table, so no
 * homography is used here. The true corners go with it, clockwise from the sheet's top left.
 */
export function onTable(
  drawn: DrawnSheet,
  table: Table,
  seed: number,
  pose: Pose = poseOf(dice(seed * 101 + 7)),
  width = 800,
  height = 600,
): { image: PixelImage; corners: Corners } {
  const roll = dice(seed * 71 + 29);
  const camera = cameraOf(pose, width, height);
  const aspect = drawn.height / drawn.width;
  const tableAt = tableOf(table, roll);
  const light = unevenness(
    width,
    height,
    roll.between(0.05, 0.25),
    roll.between(0, 6.28),
    roll.between(0, 0.2),
  );
  const lean = [roll.between(-0.012, 0.012), roll.between(-0.012, 0.012)] as const;
  const linear = new Float32Array(width * height * 3);
  const samples = 2;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const gain = light(x, y) / samples ** 2;
      const o = (y * width + x) * 3;
      for (let j = 0; j < samples; j++)
        for (let i = 0; i < samples; i++) {
          const [u, v] = camera.toPlane(x + (i + 0.5) / samples, y + (j + 0.5) / samples);
          const su = u + 0.5;
          const sv = v / aspect + 0.5;
          const inside = su >= 0 && su < 1 && sv >= 0 && sv < 1;
          const p = inside
            ? (Math.floor(sv * drawn.height) * drawn.width + Math.floor(su * drawn.width)) * 3
            : -1;
          const shade = inside ? 1 : shadow(u - lean[0], v - lean[1], aspect);
          const rgb = inside ? null : tableAt(u, v);
          for (let c = 0; c < 3; c++) linear[o + c]! += gain * (rgb ? rgb[c]! * shade : drawn.linear[p + c]!);
        }
    }
  const corner = (u: number, v: number) => camera.toPicture(u, v * aspect);
  const corners: Corners = [corner(-0.5, -0.5), corner(0.5, -0.5), corner(0.5, 0.5), corner(-0.5, 0.5)];
  return { image: noise(toImage({ width, height, linear }), roll.between(1, 2.5), seed), corners };
}

/** The thin soft shadow that paper throws beside itself. */
function shadow(u: number, v: number, aspect: number): number {
  const [du, dv] = [Math.max(0, Math.abs(u) - 0.5), Math.max(0, Math.abs(v) - aspect / 2)];
  // From here on the shadow is less than a double's last bit.
  if (du > 0.05 || dv > 0.05) return 1;
  const off = Math.hypot(du, dv);
  return 1 - 0.35 * Math.exp(-((off / 0.008) ** 2));
}

function cameraOf(pose: Pose, width: number, height: number) {
  const focal = 1.1 * width;
  // At this distance the sheet, one unit wide, is `size` of the picture.
  const away = focal / (pose.size * width);
  const [ct, st] = [Math.cos(pose.tilt), Math.sin(pose.tilt)];
  const [ca, sa] = [Math.cos(pose.toward), Math.sin(pose.toward)];
  const [cr, sr] = [Math.cos(pose.turn), Math.sin(pose.turn)];
  const mx = pose.x * width;
  const my = pose.y * height;
  // The plane's axes in the camera's space: turned in itself, then leaned about the axis that lies across `toward`.
  const lean = (x: number, y: number): [number, number, number] => {
    const along = x * ca + y * sa;
    const across = -x * sa + y * ca;
    return [along * ct * ca - across * sa, along * ct * sa + across * ca, along * st];
  };
  const e1 = lean(cr, sr);
  const e2 = lean(-sr, cr);
  const normal = [
    e1[1] * e2[2] - e1[2] * e2[1],
    e1[2] * e2[0] - e1[0] * e2[2],
    e1[0] * e2[1] - e1[1] * e2[0],
  ] as const;
  return {
    toPlane(px: number, py: number): [number, number] {
      const dx = (px - mx) / focal;
      const dy = (py - my) / focal;
      const t = (away * normal[2]) / (dx * normal[0] + dy * normal[1] + normal[2]);
      const at = [dx * t, dy * t, t - away] as const;
      return [at[0] * e1[0] + at[1] * e1[1] + at[2] * e1[2], at[0] * e2[0] + at[1] * e2[1] + at[2] * e2[2]];
    },
    toPicture(u: number, v: number): { x: number; y: number } {
      const z = away + u * e1[2] + v * e2[2];
      return {
        x: (mx + (focal * (u * e1[0] + v * e2[0])) / z) / width,
        y: (my + (focal * (u * e1[1] + v * e2[1])) / z) / height,
      };
    },
  };
}

/** Colour of a table in linear light by place, in widths of the sheet. */
function tableOf(table: Table, roll: Dice): (u: number, v: number) => Rgb3 {
  const seed = roll.whole(1, 1e6);
  const grain = smoothNoise(seed);
  if (table === 'wood') {
    const light = linearOf(
      roll.pick<Rgb3>([
        [176, 128, 84],
        [150, 104, 66],
        [198, 160, 118],
      ]),
    );
    return (u, v) => {
      const bend = v + 0.05 * grain(u * 2 + 9, v * 2);
      const ring = 0.5 + 0.5 * Math.sin(60 * bend + 3 * grain(u * 1.5, bend * 9));
      const k = 0.62 + 0.25 * ring + 0.28 * grain(u * 4, v * 90);
      return [light[0] * k, light[1] * k, light[2] * k];
    };
  }
  if (table === 'cloth') {
    const [p, q] = roll.pick<[Rgb3, Rgb3]>([
      [
        [70, 96, 150],
        [214, 220, 228],
      ],
      [
        [150, 44, 52],
        [232, 222, 206],
      ],
      [
        [62, 92, 66],
        [196, 190, 150],
      ],
    ]);
    const [a, b] = [linearOf(p), linearOf(q)];
    const step = roll.between(0.04, 0.09);
    const mod = (t: number): number => t / step - Math.floor(t / step);
    return (u, v) => {
      const n = (mod(u) < 0.5 ? 1 : 0) + (mod(v + u * 0.05) < 0.5 ? 1 : 0);
      const k = (n / 2) * (0.9 + 0.2 * grain(u * 150, v * 150));
      return [a[0] + (b[0] - a[0]) * k, a[1] + (b[1] - a[1]) * k, a[2] + (b[2] - a[2]) * k];
    };
  }
  const rgb = linearOf(
    table === 'dark'
      ? roll.pick<Rgb3>([
          [38, 36, 36],
          [30, 34, 44],
          [52, 40, 32],
        ])
      : roll.pick<Rgb3>([
          [128, 128, 126],
          [150, 150, 154],
          [108, 110, 112],
        ]),
  );
  return (u, v) => {
    const k = 0.92 + 0.16 * grain(u * 60, v * 60);
    return [rgb[0] * k, rgb[1] * k, rgb[2] * k];
  };
}
