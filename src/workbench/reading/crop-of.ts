import type { Part, ReadOptions } from '../../sheet/model.ts';

/** What is read of a picture for a part of it, in the picture's pixels. */
export function cropOf(
  { frame, outline }: Pick<Part, 'frame' | 'outline'>,
  picture: { readonly width: number; readonly height: number },
): Pick<ReadOptions, 'crop' | 'outline'> {
  const crop = {
    x: frame.x * picture.width,
    y: frame.y * picture.height,
    width: frame.width * picture.width,
    height: frame.height * picture.height,
  };
  return outline === undefined ? { crop } : { crop, outline };
}
