import { type Change, drawChange } from '../chart/change-bar.ts';
import { drawLedgerRow, LEDGER_ROW_PX, type LedgerRow } from '../chart/ledger-row.ts';
import { drawRule } from '../chart/rule.ts';
import type { LetteringName } from '../lettering.ts';
import type { Scene } from './scene.ts';

const DAYS = { from: 0, to: 77 } as const;
const PLOT = { left: 60, right: 860, changeX: 1010 } as const;

const row = (rates: readonly number[], split: number, before: number, after: number): LedgerRow => ({
  games: rates.map((rate, index) => ({
    day: 4 + index * 7,
    rate,
    low: Math.max(0, rate - 0.19 + rate * 0.02),
    high: Math.min(1, rate + 0.22 - rate * 0.06),
  })),
  before: { fromDay: 1, toDay: split - 0.5, rate: before, low: before - 0.1, high: before + 0.1 },
  after: { fromDay: split + 0.5, toDay: 70, rate: after, low: after - 0.09, high: after + 0.09 },
  practisedFromDay: split,
  practices: [1, 3, 9, 16, 23, 30].map((later, index) => ({
    day: split + later,
    minutes: 8 + ((index * 5) % 7),
  })),
  wanted: 0.7,
});

const ROWS: readonly {
  readonly name: string;
  readonly row: LedgerRow;
  readonly change: Change;
  readonly words: string;
  readonly lettering: LetteringName;
}[] = [
  {
    name: 'Gap at our blue line',
    row: row([0.56, 0.33, 0.31, 0.5, 0.27, 0.63, 0.67, 0.63, 0.56, 0.63], 34, 0.4, 0.63),
    change: { points: 23, low: 8, high: 36, verdict: 'movedUp' },
    words: 'moved up',
    lettering: 'verdict',
  },
  {
    name: 'First forward back',
    row: row([0.42, 0.25, 0.43, 0.43, 0.58, 0.44, 0.65, 0.25, 0.47, 0.53], 35, 0.42, 0.48),
    change: { points: 5, low: -11, high: 21, verdict: 'noSignYet' },
    words: 'no sign yet',
    lettering: 'verdictNone',
  },
  {
    name: 'F3 high',
    row: row([0.4, 0.25, 0.5, 0.4, 0.75, 1, 0.75, 1, 0.1, 0.1], 36, 0.45, 0.58),
    change: { points: 13, low: -17, high: 40, verdict: 'cannotTell' },
    words: 'cannot tell',
    lettering: 'verdictUnknown',
  },
  {
    name: 'Five in the picture',
    row: row([0.65, 0.68, 0.8, 0.72, 0.58, 0.2, 0.71, 0.6, 0.55, 0.65], 24, 0.72, 0.53),
    change: { points: -19, low: -33, high: -4, verdict: 'movedDown' },
    words: 'moved down',
    lettering: 'verdictDown',
  },
];

export default {
  title: 'Rows of the ledger, and the four verdicts about a change',
  viewBox: [0, 0, 1200, ROWS.length * LEDGER_ROW_PX + 40],
  digits: 1,
  draw: pen => {
    ROWS.forEach((each, index) => {
      const top = index * LEDGER_ROW_PX;
      pen.text('name', each.name, 0, top + 16);
      drawLedgerRow(pen, each.row, {
        left: PLOT.left,
        right: PLOT.right,
        fromDay: DAYS.from,
        toDay: DAYS.to,
        base: top + 76,
      });
      drawChange(pen, each.change, { zeroX: PLOT.changeX, pxAPoint: 1.51, y: top + 48 });
      pen.text(each.lettering, each.words, 1090, top + 54);
    });
    drawRule(pen, {
      x: PLOT.left,
      y: ROWS.length * LEDGER_ROW_PX + 12,
      width: PLOT.right - PLOT.left,
      each: (PLOT.right - PLOT.left) / 11,
      figures: [{ at: 20, words: 'a segment is a week' }],
    });
  },
} satisfies Scene;
