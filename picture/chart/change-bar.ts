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
const DOT_PX = 4.6;

const MARKS_OF: Readonly<Record<ChangeVerdict, { readonly bar: MarkName; readonly dot: MarkName }>> = {
  movedUp: { bar: 'changeMoved', dot: 'changeMovedDot' },
  movedDown: { bar: 'changeDown', dot: 'changeDownDot' },
  noSignYet: { bar: 'changeNone', dot: 'changeNoneDot' },
  cannotTell: { bar: 'changeUnknown', dot: 'changeUnknownDot' },
};

/** Solid: moved. Open: no sign yet. Broken: cannot tell. Shape says it; the tone only helps. Px. */
export const drawChange = (
  pen: Pen,
  change: Change,
  place: { readonly zeroX: number; readonly pxAPoint: number; readonly y: number },
): void => {
  const x = (points: number): number => place.zeroX + points * place.pxAPoint;
  const { bar, dot } = MARKS_OF[change.verdict];
  pen.path(bar, sink => {
    sink.moveTo(x(change.low), place.y);
    sink.lineTo(x(change.high), place.y);
    for (const end of [change.low, change.high]) {
      sink.moveTo(x(end), place.y - END_PX);
      sink.lineTo(x(end), place.y + END_PX);
    }
  });
  pen.circle(dot, x(change.points), place.y, DOT_PX);
};
