import { type Drawing, type Paper, PDF_FONTS, type PdfDocument, type Pen, pdfPen } from '@icewright/picture';
import PDFKit from 'pdfkit';

/** What is used of pdfkit beyond drawing; it brings no types of its own. */
type KitDocument = PdfDocument & {
  registerFont(name: string, bytes: Uint8Array): void;
  addPage(): void;
  on(event: 'data', listener: (chunk: Uint8Array<ArrayBuffer>) => void): void;
  on(event: 'end', listener: () => void): void;
  end(): void;
};

/** Pages as a vector PDF: lines and letters, no picture. Loaded only when somebody prints. */
export async function paperPdf(of: {
  readonly title: string;
  readonly paper: Paper;
  /** What stands on which page may hang on how wide words are: `pen` measures as it will draw. */
  readonly pages: (pen: Pen) => readonly Drawing[];
}): Promise<Blob> {
  const fonts = await Promise.all(
    PDF_FONTS.map(async font => [font.name, await bytesOf(font.file)] as const),
  );
  const Kit = PDFKit as unknown as new (set: object) => KitDocument;
  // Without a font of its own: the standard ones are not built in, and a page brings all it needs.
  const document = new Kit({
    size: of.paper === 'a4' ? 'A4' : 'LETTER',
    margin: 0,
    font: '',
    info: { Title: of.title, Creator: 'Icewright' },
  });
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  const done = new Promise<void>(resolve => document.on('end', resolve));
  document.on('data', chunk => chunks.push(chunk));
  for (const [name, bytes] of fonts) document.registerFont(name, bytes);
  of.pages(pdfPen(document)).forEach((draw, index) => {
    if (index > 0) document.addPage();
    draw(pdfPen(document));
  });
  document.end();
  await done;
  return new Blob(chunks, { type: 'application/pdf' });
}

const addresses = import.meta.glob<string>(
  [
    '../../node_modules/@fontsource/encode-sans/files/encode-sans-{latin,latin-ext,vietnamese}-{400,600}-normal.woff',
    '../../node_modules/@fontsource/newsreader/files/newsreader-{latin,latin-ext,vietnamese}-{400,500}-normal.woff',
    '../../node_modules/@fontsource/newsreader/files/newsreader-{latin,latin-ext,vietnamese}-400-italic.woff',
  ],
  { query: '?url', import: 'default', eager: true },
);

async function bytesOf(file: string): Promise<Uint8Array> {
  const address = addresses[`../../node_modules/${file}`];
  if (address === undefined) throw new Error(`no font file ${file} was built in`);
  return new Uint8Array(await (await fetch(address)).arrayBuffer());
}
