/// <reference path="../pdfkit.d.ts" />
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type DrillPlan, levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import PDFKit from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { pdfWords } from '../../test/pdf-words.ts';
import { printedPages } from '../../test/printed-pages.ts';
import { STANDING_CAUTIONS } from '../card/ice-card.ts';
import { PAPERS, type Paper } from '../card/page-measures.ts';
import { KEY_WORDS } from '../drill/key.ts';
import { drawnMarks, KEY_ENTRIES } from '../drill/used-marks.ts';
import type { Drawing } from '../pen/pen.ts';
import { type PenCall, recordingOf } from '../pen/recording-pen.ts';
import { MIDDLE_FIRST_SHEET } from '../scenes/drill-sheet.ts';
import { drillPages } from './draw-drill-sheet.ts';
import type { DrillSheet } from './drill-sheet.ts';

const printed = (sheets: readonly DrillSheet[], paper: Paper = 'a4'): Promise<Buffer> =>
  printedPages(PDFKit, pen => drillPages(pen, sheets, paper), paper);

const tight = (words: string): string => words.normalize('NFC').replace(/\s+/g, '');
const askPoppler = (tool: string, pdf: Buffer, ...more: string[]): string | null => {
  const file = join(mkdtempSync(join(tmpdir(), 'icewright-sheet-')), 'sheet.pdf');
  writeFileSync(file, pdf);
  try {
    return execFileSync(tool, [file, ...more], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
};

describe('a drill on paper', () => {
  it('says title, words, figures, findings and every caution, in letters and lines with no picture', async () => {
    const pdf = await printed([MIDDLE_FIRST_SHEET]);
    const said = tight(pdfWords(pdf));
    const { title, says, keyPoints, figures, findings, cautions } = MIDDLE_FIRST_SHEET;
    for (const words of [
      title,
      says,
      ...keyPoints,
      ...figures.map(each => each.words),
      ...findings.map(each => each.words),
    ])
      expect(said).toContain(tight(words));
    expect(said).toContain(tight([...cautions, ...STANDING_CAUTIONS].join(' ')));
    expect(pdf.toString('latin1')).not.toMatch(/\/Subtype \/Image/);
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1);
    const fonts = askPoppler('pdffonts', pdf);
    if (fonts === null) return;
    for (const row of fonts
      .split('\n')
      .slice(2)
      .filter(each => each.trim() !== ''))
      expect(row, 'every font embedded').toMatch(/\s(yes)\s+(yes|no)\s+(yes|no)\s/);
    expect(askPoppler('pdfimages', pdf, '-list')!.trim().split('\n')).toHaveLength(2);
    expect(tight(askPoppler('pdftotext', pdf, '-layout', '-')!.normalize('NFC'))).toContain(
      tight('Đặng Thị Ước'),
    );
  });

  it('has a key of the marks it uses and of no others', async () => {
    const lines = pdfWords(await printed([MIDDLE_FIRST_SHEET]))
      .split('\n')
      .map(tight);
    const used = drawnMarks([MIDDLE_FIRST_SHEET], { ticks: true });
    expect(used.length).toBeGreaterThan(8);
    for (const entry of KEY_ENTRIES.filter(each => !['stop', 'pass', 'shot'].includes(each)))
      expect(lines.includes(tight(KEY_WORDS[entry])), entry).toBe(used.includes(entry));
  });

  it('is a booklet of one drill a page, each saying which, on A4 and on letter', async () => {
    const second = { ...MIDDLE_FIRST_SHEET, title: 'Gap ladder', cover: 'Lanterns' };
    for (const paper of ['a4', 'letter'] as const) {
      const pdf = await printed([{ ...MIDDLE_FIRST_SHEET, cover: 'Lanterns' }, second], paper);
      const text = pdf.toString('latin1');
      expect(text.match(/\/Type \/Page\b/g)).toHaveLength(2);
      const box = paper === 'a4' ? /\/MediaBox \[0 0 595\.28 841\.89\]/ : /\/MediaBox \[0 0 612 792\]/;
      expect(text).toMatch(box);
      for (const words of ['Lanterns · 1 of 2', 'Lanterns · 2 of 2', 'Middle first', 'Gap ladder'])
        expect(tight(pdfWords(pdf))).toContain(tight(words));
    }
  });

  it('says everything on as many pages as it takes, findings on the first, and nothing stands on the box of cautions', () => {
    const many = {
      ...MIDDLE_FIRST_SHEET,
      rink: rinkOf({ preset: 'halfIce' }),
      keyPoints: Array.from({ length: 60 }, (_, index) => `Key point ${index + 1} of many`),
      findings: Array.from({ length: 8 }, (_, index) => ({
        weight: index < 3 ? ('look' as const) : ('know' as const),
        words: `Finding ${index + 1} of many`,
      })),
    };
    for (const paper of ['a4', 'letter'] as const) {
      const pages = drawnPages(many, paper);
      expect(pages.length).toBeGreaterThan(1);
      const textsOf = (calls: readonly PenCall[]) =>
        calls.flatMap(call => (call.call === 'text' ? [call] : []));
      const said = pages.flatMap(textsOf).map(call => call.words);
      for (const words of [...many.keyPoints, ...many.findings.map(each => each.words), 'The rep over time'])
        expect(said.filter(each => each === words)).toHaveLength(1);
      const firstSaid = textsOf(pages[0]!).map(call => call.words);
      expect(firstSaid).toEqual(expect.arrayContaining(many.findings.map(each => each.words)));
      // On a photocopy too it is seen which are to be looked at: as on the drawing, full or open.
      const numbers = pages[0]!.flatMap(call =>
        call.call === 'text' && /^flag/.test(call.lettering) ? [`${call.lettering} ${call.words}`] : [],
      );
      expect(numbers).toEqual(expect.arrayContaining(['flagLook 1', 'flagLook 3', 'flag 4', 'flag 8']));
      pages.forEach((calls, index) => {
        const texts = textsOf(calls);
        expect(texts.map(call => call.words)).toContain(`${many.cover} · ${index + 1} of ${pages.length}`);
        const box = calls.find(call => call.call === 'path' && call.mark === 'cardBox');
        const top = Number(/^M[\d.]+,([\d.]+)/.exec((box as { outline: string }).outline)?.[1]);
        expect(top).toBeGreaterThan(PAPERS[paper].height / 2);
        for (const { words, y } of texts.filter(call => /of many/.test(call.words)))
          expect(y, words).toBeLessThan(top);
      });
    }
  });

  it('has the rep over time of as many skaters as a drill has, a little smaller before it takes a page of its own', () => {
    const spots = Object.entries(MIDDLE_FIRST_SHEET.plan.spots);
    const more = spots
      .filter(([, spot]) => spot.kind === 'skater')
      .slice(0, 2)
      .map(([id, spot], index) => [`${id}more`, { ...spot, acts: {}, rank: 90 + index }] as const);
    const plan = { ...MIDDLE_FIRST_SHEET.plan, spots: Object.fromEntries([...spots, ...more]) } as DrillPlan;
    const playable = playableOf(plan, MIDDLE_FIRST_SHEET.rink, levelOf('collegeWomen'));
    if (playable.kind !== 'playable') throw new Error('cannot be played');
    const sheet = { ...MIDDLE_FIRST_SHEET, plan, run: runDrill(playable) };
    const pages = drawnPages(sheet, 'a4');
    expect(pages).toHaveLength(1);
    // The lower letter page holds it too: there the ice is drawn a little smaller before a second page is begun.
    expect(drawnPages(sheet, 'letter')).toHaveLength(1);
    expect(pages[0]!.some(call => call.call === 'text' && call.words === 'The rep over time')).toBe(true);
  });
});

const drawnPages = (sheet: DrillSheet, paper: Paper): readonly (readonly PenCall[])[] => {
  let pages: readonly Drawing[] = [];
  recordingOf(pen => {
    pages = drillPages(pen, [sheet], paper);
  });
  return pages.map(draw => recordingOf(draw));
};
