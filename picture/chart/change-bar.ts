import type { MarkName } from '../marks.ts';
import type { Pen } from '../pen/pen.ts';

export type ChangeVerdict = 'movedUp' | 'movedDown' | 'noSignYet' | 'cannotTell';

/** A change of rate in points with its 95 % interval. */
export interface Change {
  readonly points: number;
  readonly low: number;
  readonly high: number;
  readonly verdict: ChangeVerdict;
}

const END_PX = 5;
const ARROW_PX = 7;
const FIGURE_ABOVE_PX = 9;
const DOT_PX = 4.6;

const MARKS_OF: Readonly<Record<ChangeVerdict, { readonly bar: MarkName; readonly dot: MarkName }>> = {
  movedUp: { bar: 'changeMoved', dot: 'changeMovedDot' },
  movedDown: { bar: 'changeDown', dot: 'changeDownDot' },
  noSignYet: { bar: 'changeNone', dot: 'changeNoneDot' },
  cannotTell: { bar: 'changeUnknown', dot: 'changeUnknownDot' },
};

/**
 * Solid: moved. Open: no sign yet. Broken: cannot tell. Shape says it; the tone only helps. What lies beyond the axis
 * ends in an arrow at its edge, with the figure it goes on to. Px.
 */
export const drawChange = (
  pen: Pen,
  change: Change,
  place: {
    readonly zeroX: number;
    readonly pxAPoint: number;
    readonly y: number;
    /** The axis goes this far to both sides of no change; as far as it must when left out. */
    readonly spanPoints?: number;
  },
): void => {
  const span = place.spanPoints ?? Number.POSITIVE_INFINITY;
  const isBeyond = (points: number): boolean => Math.abs(points) > span + 1e-9;
  const x = (points: number): number =>
    place.zeroX + Math.max(-span, Math.min(span, points)) * place.pxAPoint;
  const { bar, dot } = MARKS_OF[change.verdict];
  pen.path(bar, sink => {
    sink.moveTo(x(change.low), place.y);
    sink.lineTo(x(change.high), place.y);
    for (const end of [change.low, change.high].filter(each => !isBeyond(each))) {
      sink.moveTo(x(end), place.y - END_PX);
      sink.lineTo(x(end), place.y + END_PX);
    }
  });
  if (!isBeyond(change.points)) pen.circle(dot, x(change.points), place.y, DOT_PX);
  for (const way of [-1, 1] as const) {
    const beyond = [change.low, change.points, change.high].filter(each => isBeyond(each) && each * way > 0);
    if (beyond.length > 0) drawBeyond(pen, bar, x(way * span), way, place.y, beyond);
  }
};

/** The arrow at an edge of the axis; above it, from low to high, the figures that lie beyond. */
const drawBeyond = (
  pen: Pen,
  bar: MarkName,
  edge: number,
  way: 1 | -1,
  y: number,
  beyond: readonly number[],
): void => {
  pen.path(SOLID_OF[bar] ?? bar, sink => {
    sink.moveTo(edge - way * ARROW_PX, y - END_PX);
    sink.lineTo(edge, y);
    sink.lineTo(edge - way * ARROW_PX, y + END_PX);
  });
  const figures = [...new Set(beyond.map(pointsSaid))].join(' to ');
  pen.text('axis', figures, edge, y - FIGURE_ABOVE_PX, { anchor: way > 0 ? 'end' : 'start' });
};

/** An arrow of a broken line is whole, or it would not be seen as one. */
const SOLID_OF: Readonly<Partial<Record<MarkName, MarkName>>> = { changeUnknown: 'changeNone' };

const pointsSaid = (points: number): string => {
  const whole = Math.round(points);
  return whole > 0 ? `+${whole}` : whole < 0 ? `\u2212${-whole}` : '0';
};
