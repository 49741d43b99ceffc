import type { Board } from '../../board/model.ts';
import type { PdfAnswer, PdfRequest } from './pdf-messages.ts';

/**
 * A board as PDF, made off the page's thread; where there can be no worker, on it.
 * @param png - the board as a picture, made only where the fonts lack a letter.
 */
export async function pdfOffPage(board: Board, png: () => Promise<Blob>): Promise<Uint8Array<ArrayBuffer>> {
  if (typeof Worker === 'undefined') return (await import('./pdf.ts')).boardPdf(board, png);
  const worker = new Worker(new URL('./pdf-worker.ts', import.meta.url), { type: 'module', name: 'pdf' });
  const ask = (request: PdfRequest) =>
    new Promise<PdfAnswer>((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<PdfAnswer>) => resolve(data);
      worker.onerror = (event) => reject(new Error(event.message));
      worker.postMessage(request);
    });
  try {
    let answer = await ask({ board, png: null });
    if (answer.kind === 'unset') answer = await ask({ board, png: await (await png()).arrayBuffer() });
    if (answer.kind !== 'done')
      throw new Error(answer.kind === 'failed' ? answer.says : 'The PDF could not be set.');
    return answer.bytes;
  } finally {
    worker.terminate();
  }
}
