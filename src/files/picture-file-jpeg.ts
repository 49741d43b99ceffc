/** The size at which a JPEG file is shown and how many channels it has (4 for printing inks), or null where no frame header is found. Source: ITU-T T.81 §B.1.1; Exif 2.32 §4.6.4 (orientation). */
export function jpegFrame(view: DataView): { width: number; height: number; channels: number } | null {
  let turned = false;
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    // Fill bytes and markers that stand alone.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) {
      at += 2;
      continue;
    }
    if (marker === 0xd9 || marker === 0xda) return null;
    const length = view.getUint16(at + 2);
    if (length < 2) return null;
    if (marker === 0xe1) turned ||= exifOrientation(view, at + 4, length - 2) >= 5;
    if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) {
      const height = view.getUint16(at + 5);
      const width = view.getUint16(at + 7);
      const channels = view.getUint8(at + 9);
      return turned ? { width: height, height: width, channels } : { width, height, channels };
    }
    at += 2 + length;
  }
  return null;
}

/** 1–8; 5 and more stand on their side. 1 where the segment does not tell. */
function exifOrientation(view: DataView, start: number, length: number): number {
  const end = Math.min(start + length, view.byteLength);
  if (end - start < 14 || view.getUint32(start) !== 0x45786966) return 1;
  const tiff = start + 6;
  const little = view.getUint16(tiff) === 0x4949;
  const first = tiff + view.getUint32(tiff + 4, little);
  if (first + 2 > end) return 1;
  const count = view.getUint16(first, little);
  for (let i = 0; i < count; i++) {
    const entry = first + 2 + i * 12;
    if (entry + 12 > end) return 1;
    if (view.getUint16(entry, little) === 0x0112) return view.getUint16(entry + 8, little);
  }
  return 1;
}
