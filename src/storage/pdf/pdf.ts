import type { Board } from '../../board/model.ts';

/** Points in an inch of PDF, and the board's pixels in one. */
const pointsPerPixel = 72 / 300;

/**
 * A board as a PDF page of its own size. Text is set as real text in the bundled fonts and shapes stay shapes; where
 * the fonts lack a letter that the board uses, the whole board is placed as its picture at 300 ppi instead.
 * @param png - makes that picture.
 */
export async function boardPdf(board: Board, png: () => Promise<Blob>): Promise<Uint8Array<ArrayBuffer>> {
  const { PDFDocument } = await import('pdf-lib');
  const { drawScene, UnsetText } = await import('./pdf-scene.ts');
  const { pdfFonts } = await import('./pdf-fonts.ts');
  const { width, height, title, description } = board.scene;
  const fresh = async () => {
    const document = await PDFDocument.create();
    document.setTitle(board.title, { showInWindowTitleBar: true });
    document.setSubject(description || title);
    document.setLanguage('en-GB');
    document.setCreator('Quirewise');
    document.setProducer('Quirewise');
    return { document, page: document.addPage([width * pointsPerPixel, height * pointsPerPixel]) };
  };
  const { document, page } = await fresh();
  try {
    await drawScene(document, page, board.scene, pointsPerPixel, await pdfFonts(document));
    return new Uint8Array(await document.save());
  } catch (error) {
    if (!(error instanceof UnsetText)) throw error;
    const picture = await fresh();
    const image = await picture.document.embedPng(await (await png()).arrayBuffer());
    picture.page.drawImage(image, {
      x: 0,
      y: 0,
      width: picture.page.getWidth(),
      height: picture.page.getHeight(),
    });
    return new Uint8Array(await picture.document.save());
  }
}
