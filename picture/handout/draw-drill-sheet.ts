import { STANDING_CAUTIONS } from '../card/ice-card.ts';
import { mm, PAPERS, type Page, type Paper } from '../card/page-measures.ts';
import {
  cautionBox,
  drawCautionBox,
  drawPaperRule,
  KEY_SCALE,
  keyOnPaper,
  PAPER_RULE_HEIGHT,
} from '../card/paper-parts.ts';
import { wrapWords } from '../card/wrap-words.ts';
import { drawDrillAt } from '../drill/draw-drill-at.ts';
import { drawKey } from '../drill/key.ts';
import { drawnMarks } from '../drill/used-marks.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { measuringPen } from '../pen/measuring-pen.ts';
import type { Drawing, Pen } from '../pen/pen.ts';
import { drawScore, scoreHeight } from '../score/draw-score.ts';
import type { DrillSheet } from './drill-sheet.ts';
import { type SheetFlow, sheetFlow } from './sheet-flow.ts';

const FIGURE_LINE = 14;
const COLUMN_GAP = mm(7);
/** Half a sheet of ice is nearly square: it may not push the words off the page. */
const TALLEST_DRAWING = mm(112);
/** Letters on the drawing are then 7 points and more on a whole sheet. */
const LEAST_K = 1;
const USUAL_SCALE = 8.4;
const TITLE_LINE = mm(7.4);
const MOST_TITLE_LINES = 2;
const SAYS_LINE = mm(5.4);
const MOST_SAYS_LINES = 3;

/**
 * The drills one after the other, in points, black only: title and what the skaters hear, the drawing with the key of its
 * marks, findings by the numbers of their flags, key points beside figures, the rep over time; cautions in their box on
 * every page. What one page does not hold stands on the next; of several pages each says which it is.
 */
export const drillPages = (
  pen: Pen,
  sheets: readonly DrillSheet[],
  paper: Paper = 'a4',
): readonly Drawing[] => {
  const pages = sheets.flatMap(sheet => pagesOf(pen, sheet, PAPERS[paper]));
  return pages.map(
    (draw, index) => to => draw(to, pages.length > 1 ? `${index + 1} of ${pages.length}` : ''),
  );
};

type DrawPage = (pen: Pen, which: string) => void;

/** A little smaller the drawing may stand where all then fits one page: two are not turned over on a bench. */
const SMALLER_SHARES = [0.93, 0.86, 0.8] as const;

const pagesOf = (pen: Pen, sheet: DrillSheet, page: Page): readonly DrawPage[] => {
  const full = laidOut(pen, sheet, page, 1);
  if (full.length === 1) return full;
  const smaller = SMALLER_SHARES.map(share => laidOut(pen, sheet, page, share));
  return smaller.find(pages => pages.length === 1) ?? full;
};

const laidOut = (pen: Pen, sheet: DrillSheet, page: Page, share: number): readonly DrawPage[] => {
  const nothing = measuringPen(pen);
  const cautions = cautionBox(pen, page, [...sheet.cautions, ...STANDING_CAUTIONS], page.bottom);
  const flow = sheetFlow({
    first: drawDrawing(nothing, page, sheet, drawHead(nothing, page, sheet, '', true), share),
    next: drawHead(nothing, page, sheet, '', false),
    bottom: cautions.top - mm(3),
  });
  const found = sheet.findings.map(({ weight, words }, index) => ({
    mark: numberOf(index + 1, weight),
    words,
  }));
  putList(pen, flow, 'Findings, an estimate', found, COMPUTED, page);
  flow.skip(mm(4));
  const split = page.left + (page.right - page.left) * 0.6;
  const { pageIndex } = flow;
  const figuresEnd = putFigures(flow, sheet, { left: split, right: page.right });
  const said = sheet.keyPoints.map(words => ({ mark: DASH, words }));
  putList(pen, flow, 'Key points', said, SAID, { left: page.left, right: split - COLUMN_GAP });
  flow.clear(pageIndex, figuresEnd);
  flow.skip(mm(4));
  putRepOverTime(flow, sheet, page);
  return flow.pages.map((draw, index) => (to, which) => {
    to.path('halo', sink => sink.rect(0, 0, page.width, page.height));
    const top = drawHead(to, page, sheet, which, index === 0);
    if (index === 0) drawDrawing(to, page, sheet, top, share);
    draw(to);
    drawCautionBox(to, page, cautions);
  });
};

/** The first page says all of it, the others whose they are. Returns where the drawing begins. */
const drawHead = (pen: Pen, page: Page, sheet: DrillSheet, which: string, isFirst: boolean): number => {
  const width = page.right - page.left;
  const cover = [sheet.cover, which].filter(part => part !== '').join(' · ');
  if (cover !== '') pen.text('cardTeam', cut(pen, 'cardTeam', cover, width), page.left, page.top + 2);
  let y = page.top + mm(9.2) - TITLE_LINE;
  const most = isFirst ? MOST_TITLE_LINES : 1;
  for (const words of wrapWords(pen, 'cardTitle', sheet.title === '' ? ' ' : sheet.title, width, most)) {
    y += TITLE_LINE;
    pen.text('cardTitle', words, page.left, y);
  }
  y = Math.max(y, page.top + mm(9.2)) + mm(2.6);
  drawPaperRule(pen, page, y);
  y += PAPER_RULE_HEIGHT;
  if (isFirst)
    for (const words of wrapWords(pen, 'cardAimLead', sheet.says, width, MOST_SAYS_LINES)) {
      y += SAYS_LINE;
      pen.text('cardAimLead', words, page.left, y);
    }
  return y + mm(4);
};

/** The drawing in the middle of its line, the key below it. Returns where the words begin. */
const drawDrawing = (pen: Pen, page: Page, sheet: DrillSheet, top: number, share: number): number => {
  const [, , width, length] = rinkViewBox(sheet.rink);
  const room = page.right - page.left;
  const scale = Math.min(room / width, TALLEST_DRAWING / length) * share;
  const left = page.left + (room - width * scale) / 2;
  drawDrillAt(
    pen,
    sheet,
    { left, top, scale, k: Math.max(LEAST_K, USUAL_SCALE / scale) },
    { scaleBar: true },
  );
  let y = top + length * scale + mm(2);
  const used = drawnMarks([sheet], { ticks: true });
  if (used.length > 0) y += drawKey(pen, used, keyOnPaper(page, y + KEY_SCALE * 1.45));
  return y + mm(4);
};

interface ListForm {
  readonly lettering: 'cardAim' | 'cardPoint';
  readonly line: number;
  readonly indent: number;
}

/** What the coach says stands in his voice, what was computed in the other. */
const SAID: ListForm = { lettering: 'cardAim', line: 16.5, indent: 11 };
const COMPUTED: ListForm = { lettering: 'cardPoint', line: 11.6, indent: 16 };
const HEAD_LINE = 14;

/** What stands before an entry, on the line of its words. */
type Mark = (pen: Pen, left: number, baseline: number) => void;

const DASH: Mark = (pen, left, baseline) => pen.text(SAID.lettering, '–', left, baseline);

/** The number of a flag as it stands on the drawing: full what is to be looked at, open what is to be known. */
const numberOf =
  (number: number, weight: 'look' | 'know'): Mark =>
  (pen, left, baseline) =>
    pen.place({ x: left, y: baseline, scale: NUMBER_PT }, () => {
      const mark = weight === 'look' ? 'flagLook' : 'flag';
      const width = number < 10 ? 1.1 : 1.6;
      pen.path(mark, sink => sink.rect(0, -0.95, width, 1.15));
      pen.text(mark, `${number}`, width / 2, -0.05, { anchor: 'middle' });
    });

const NUMBER_PT = 7.8;
/** As wide as this its smallest letters are 8 points on paper. */
const SCORE_WIDTH_PX = 720;
/** So much smaller the score may stand to fit below the words: its smallest letters are then 7 points. */
const SMALLEST_SCORE = 0.87;

interface Column {
  readonly left: number;
  readonly right: number;
}

/** A head and its entries, each with its mark before it; the head never stands alone at the foot of a page. */
const putList = (
  pen: Pen,
  flow: SheetFlow,
  head: string,
  entries: readonly { readonly mark: Mark; readonly words: string }[],
  { lettering, line, indent }: ListForm,
  { left, right }: Column,
): void => {
  const wrapped = entries.map(({ mark, words }) => ({
    mark,
    lines: wrapWords(pen, lettering, words, right - left - indent),
  }));
  const [first] = wrapped;
  if (first === undefined) return;
  flow.need(HEAD_LINE + first.lines.length * line);
  flow.put(HEAD_LINE, (to, y) => to.text('cardStrong', head, left, y + HEAD_LINE - 3));
  for (const { mark, lines } of wrapped)
    flow.put(lines.length * line, (to, y) => {
      mark(to, left, y + line);
      lines.forEach((words, index) => {
        to.text(lettering, words, left + indent, y + (index + 1) * line);
      });
    });
};

/** Names to the left, figures on the same line to the right, beside what follows. Returns where they end. */
const putFigures = (flow: SheetFlow, sheet: DrillSheet, { left, right }: Column): number => {
  if (sheet.figures.length === 0) return flow.y;
  const height = HEAD_LINE + 2 + sheet.figures.length * FIGURE_LINE;
  flow.need(height);
  flow.beside((pen, top) => {
    pen.text('cardStrong', 'Figures', left, top + HEAD_LINE - 3);
    sheet.figures.forEach(({ name, words }, index) => {
      const y = top + HEAD_LINE + 2 + (index + 1) * FIGURE_LINE;
      pen.text('cardPoint', name, left, y);
      const room = right - left - pen.measure('cardPoint', `${name}  `);
      pen.text('cardStrong', cut(pen, 'cardStrong', words, room), right, y, { anchor: 'end' });
    });
  });
  return flow.y + height;
};

/** The score of the rep, as wide as the page and no higher than what is left of it, where its letters stay readable so. */
const putRepOverTime = (flow: SheetFlow, { plan, run, rink, lengths }: DrillSheet, page: Page): void => {
  if (run === undefined) return;
  const width = page.right - page.left;
  const highPx = scoreHeight(plan, run);
  const full = width / SCORE_WIDTH_PX;
  const fitting = Math.min(full, (flow.room - HEAD_LINE) / highPx);
  const scale = fitting >= SMALLEST_SCORE * full ? fitting : full;
  flow.put(HEAD_LINE + highPx * scale, (pen, y) => {
    pen.text('cardStrong', 'The rep over time', page.left, y + HEAD_LINE - 3);
    pen.place({ x: page.left, y: y + HEAD_LINE, scale }, () =>
      drawScore(pen, run, plan, rink, {
        width: width / scale,
        ...(lengths === undefined ? {} : { lengths }),
      }),
    );
  });
};

const cut = (pen: Pen, lettering: Parameters<Pen['measure']>[0], words: string, width: number): string =>
  wrapWords(pen, lettering, words, width, 1)[0] ?? '';
