import { drawDrillAt } from '../drill/draw-drill-at.ts';
import { rinkViewBox } from '../ice/rink.ts';
import type { Pen } from '../pen/pen.ts';
import type { IceCardBlock } from './ice-card.ts';
import {
  CLOCK_WIDTH,
  COLUMN_GAP,
  DRAWING_WIDTH,
  FACTS_WIDTH,
  mm,
  type Page,
  ROOMY_DRAWING_WIDTH,
  ROOMY_ROW,
  ROW_PAD,
} from './page-measures.ts';
import { drawFacts, drawFactsBelow, factsBelowHeight } from './row-facts.ts';
import { wrapWords } from './wrap-words.ts';

const POINT_LINE = 10.8;
const POINT_INDENT = 7;
const TITLE_LINE = 13.5;
const CUE_LINE = 13;
/** Marks grow on the card's drawing, so that its letters are 7 points and more; the sheet stays true. */
const CARD_K = { least: 1.7, usual: 2.05, most: 2.7 } as const;
/** Points a metre at which those marks were drawn: 75 mm for a sheet of 61.96 m. */
const CARD_SCALE = mm(75) / 61.96;

/**
 * One block: clock, drawing, title with cue words and key points, facts. Nothing leaves its row. In a tall row the
 * drawing takes the place of the facts, which stand below the words.
 */
export const drawBlockRow = (
  pen: Pen,
  block: IceCardBlock,
  page: Page,
  top: number,
  height: number,
): void => {
  drawClock(pen, block, page, top);
  const drawing = drawPlan(pen, block, page, top, height);
  const textLeft = page.left + CLOCK_WIDTH + COLUMN_GAP + drawing + (drawing > 0 ? COLUMN_GAP : 0);
  if (isRoomy(block, height)) {
    const width = page.right - textLeft;
    const facts = factsBelowHeight(pen, block, width);
    const y = drawWords(pen, block, textLeft, width, top, height - facts);
    drawFactsBelow(pen, block, textLeft, width, y);
    return;
  }
  const factsLeft = page.right - FACTS_WIDTH;
  // Where nothing stands beside them the words have the whole line.
  const right = block.facts.length === 0 ? page.right : factsLeft - COLUMN_GAP;
  drawWords(pen, block, textLeft, right - textLeft, top, height);
  drawFacts(pen, block, factsLeft, top, height);
};

const isRoomy = (block: IceCardBlock, height: number): boolean =>
  block.plan !== undefined && height >= ROOMY_ROW;

/** A block without a drawing is as tall as its words. */
export const wordsRowHeight = (pen: Pen, block: IceCardBlock, page: Page): number => {
  const width = page.right - FACTS_WIDTH - COLUMN_GAP - (page.left + CLOCK_WIDTH + COLUMN_GAP);
  const points = block.keyPoints.reduce(
    (sum, point) => sum + wrapWords(pen, 'cardPoint', point, width - POINT_INDENT).length,
    0,
  );
  const words = 18 + (block.cueWords === '' ? 0 : 12.5) + points * POINT_LINE + 9;
  return Math.min(mm(24), Math.max(mm(14.5), words));
};

const drawClock = (pen: Pen, block: IceCardBlock, page: Page, top: number): void => {
  const y = top + ROW_PAD + 12;
  pen.text('cardClock', block.startClock, page.left, y);
  pen.text('cardClockSmall', `to ${block.endClock}`, page.left, y + 11);
  pen.text('cardClockSmall', `${block.minutes} min`, page.left, y + 21.5);
};

/** The drawing as wide as its row allows. Returns the width it takes. */
const drawPlan = (pen: Pen, block: IceCardBlock, page: Page, top: number, height: number): number => {
  const plan = block.plan;
  if (!plan) return 0;
  const [, , width, length] = rinkViewBox(block.rink);
  const scale = Math.min(
    (isRoomy(block, height) ? ROOMY_DRAWING_WIDTH : DRAWING_WIDTH) / width,
    (height - ROW_PAD - mm(1.2)) / length,
  );
  const left = page.left + CLOCK_WIDTH + COLUMN_GAP;
  // On a smaller sheet, or in a shorter row, a metre is another length: marks keep their size on paper.
  const k = Math.max(CARD_K.least, Math.min(CARD_K.most, CARD_K.usual * (CARD_SCALE / scale)));
  drawDrillAt(
    pen,
    { ...block, plan },
    { left, top: top + ROW_PAD, scale, k },
    { ticks: false, findings: [] },
  );
  return width * scale;
};

/** Returns where the last line stands. */
const drawWords = (
  pen: Pen,
  block: IceCardBlock,
  left: number,
  width: number,
  top: number,
  height: number,
): number => {
  const bottom = top + height - 2;
  let y = top + ROW_PAD + 11.5;
  wrapWords(pen, 'cardBlock', block.title, width, titleLines(pen, block, width, bottom - y)).forEach(
    (words, index) => {
      if (index > 0) y += TITLE_LINE;
      pen.text('cardBlock', words, left, y);
    },
  );
  if (block.cueWords !== '') {
    y += CUE_LINE;
    pen.text('cardCue', wrapWords(pen, 'cardCue', block.cueWords, width, 1)[0] ?? '', left, y);
  }
  y += 3.5;
  for (const line of pointLines(pen, block, width - POINT_INDENT, bottom - y)) {
    y += POINT_LINE;
    if (line.isFirst) {
      const dash = y - 3;
      pen.path('cardDash', sink => {
        sink.moveTo(left, dash);
        sink.lineTo(left + 3.2, dash);
      });
    }
    pen.text('cardPoint', line.words, left + POINT_INDENT, y);
  }
  return y;
};

/** A long title takes a second line where the row has it beside what is said and the key points. */
const titleLines = (pen: Pen, block: IceCardBlock, width: number, room: number): number => {
  const points = block.keyPoints.flatMap(point => wrapWords(pen, 'cardPoint', point, width - POINT_INDENT));
  const below = (block.cueWords === '' ? 0 : CUE_LINE) + 3.5 + points.length * POINT_LINE;
  return below + TITLE_LINE <= room ? 2 : 1;
};

/** The key points as lines; when they do not all fit, the last line says how many are left out. */
const pointLines = (
  pen: Pen,
  block: IceCardBlock,
  width: number,
  room: number,
): readonly { readonly words: string; readonly isFirst: boolean }[] => {
  const most = Math.max(0, Math.floor(room / POINT_LINE));
  const points = block.keyPoints.map(point =>
    wrapWords(pen, 'cardPoint', point, width).map((words, index) => ({ words, isFirst: index === 0 })),
  );
  if (points.flat().length <= most) return points.flat();
  const shown: { words: string; isFirst: boolean }[] = [];
  let count = 0;
  for (const lines of points) {
    if (shown.length + lines.length > most - 1) break;
    shown.push(...lines);
    count++;
  }
  if (most > 0) shown.push({ words: `… ${points.length - count} more`, isFirst: false });
  return shown;
};
