import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import type { Pen } from '../pen/pen.ts';
import type { IceCardBlock } from './ice-card.ts';
import { CLOCK_WIDTH, COLUMN_GAP, DRAWING_WIDTH, FACTS_WIDTH, mm, PAGE, ROW_PAD } from './page-measures.ts';
import { wrapWords } from './wrap-words.ts';

const POINT_LINE = 10.8;
const POINT_INDENT = 7;
const FACT_LINE = 9.2;
const FACT_GAP = 2.6;
/** Marks grow on the card's drawing; the sheet stays true. */
const CARD_K = 1.75;
const CARD_THIN_FLOOR_M = 0.12;
/** Points a metre at which those marks were drawn: 75 mm for a sheet of 61.96 m. */
const CARD_SCALE = mm(75) / 61.96;

/** One block: clock, drawing, title with cue words and key points, facts. Nothing leaves its row. */
export const drawBlockRow = (pen: Pen, block: IceCardBlock, top: number, height: number): void => {
  drawClock(pen, block, top);
  const drawing = drawPlan(pen, block, top, height);
  const textLeft = PAGE.left + CLOCK_WIDTH + COLUMN_GAP + drawing + (drawing > 0 ? COLUMN_GAP : 0);
  const factsLeft = PAGE.right - FACTS_WIDTH;
  drawWords(pen, block, textLeft, factsLeft - COLUMN_GAP - textLeft, top, height);
  drawFacts(pen, block, factsLeft, top, height);
};

/** A block without a drawing is as tall as its words. */
export const wordsRowHeight = (pen: Pen, block: IceCardBlock): number => {
  const width = PAGE.right - FACTS_WIDTH - COLUMN_GAP - (PAGE.left + CLOCK_WIDTH + COLUMN_GAP);
  const points = block.keyPoints.reduce(
    (sum, point) => sum + wrapWords(pen, 'cardPoint', point, width - POINT_INDENT).length,
    0,
  );
  const words = 18 + (block.cueWords === '' ? 0 : 12.5) + points * POINT_LINE + 9;
  return Math.min(mm(24), Math.max(mm(14.5), words));
};

const drawClock = (pen: Pen, block: IceCardBlock, top: number): void => {
  const y = top + ROW_PAD + 12;
  pen.text('cardClock', block.startClock, PAGE.left, y);
  pen.text('cardClockSmall', `to ${block.endClock}`, PAGE.left, y + 11);
  pen.text('cardClockSmall', `${block.minutes} min`, PAGE.left, y + 21.5);
};

/** The drawing as wide as its row allows. Returns the width it takes. */
const drawPlan = (pen: Pen, block: IceCardBlock, top: number, height: number): number => {
  const plan = block.plan;
  if (!plan) return 0;
  const [x, y, width, length] = rinkViewBox(block.rink);
  const scale = Math.min(DRAWING_WIDTH / width, (height - ROW_PAD - mm(1.2)) / length);
  const left = PAGE.left + CLOCK_WIDTH + COLUMN_GAP;
  // On a smaller sheet, or in a shorter row, a metre is another length: marks keep their size on paper.
  const k = Math.min(2.6, CARD_K * (CARD_SCALE / scale));
  pen.place(
    {
      x: left - x * scale,
      y: top + ROW_PAD - y * scale,
      scale,
      k: Math.max(0.9, k),
      thinFloor: CARD_THIN_FLOOR_M,
    },
    () =>
      pen.clip(
        sink => sink.rect(x - 1, y, width + 2, length),
        () =>
          drawDrill(pen, plan, block.rink, {
            ticks: false,
            findings: [],
            ...(block.lengths === undefined ? {} : { lengths: block.lengths }),
          }),
      ),
  );
  return width * scale;
};

const drawWords = (
  pen: Pen,
  block: IceCardBlock,
  left: number,
  width: number,
  top: number,
  height: number,
): void => {
  const bottom = top + height - 2;
  let y = top + ROW_PAD + 11.5;
  pen.text('cardBlock', wrapWords(pen, 'cardBlock', block.title, width, 1)[0] ?? '', left, y);
  if (block.cueWords !== '') {
    y += 13;
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

/** Names above their words where there is room, on one line with them where there is not. */
const drawFacts = (pen: Pen, block: IceCardBlock, left: number, top: number, height: number): void => {
  const facts = block.facts.slice(0, 4);
  const bottom = top + height - 1;
  const stacked = facts.map(fact => wrapWords(pen, 'cardFact', fact.words, FACTS_WIDTH, 2));
  const tall = stacked.reduce((sum, lines) => sum + 7 + lines.length * FACT_LINE + FACT_GAP, ROW_PAD);
  let y = top + ROW_PAD;
  if (tall - FACT_GAP <= height) {
    facts.forEach((fact, index) => {
      y += 7;
      pen.text('cardFactName', fact.name, left, y);
      for (const line of stacked[index] ?? []) {
        y += FACT_LINE;
        pen.text('cardFact', line, left, y);
      }
      y += FACT_GAP;
    });
    return;
  }
  const room = Math.floor((bottom - y) / FACT_LINE);
  const inOneLine = facts.map(fact => {
    const indent = pen.measure('cardFactName', `${fact.name} `) + 1.5;
    return { fact, indent, lines: wrapWords(pen, 'cardFact', fact.words, FACTS_WIDTH - indent, 2) };
  });
  const most = inOneLine.reduce((sum, { lines }) => sum + lines.length, 0) <= room ? 2 : 1;
  for (const { fact, indent } of inOneLine) {
    pen.text('cardFactName', fact.name, left, y + FACT_LINE);
    for (const line of wrapWords(pen, 'cardFact', fact.words, FACTS_WIDTH - indent, most)) {
      y += FACT_LINE;
      pen.text('cardFact', line, left + indent, y);
    }
  }
};
