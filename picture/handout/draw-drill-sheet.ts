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
import type { Pen } from '../pen/pen.ts';
import { drawScore, scoreHeight } from '../score/draw-score.ts';
import type { DrillSheet } from './drill-sheet.ts';

const FIGURE_LINE = 14;
const COLUMN_GAP = mm(7);
/** Half a sheet of ice is nearly square: it may not push the words off the page. */
const TALLEST_DRAWING = mm(112);
/** Letters on the drawing are then 7 points and more on a whole sheet. */
const LEAST_K = 1;
const USUAL_SCALE = 8.4;

/**
 * One page in points, black only: title and what the skaters hear, the drawing with the key of its marks, key points
 * beside figures, findings by the numbers of their flags, cautions in their box. What does not fit is counted.
 */
export const drawDrillSheet = (pen: Pen, sheet: DrillSheet, paper: Paper = 'a4'): void => {
  const page = PAPERS[paper];
  pen.path('halo', sink => sink.rect(0, 0, page.width, page.height));
  const top = drawHead(pen, page, sheet);
  const below = drawDrawing(pen, page, sheet, top);
  const cautions = cautionBox(pen, page, [...sheet.cautions, ...STANDING_CAUTIONS], page.bottom);
  const bottom = cautions.top - mm(3);
  const split = page.left + (page.right - page.left) * 0.6;
  const said = sheet.keyPoints.map(words => ({ mark: '–', words }));
  const left = drawList(pen, 'Key points', said, SAID, {
    left: page.left,
    right: split - COLUMN_GAP,
    top: below,
    bottom,
  });
  const right = drawFigures(pen, sheet, { left: split, right: page.right, top: below, bottom });
  const found = sheet.findings.map((words, index) => ({ mark: `${index + 1}`, words }));
  const foundTop = Math.max(left, right) + mm(5);
  const end = drawList(pen, 'Findings, an estimate', found, COMPUTED, {
    left: page.left,
    right: page.right,
    top: foundTop,
    bottom,
  });
  drawRepOverTime(pen, sheet, { left: page.left, right: page.right, top: end + mm(4), bottom });
  drawCautionBox(pen, page, cautions);
};

/** Returns where the drawing begins. */
const drawHead = (pen: Pen, page: Page, sheet: DrillSheet): number => {
  const width = page.right - page.left;
  if (sheet.cover !== '')
    pen.text('cardTeam', cut(pen, 'cardTeam', sheet.cover, width), page.left, page.top + 2);
  let y = page.top + mm(9.2);
  pen.text('cardTitle', cut(pen, 'cardTitle', sheet.title, width), page.left, y);
  y += mm(2.6);
  drawPaperRule(pen, page, y);
  y += PAPER_RULE_HEIGHT;
  if (sheet.says !== '') {
    y += mm(5.4);
    pen.text('cardAimLead', cut(pen, 'cardAimLead', sheet.says, width), page.left, y);
  }
  return y + mm(4);
};

/** The drawing in the middle of its line, the key below it. Returns where the words begin. */
const drawDrawing = (pen: Pen, page: Page, sheet: DrillSheet, top: number): number => {
  const [, , width, length] = rinkViewBox(sheet.rink);
  const room = page.right - page.left;
  const scale = Math.min(room / width, TALLEST_DRAWING / length);
  const left = page.left + (room - width * scale) / 2;
  drawDrillAt(
    pen,
    sheet,
    { left, top, scale, k: Math.max(LEAST_K, USUAL_SCALE / scale) },
    { scaleBar: true },
  );
  let y = top + length * scale + mm(2);
  const used = drawnMarks([sheet]);
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
const COMPUTED: ListForm = { lettering: 'cardPoint', line: 11.6, indent: 9 };
const HEAD_LINE = 14;
/** As wide as this its smallest letters are 8 points on paper. */
const SCORE_WIDTH_PX = 720;

interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A head and its entries, each with its mark before it; the last line counts those that do not fit. Returns where it ends. */
const drawList = (
  pen: Pen,
  head: string,
  entries: readonly { readonly mark: string; readonly words: string }[],
  { lettering, line: step, indent }: ListForm,
  { left, right, top, bottom }: Room,
): number => {
  if (entries.length === 0 || top + HEAD_LINE + step > bottom) return top;
  let y = top + HEAD_LINE - 3;
  pen.text('cardStrong', head, left, y);
  y += 3;
  const wrapped = entries.map(({ mark, words }) => ({
    mark,
    lines: wrapWords(pen, lettering, words, right - left - indent),
  }));
  for (const [index, { mark, lines }] of wrapped.entries()) {
    const isLast = index === wrapped.length - 1;
    if (y + (lines.length + (isLast ? 0 : 1)) * step > bottom) {
      y += step;
      pen.text('cardPoint', `… ${wrapped.length - index} more`, left + indent, y);
      return y;
    }
    pen.text(lettering, mark, left, y + step);
    for (const words of lines) {
      y += step;
      pen.text(lettering, words, left + indent, y);
    }
  }
  return y;
};

/** Names to the left, figures on the same line to the right. Returns where they end. */
const drawFigures = (pen: Pen, sheet: DrillSheet, { left, right, top, bottom }: Room): number => {
  if (sheet.figures.length === 0) return top;
  let y = top + HEAD_LINE - 3;
  pen.text('cardStrong', 'Figures', left, y);
  y += 5;
  for (const { name, words } of sheet.figures) {
    if (y + FIGURE_LINE > bottom) return y;
    y += FIGURE_LINE;
    pen.text('cardPoint', name, left, y);
    const room = right - left - pen.measure('cardPoint', `${name}  `);
    pen.text('cardStrong', cut(pen, 'cardStrong', words, room), right, y, { anchor: 'end' });
  }
  return y;
};

/** The score of the rep where there is room for all of it: half a score would be read as a whole one. */
const drawRepOverTime = (pen: Pen, { plan, run, rink, lengths }: DrillSheet, room: Room): void => {
  if (run === undefined) return;
  const scale = (room.right - room.left) / SCORE_WIDTH_PX;
  const top = room.top + HEAD_LINE;
  if (top + scoreHeight(plan, run) * scale > room.bottom) return;
  pen.text('cardStrong', 'The rep over time', room.left, top - 3);
  pen.place({ x: room.left, y: top, scale }, () =>
    drawScore(pen, run, plan, rink, { width: SCORE_WIDTH_PX, ...(lengths === undefined ? {} : { lengths }) }),
  );
};

const cut = (pen: Pen, lettering: Parameters<Pen['measure']>[0], words: string, width: number): string =>
  wrapWords(pen, lettering, words, width, 1)[0] ?? '';
