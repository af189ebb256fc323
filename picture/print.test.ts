/// <reference path="./pdfkit.d.ts" />
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import PDFKit from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { drawIceCard } from './card/draw-ice-card.ts';
import { cardPagesOf, type IceCard } from './card/ice-card.ts';
import { letteringOf } from './lettering.ts';
import { fontRunsOf } from './pen/font-runs.ts';
import { letterWidth } from './pen/letter-widths.ts';
import type { PdfDocument } from './pen/pdf-document.ts';
import { PDF_FONTS, pdfFontName } from './pen/pdf-fonts.ts';
import { pdfPen } from './pen/pdf-pen.ts';
import { ICE_CARD } from './scenes/ice-card.plan.ts';

/** A pdfkit document as the tests use it. */
type TestDocument = PdfDocument & {
  registerFont(name: string, bytes: Buffer): void;
  addPage(): void;
  on(event: 'data', listener: (chunk: Buffer) => void): void;
  on(event: 'end', listener: () => void): void;
  end(): void;
  readonly _font: { readonly font: { hasGlyphForCodePoint(code: number): boolean } };
};

/** One empty A4 page with every font of paper registered. */
const emptyDocument = (): TestDocument => {
  const Kit = PDFKit as unknown as new (set: object) => TestDocument;
  const document = new Kit({ size: 'A4', margin: 0, font: '', info: { CreationDate: new Date(0) } });
  for (const font of PDF_FONTS)
    document.registerFont(font.name, readFileSync(join('node_modules', font.file)));
  return document;
};

const printed = async (card: IceCard): Promise<Buffer> => {
  const document = emptyDocument();
  const chunks: Buffer[] = [];
  const done = new Promise<void>(resolve => document.on('end', resolve));
  document.on('data', chunk => chunks.push(chunk));
  cardPagesOf(card).forEach((page, index) => {
    if (index > 0) document.addPage();
    drawIceCard(pdfPen(document), page);
  });
  document.end();
  await done;
  return Buffer.concat(chunks);
};

const asked = (tool: string, pdf: Buffer, ...more: string[]): string => {
  const file = join(mkdtempSync(join(tmpdir(), 'icewright-card-')), 'card.pdf');
  writeFileSync(file, pdf);
  return execFileSync(tool, [file, ...more], { encoding: 'utf8' });
};

const hasPoppler = (() => {
  try {
    execFileSync('pdfinfo', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

describe('the ice card on paper', () => {
  it('is one A4 page of lines and embedded letters, with no picture in it', async () => {
    const pdf = await printed(ICE_CARD);
    const text = pdf.toString('latin1');
    expect(text.match(/\/Type \/Page\b/g)).toHaveLength(1);
    expect(text).toMatch(/\/MediaBox \[0 0 595\.28 841\.89\]/);
    expect(text).not.toMatch(/\/Subtype \/Image/);
    expect(text.match(/\/FontFile[23] /g)?.length).toBeGreaterThanOrEqual(5);
  });

  it('is the same, byte for byte, each time', async () => {
    const [one, other] = await Promise.all([printed(ICE_CARD), printed(ICE_CARD)]);
    expect(one.equals(other)).toBe(true);
  });

  it.skipIf(!hasPoppler)('says names of many languages as they are written (read by poppler)', async () => {
    const text = asked('pdftotext', await printed(ICE_CARD), '-layout', '-')
      .normalize('NFC')
      .replace(/\s+/g, ' ');
    expect(text).toContain('Žižková');
    expect(text).toContain('Đặng Thị Ước');
    expect(text).toContain('Sørmo');
    expect(text).toContain('Before the first');
    expect(text).toContain('rink’s and the federation’s rules come first');
    for (const block of ICE_CARD.blocks) {
      expect(text).toContain(block.title);
      expect(text).toContain(block.startClock);
    }
    const fonts = asked('pdffonts', await printed(ICE_CARD));
    for (const line of fonts
      .split('\n')
      .slice(2)
      .filter(each => each.trim() !== '')) {
      expect(line, 'every font embedded').toMatch(/\s(yes)\s+(yes|no)\s+(yes|no)\s/);
    }
  });

  it.skipIf(!hasPoppler)('keeps eight blocks on one page and goes on to a second with more', async () => {
    const blocks = (count: number) =>
      Array.from({ length: count }, (_, index) => ICE_CARD.blocks[index % 6]!);
    const eight = asked('pdfinfo', await printed({ ...ICE_CARD, blocks: blocks(8) }));
    expect(eight).toMatch(/Pages:\s+1\n/);
    const eleven = await printed({ ...ICE_CARD, blocks: blocks(11) });
    expect(asked('pdfinfo', eleven)).toMatch(/Pages:\s+2\n/);
    const text = asked('pdftotext', eleven, '-');
    expect(text.match(/Before the first/g)).toHaveLength(2);
  });
});

/** Invented names in many spellings of Latin letters. */
const NAMES = [
  'Žižková',
  'Sørmo',
  'Đặng Thị Ước',
  'Łukaszewicz',
  'Ğülşen Çağlayan',
  'Åström',
  'Ólafsdóttir',
  'Quỳnh Như',
  'Brânză',
  'Őry',
  'O’Hara-Müller',
];

describe('the fonts of paper', () => {
  it('send every letter of these names to a file that has it, in every face (asked of the font files)', () => {
    const document = emptyDocument();
    for (const name of NAMES) {
      for (const lettering of ['cardPoint', 'cardStrong', 'cardTitle', 'cardCue', 'cardBlock'] as const) {
        for (const run of fontRunsOf(name)) {
          document.font(pdfFontName(letteringOf(lettering), run.script));
          for (const letter of run.words) {
            const has = document._font.font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0);
            expect(has, `${letter} of ${name} in ${run.script}`).toBe(true);
          }
        }
      }
    }
  });
});

describe('the table of letter widths', () => {
  it('agrees with the font files within 3 % (measured by pdfkit, kerning and all)', () => {
    const document = emptyDocument();
    for (const words of [
      'Before the first whistle',
      'Turn, look, middle',
      'whole sheet, ends by turns',
      'Žižková',
    ]) {
      for (const name of ['cardPoint', 'cardStrong', 'cardTitle', 'cardCue', 'cardBlock'] as const) {
        const lettering = letteringOf(name);
        const measured = fontRunsOf(words).reduce((sum, run) => {
          document.font(pdfFontName(lettering, run.script));
          document.fontSize(100);
          return sum + document.widthOfString(run.words, {});
        }, 0);
        expect(
          Math.abs(letterWidth(words, lettering) * 100 - measured) / measured,
          `${words} in ${name}`,
        ).toBeLessThan(0.03);
      }
    }
  });
});
