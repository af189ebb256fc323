/// <reference path="./pdfkit.d.ts" />
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import PDFKit from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { pdfWords } from '../test/pdf-words.ts';
import { printedPages } from '../test/printed-pages.ts';
import { cardPagesOf } from './card/card-pages.ts';
import { drawIceCard } from './card/draw-ice-card.ts';
import { type IceCard, STANDING_CAUTIONS } from './card/ice-card.ts';
import { PAPERS } from './card/page-measures.ts';
import { KEY_WORDS } from './drill/key.ts';
import { drawnMarks, KEY_ENTRIES } from './drill/used-marks.ts';
import { letteringOf } from './lettering.ts';
import { fontRunsOf } from './pen/font-runs.ts';
import { letterWidth } from './pen/letter-widths.ts';
import type { PdfDocument } from './pen/pdf-document.ts';
import { PDF_FONTS, pdfFontName } from './pen/pdf-fonts.ts';
import { recordingOf } from './pen/recording-pen.ts';
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

const printed = (card: IceCard): Promise<Buffer> =>
  printedPages(
    PDFKit,
    cardPagesOf(card).map(page => pen => drawIceCard(pen, page)),
  );

/** Without white space: a line on paper breaks where it must, and a word in two scripts is drawn in two pieces. */
const tight = (words: string): string => words.normalize('NFC').replace(/\s+/g, '');
const wordsIn = (pdf: Buffer): string => tight(pdfWords(pdf));
const pagesIn = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0;

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

  it('stands whole on letter paper, which is shorter and broader', () => {
    const { left, right, top, bottom } = PAPERS.letter;
    const wordsOn = (paper: 'a4' | 'letter') =>
      recordingOf(pen => drawIceCard(pen, ICE_CARD, paper)).flatMap(call =>
        call.call === 'text' && call.lettering.startsWith('card') ? [call] : [],
      );
    const words = wordsOn('letter');
    for (const { words: said, x, y } of words) {
      expect(x, said).toBeGreaterThanOrEqual(left - 0.01);
      expect(x, said).toBeLessThan(right);
      expect(y, said).toBeGreaterThanOrEqual(top);
      expect(y, said).toBeLessThanOrEqual(bottom + 0.01);
    }
    const titles = (paper: 'a4' | 'letter') =>
      wordsOn(paper).filter(({ lettering }) => ['cardBlock', 'cardClock', 'cardCue'].includes(lettering));
    expect(titles('letter').map(({ words: said }) => said)).toEqual(
      titles('a4').map(({ words: said }) => said),
    );
  });

  it('is the same, byte for byte, each time', async () => {
    const [one, other] = await Promise.all([printed(ICE_CARD), printed(ICE_CARD)]);
    expect(one.equals(other)).toBe(true);
  });

  it('says names of many languages as they are written, and every word of the blocks', async () => {
    const said = wordsIn(await printed(ICE_CARD));
    for (const words of ['Žižková', 'Đặng Thị Ước', 'Sørmo', 'Before the first whistle']) {
      expect(said).toContain(tight(words));
    }
    for (const block of ICE_CARD.blocks) {
      expect(said).toContain(tight(block.title));
      expect(said).toContain(tight(block.startClock));
    }
  });

  it('says every caution whole, those of the practice and the standing ones', async () => {
    const said = wordsIn(await printed(ICE_CARD));
    expect(said).toContain(tight([...ICE_CARD.cautions, ...STANDING_CAUTIONS].join(' ')));
  });

  it('has a key of the marks it uses and of no others', async () => {
    const used = drawnMarks(ICE_CARD.blocks);
    expect(used.length).toBeGreaterThan(10);
    // The key is the last that is drawn: its words follow the last caution, among the letters of its own signs.
    const lines = pdfWords(await printed(ICE_CARD))
      .split('\n')
      .map(tight);
    const key = lines.slice(lines.findLastIndex(line => line.endsWith(tight('come first.'))) + 1);
    for (const entry of KEY_ENTRIES) {
      expect(key.includes(tight(KEY_WORDS[entry])), entry).toBe(used.includes(entry));
    }
  });

  it('parts no number from its name at the end of a line', async () => {
    const people = Array.from({ length: 19 }, (_, index) => `${index + 10}\u00a0Lindqvaer`).join(', ');
    const pdf = await printed({ ...ICE_CARD, groups: [{ name: 'White', people }] });
    const lines = pdfWords(pdf)
      .split('\n')
      .filter(line => line.includes('Lindqvaer'));
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line).toMatch(/^\d+.Lindqvaer/);
  });

  it('leaves nobody out, in whatever groups, on A4 and on letter, and nobody runs into the cautions', async () => {
    const everybody = Array.from({ length: 60 }, (_, index) => `${index + 1}\u00a0Lindqvaer-Okpara`);
    const inGroups = (each: number, named: boolean) =>
      Array.from({ length: Math.ceil(60 / each) }, (_, index) => ({
        name: named ? `G ${index + 1}` : '',
        people: everybody.slice(index * each, (index + 1) * each).join(', '),
      }));
    const eight = Array.from({ length: 8 }, (_, index) => ICE_CARD.blocks[index % 6]!);
    for (const blocks of [[], ICE_CARD.blocks, eight]) {
      for (const groups of [inGroups(60, false), inGroups(60, true), inGroups(13, true), inGroups(1, true)]) {
        for (const paper of ['a4', 'letter'] as const) {
          const pages = cardPagesOf({ ...ICE_CARD, blocks, groups }, paper).map(page =>
            recordingOf(pen => drawIceCard(pen, page, paper)).flatMap(call =>
              call.call === 'text' ? [call] : [],
            ),
          );
          const called = pages.flat().flatMap(({ words }) => words.match(/\d+ Lindqvaer-Okpara/g) ?? []);
          expect(called.sort()).toEqual(everybody.map(one => one.replace('\u00a0', ' ')).sort());
          for (const words of pages) {
            const cautions = words.find(({ words: said }) => said === 'Before the first')?.y ?? 0;
            for (const one of words.filter(({ words: said }) => said.includes('Lindqvaer'))) {
              expect(one.y).toBeLessThan(cautions - 9);
            }
            const rows = words.filter(({ lettering }) => lettering === 'cardClock').map(({ y }) => y);
            for (const [index, y] of rows.slice(1).entries()) expect(y - rows[index]!).toBeGreaterThan(40);
          }
        }
      }
    }
  });

  it('says a long title whole where nothing stands beside it, or its row has a second line', async () => {
    const title = 'First forward back takes the middle: a pass starts it';
    const [first, ...others] = ICE_CARD.blocks;
    const said = wordsIn(
      await printed({ ...ICE_CARD, blocks: [{ ...first!, title, facts: [] }, ...others] }),
    );
    expect(said).toContain(tight(title));
    const two = { ...first!, title: 'First forward back takes the middle', keyPoints: ['One'] };
    expect(wordsIn(await printed({ ...ICE_CARD, blocks: [two, ...others] }))).toContain(tight(two.title));
  });

  it('keeps eight blocks on one page and goes on to a second with more, cautions and all', async () => {
    const blocks = (count: number) =>
      Array.from({ length: count }, (_, index) => ICE_CARD.blocks[index % 6]!);
    const eight = await printed({ ...ICE_CARD, blocks: blocks(8) });
    expect(pagesIn(eight)).toBe(1);
    const eleven = await printed({ ...ICE_CARD, blocks: blocks(11) });
    expect(pagesIn(eleven)).toBe(2);
    expect(wordsIn(eleven).match(/Beforethefirst/g)).toHaveLength(2);
  });

  it('embeds every font (read in the file; by poppler too where it is installed)', async () => {
    const pdf = await printed(ICE_CARD);
    const text = pdf.toString('latin1');
    const described = text.match(/\/Type \/FontDescriptor\b/g) ?? [];
    expect(described.length).toBeGreaterThanOrEqual(5);
    expect(text.match(/\/FontFile[23] /g)).toHaveLength(described.length);
    if (!hasPoppler) return;
    const rows = asked('pdffonts', pdf).split('\n').slice(2);
    for (const row of rows.filter(each => each.trim() !== '')) {
      expect(row, 'every font embedded').toMatch(/\s(yes)\s+(yes|no)\s+(yes|no)\s/);
    }
    expect(tight(asked('pdftotext', pdf, '-layout', '-').normalize('NFC'))).toContain(tight('Đặng Thị Ước'));
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
