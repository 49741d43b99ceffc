import type { Picture } from '../storage/database.ts';

/** A picture that was drawn on the page, as it is stored. Rejects where it can't be opened, or is no JPEG or PNG. */
export async function drawnPicture(picture: Blob, id: string): Promise<Picture> {
  const { type } = picture;
  if (type !== 'image/jpeg' && type !== 'image/png') throw new Error(`a drawn picture of type ${type}`);
  const bitmap = await createImageBitmap(picture);
  const { width, height } = bitmap;
  bitmap.close();
  const bytes = await picture.arrayBuffer();
  return { id, bytes, type, width, height, thumb: null, addedAt: new Date().toISOString() };
}
