import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Paper } from '../picture/card/page-measures.ts';
import type { PdfDocument } from '../picture/pen/pdf-document.ts';
import { PDF_FONTS } from '../picture/pen/pdf-fonts.ts';
import { pdfPen } from '../picture/pen/pdf-pen.ts';
import type { Drawing, Pen } from '../picture/pen/pen.ts';

type TestDocument = PdfDocument & {
  registerFont(name: string, bytes: Buffer): void;
  addPage(): void;
  on(event: 'data', listener: (chunk: Buffer) => void): void;
  on(event: 'end', listener: () => void): void;
  end(): void;
};

/** Pages as a PDF by `pdfkit`, with the fonts as the app has them. Only tests import this. */
export async function printedPages(
  pdfkit: unknown,
  pages: readonly Drawing[] | ((pen: Pen) => readonly Drawing[]),
  paper: Paper = 'a4',
): Promise<Buffer> {
  const Kit = pdfkit as new (set: object) => TestDocument;
  const size = paper === 'a4' ? 'A4' : 'LETTER';
  const document = new Kit({ size, margin: 0, font: '', info: { CreationDate: new Date(0) } });
  for (const font of PDF_FONTS)
    document.registerFont(font.name, readFileSync(join('node_modules', font.file)));
  const chunks: Buffer[] = [];
  const done = new Promise<void>(resolve => document.on('end', resolve));
  document.on('data', chunk => chunks.push(chunk));
  (typeof pages === 'function' ? pages(pdfPen(document)) : pages).forEach((draw, index) => {
    if (index > 0) document.addPage();
    draw(pdfPen(document));
  });
  document.end();
  await done;
  return Buffer.concat(chunks);
}
