import { boardPdf } from './pdf.ts';
import type { PdfAnswer, PdfRequest } from './pdf-messages.ts';

/** A thin shell: a board in, a PDF out. Embedding fonts takes more than a second, so the page does not do it. */
const page = self as unknown as {
  postMessage(message: PdfAnswer, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<PdfRequest>) => void) | null;
};

/** Thrown through `boardPdf` where it asks for a picture that is not there yet. */
class PictureWanted extends Error {}

page.onmessage = ({ data: { board, png } }) => {
  const picture = () =>
    png === null ? Promise.reject(new PictureWanted()) : Promise.resolve(new Blob([png]));
  boardPdf(board, picture).then(
    (bytes) => page.postMessage({ kind: 'done', bytes }, [bytes.buffer]),
    (error) =>
      page.postMessage(
        error instanceof PictureWanted ? { kind: 'unset' } : { kind: 'failed', says: String(error) },
      ),
  );
};
