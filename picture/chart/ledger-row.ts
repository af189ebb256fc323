import type { Pen } from '../pen/pen.ts';

/** One habit over the season: what was practised against what the games showed. Rates are 0 to 1, times are days. */
export interface LedgerRow {
  readonly games: readonly LedgerRate[];
  /** All games before, and all after, the first practice of it. */
  readonly before?: LedgerBand;
  readonly after?: LedgerBand;
  readonly practisedFromDay?: number;
  readonly practices: readonly { readonly day: number; readonly minutes: number }[];
  readonly wanted?: number;
}

export interface LedgerRate {
  readonly day: number;
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

export interface LedgerBand {
  readonly fromDay: number;
  readonly toDay: number;
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

/** Where the days and the row lie on the page, px. */
export interface LedgerPlace {
  readonly left: number;
  readonly right: number;
  readonly fromDay: number;
  readonly toDay: number;
  /** Y of rate 0. */
  readonly base: number;
}

/** Height of rate 1 above rate 0, px; the row around it is 97 high. */
export const LEDGER_RISE_PX = 56;
export const LEDGER_ROW_PX = 97;
const DOT_PX = 3.4;
const PX_A_MINUTE = 1.15;
const MOST_MINUTES_PX = 21;

export const ledgerX = (place: LedgerPlace, day: number): number =>
  place.left +
  ((day - place.fromDay) / Math.max(place.toDay - place.fromDay, 1e-9)) * (place.right - place.left);

/** A dot a game with its interval; a band before and after; bars hang where it was practised, longer is more minutes. */
export const drawLedgerRow = (pen: Pen, row: LedgerRow, place: LedgerPlace): void => {
  const x = (day: number): number => ledgerX(place, day);
  const y = (rate: number): number => place.base - rate * LEDGER_RISE_PX;
  const level = (mark: 'axisLine' | 'wanted' | 'pooled', height: number, from: number, to: number) =>
    pen.path(mark, sink => {
      sink.moveTo(from, height);
      sink.lineTo(to, height);
    });
  const upright = (mark: 'whisker' | 'practisedFrom', at: number, from: number, to: number) =>
    pen.path(mark, sink => {
      sink.moveTo(at, from);
      sink.lineTo(at, to);
    });
  pen.text('axis', '100', place.left - 8, y(1) + 4, { anchor: 'end' });
  pen.text('axis', '0', place.left - 8, y(0) + 1, { anchor: 'end' });
  level('axisLine', place.base, place.left, place.right);
  if (row.wanted !== undefined) level('wanted', y(row.wanted), place.left, place.right);
  for (const band of [row.before, row.after]) {
    if (!band) continue;
    pen.path('band', sink =>
      sink.rect(x(band.fromDay), y(band.high), x(band.toDay) - x(band.fromDay), y(band.low) - y(band.high)),
    );
    level('pooled', y(band.rate), x(band.fromDay), x(band.toDay));
  }
  if (row.practisedFromDay !== undefined)
    upright('practisedFrom', x(row.practisedFromDay), y(1) - 2, place.base + 14);
  for (const practice of row.practices) {
    const height = Math.min(MOST_MINUTES_PX, practice.minutes * PX_A_MINUTE);
    pen.path('minutes', sink => sink.rect(x(practice.day) - 2.5, place.base + 1.5, 5, height));
  }
  for (const game of row.games) {
    upright('whisker', x(game.day), y(game.high), y(game.low));
    pen.circle('gameDot', x(game.day), y(game.rate), DOT_PX);
  }
};
