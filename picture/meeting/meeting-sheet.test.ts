/// <reference path="../pdfkit.d.ts" />
import PDFKit from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { pdfWords } from '../../test/pdf-words.ts';
import { printedPages } from '../../test/printed-pages.ts';
import { mm, PAGE } from '../card/page-measures.ts';
import type { Photo } from '../pen/pen.ts';
import { recordingOf } from '../pen/recording-pen.ts';
import { OUR_LINE_SHEET } from '../scenes/freeze-sheet.ts';
import { TOGETHER_SHEET } from '../scenes/meeting-sheet.ts';
import { drawFreezeSheet } from './draw-freeze-sheet.ts';
import { drawMeetingSheet } from './draw-meeting-sheet.ts';
import { DRAWN_ROW, type MeetingSheet, meetingPagesOf, rowHeight } from './meeting-sheet.ts';

const printed = (sheet: MeetingSheet) =>
  printedPages(
    PDFKit,
    meetingPagesOf(sheet).map(page => pen => drawMeetingSheet(pen, page)),
  );
/** One grey pixel. */
const DOT: Photo = {
  dataUrl:
    'data:image/jpeg;base64,/9j/4AAQSkZJRgABAgAAAQABAAD//gAQTGF2YzU5LjM3LjEwMAD/2wBDAAgEBAQEBAUFBQUFBQYGBgYGBgYGBgYGBgYHBwcICAgHBwcGBgcHCAgICAkJCQgICAgJCQoKCgwMCwsODg4RERT/xABKAAEAAAAAAAAAAAAAAAAAAAAAAQEAAAAAAAAAAAAAAAAAAAAAEAEAAAAAAAAAAAAAAAAAAAAAEQEAAAAAAAAAAAAAAAAAAAAA/8AAEQgAAgACAwEiAAIRAAMRAP/aAAwDAQACEQMRAD8AAA//2Q==',
  widthPx: 1,
  heightPx: 1,
};
const tight = (words: string): string => words.replace(/\s+/g, '');

describe('a meeting on paper', () => {
  it('says title, lines, questions and roles in letters, with no picture in it', async () => {
    const pdf = await printed(TOGETHER_SHEET);
    const said = tight(pdfWords(pdf));
    const { title, team, items } = TOGETHER_SHEET;
    for (const words of [title, team, ...items.flatMap(({ line, asks }) => [line, asks]), 'F1 21', 'Notes'])
      expect(said).toContain(tight(words));
    expect(pdf.toString('latin1')).not.toMatch(/\/Subtype \/Image/);
  });

  it('shows the picture of the film where there is no freeze, whole in its room, its room kept while it is read', async () => {
    const [, item] = TOGETHER_SHEET.items;
    const sheetOf = (photo: Photo | 'comes'): MeetingSheet => ({
      ...TOGETHER_SHEET,
      items: [{ ...item!, photo }],
    });
    const boxOf = (widthPx: number, heightPx: number) => {
      const [photo] = recordingOf(pen =>
        drawMeetingSheet(pen, sheetOf({ ...DOT, widthPx, heightPx })),
      ).filter(({ call }) => call === 'photo');
      return photo?.call === 'photo' ? photo.box : undefined;
    };
    for (const [widthPx, heightPx] of [
      [1280, 720],
      [360, 640],
      [1, 1],
    ] as const) {
      const { left, top, width, height } = boxOf(widthPx, heightPx)!;
      expect(width / height).toBeCloseTo(widthPx / heightPx, 9);
      expect([
        left >= PAGE.left,
        top >= PAGE.top,
        left + width <= PAGE.left + mm(80),
        height <= DRAWN_ROW,
      ]).toEqual(Array(4).fill(true));
    }
    expect(rowHeight(sheetOf('comes').items[0]!)).toBe(rowHeight(sheetOf(DOT).items[0]!));
    // On paper it is there, once for each moment that has one.
    const pdf = (await printed(sheetOf(DOT))).toString('latin1');
    expect(pdf.match(/\/Subtype \/Image/g)).toHaveLength(1);
  });

  it('goes over as many pages as it needs, each item once, none over the edge', async () => {
    const many: MeetingSheet = {
      ...TOGETHER_SHEET,
      items: Array.from({ length: 14 }, (_, index) => ({
        ...TOGETHER_SHEET.items[index % 3]!,
        number: index + 1,
        line: `Line ${index + 1} of fourteen`,
      })),
    };
    const pages = meetingPagesOf(many);
    expect(pages.length).toBeGreaterThan(2);
    expect(pages.flatMap(page => page.items)).toEqual(many.items);
    // The number has a place of its own, and is whole however long the title is.
    expect(pages[1]).toMatchObject({ title: many.title, page: `page 2 of ${pages.length}` });
    const long = { ...pages[1]!, title: 'Straight after the game, before anybody has gone home. '.repeat(3) };
    const [number, cut] = ['page 2 of', 'Straight'].map(words =>
      recordingOf(pen => drawMeetingSheet(pen, long)).find(
        call => call.call === 'text' && call.words.startsWith(words),
      ),
    );
    expect(number).toMatchObject({ words: `page 2 of ${pages.length}` });
    expect(cut).toBeDefined();
    expect(meetingPagesOf({ ...many, items: many.items.slice(0, 5) })).toHaveLength(1);
    for (const page of pages)
      for (const call of recordingOf(pen => drawMeetingSheet(pen, page)))
        if (call.call === 'text' && /of fourteen|Notes/.test(call.words))
          expect(call.y).toBeLessThan(PAGE.bottom);
    expect(meetingPagesOf({ ...many, items: [] })).toHaveLength(1);
  });

  it('has the speaker’s notes where they are wanted, all of their words, and says on them whose they are', async () => {
    const notes = 'Begin with what went well and let her say it herself before anybody else does. '.repeat(6);
    const items = TOGETHER_SHEET.items.map(item => ({ ...item, notes }));
    const said = tight(pdfWords(await printed({ ...TOGETHER_SHEET, items })));
    expect(said.split(tight(notes))).toHaveLength(items.length + 1);
    expect(said).toContain(tight('The speaker’s notes'));
    const endless = { ...TOGETHER_SHEET, items: [{ ...items[0]!, notes: notes.repeat(12) }] };
    expect(meetingPagesOf(endless)).toHaveLength(1);
    for (const call of recordingOf(pen => drawMeetingSheet(pen, endless)))
      if (call.call === 'text' && /went well/.test(call.words)) expect(call.y).toBeLessThan(PAGE.bottom);
  });

  it('or one freeze alone: its title, who stood where, and room to write', async () => {
    const pdf = await printedPages(PDFKit, [pen => drawFreezeSheet(pen, OUR_LINE_SHEET)]);
    const said = tight(pdfWords(pdf));
    for (const words of [OUR_LINE_SHEET.title, OUR_LINE_SHEET.says, 'F1 21', 'X2', 'Notes', 'estimates'])
      expect(said).toContain(tight(words));
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1);
  });
});
