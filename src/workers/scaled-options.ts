import type { Frame, ReadOptions } from '../sheet/model.ts';

/** The options for a picture that was made smaller by `factor`: its pixels are larger and its frames smaller. */
export function scaledOptions(options: ReadOptions, factor: number): ReadOptions {
  if (factor === 1) return options;
  const { mmPerPixel, crop, card, chart, ...fractions } = options;
  return {
    ...fractions,
    ...(mmPerPixel === undefined ? {} : { mmPerPixel: mmPerPixel / factor }),
    ...(crop === undefined ? {} : { crop: scaledFrame(crop, factor) }),
    ...(card === undefined ? {} : { card: scaledFrame(card, factor) }),
    ...(chart === undefined ? {} : { chart: scaledFrame(chart, factor) }),
  };
}

function scaledFrame<T extends Frame>(frame: T, factor: number): T {
  const { x, y, width, height } = frame;
  return { ...frame, x: x * factor, y: y * factor, width: width * factor, height: height * factor };
}
