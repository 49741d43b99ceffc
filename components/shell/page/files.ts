import type { ReadyFile } from '../../../src/workbench/session-types.ts';

/** Pictures that can be read, for the device's file chooser. Whatever else is chosen gets its own sentence. */
export const pictureTypes = 'image/*,.heic,.heif,.tif,.tiff';

/** Hands a finished file to the browser's download. */
export function handOver({ name, blob }: ReadyFile): void {
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has its own hold on the bytes once it has begun.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Asks the device for files; resolves to none when the chooser is shut without a choice. */
export function askForFiles(accept: string, multiple: boolean): Promise<readonly File[]> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = accept;
    input.multiple = multiple;
    input.addEventListener('change', () => resolve([...(input.files ?? [])]));
    input.addEventListener('cancel', () => resolve([]));
    input.click();
  });
}
