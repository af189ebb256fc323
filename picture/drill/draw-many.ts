import type { IcePoint, ManyTally } from '@icewright/engine';
import { sheetPoint } from '../ice/sheet-point.ts';
import type { MarkName } from '../marks.ts';
import type { PathSink, Pen } from '../pen/pen.ts';

/** Places of many reps, metres. */
export interface ManyMarks {
  /** Where the wanted came in time; drawn as a stroke across. */
  readonly yes: readonly IcePoint[];
  /** Where it came otherwise; a broken stroke. */
  readonly other: readonly IcePoint[];
  /** Where passes were received, cut off, and went by: dot, cross, ring. */
  readonly received: readonly IcePoint[];
  readonly cutOff: readonly IcePoint[];
  readonly missed: readonly IcePoint[];
}

/** The sampled places of a tally and of the wanted outcome with this index. */
export const manyMarksOf = (tally: ManyTally, outcomeIndex: number): ManyMarks => {
  const wanted = tally.outcomes[outcomeIndex];
  const isPass = wanted?.outcome.kind === 'passArrives';
  const passes = isPass ? [] : tally.passes;
  return {
    yes: wanted ? pointsOf(wanted.yes.samples) : [],
    other: wanted ? pointsOf(wanted.other.samples) : [],
    received: passes.flatMap(pass => pointsOf(pass.received.samples)),
    cutOff: passes.flatMap(pass => pointsOf(pass.cutOff.samples)),
    missed: passes.flatMap(pass => pointsOf(pass.missed.samples)),
  };
};

const pointsOf = (samples: ManyTally['lines'][number]['crossed']['samples']): readonly IcePoint[] =>
  samples.map(([, , xMm, yMm]) => ({ xM: xMm / 1000, yM: yMm / 1000 }));

const STROKE_M = 0.9;
const DOT_M = 0.1;
const CROSS_M = 0.26;
const RING_M = 0.22;

/** What came where, one faint mark a rep, below the drill itself. */
export const drawMany = (pen: Pen, marks: ManyMarks): void => {
  drawEach(pen, 'manyReceived', marks.received, (sink, x, y) => {
    sink.moveTo(x + DOT_M, y);
    sink.arc(x, y, DOT_M, 0, 2 * Math.PI);
  });
  drawEach(pen, 'manyOther', marks.other, strokeAt);
  drawEach(pen, 'manyYes', marks.yes, strokeAt);
  drawEach(pen, 'manyMissed', marks.missed, (sink, x, y) => {
    sink.moveTo(x + RING_M, y);
    sink.arc(x, y, RING_M, 0, 2 * Math.PI);
  });
  drawEach(pen, 'manyCutOff', marks.cutOff, (sink, x, y) => {
    for (const turn of [1, -1]) {
      sink.moveTo(x - CROSS_M, y - turn * CROSS_M);
      sink.lineTo(x + CROSS_M, y + turn * CROSS_M);
    }
  });
};

const strokeAt = (sink: PathSink, x: number, y: number): void => {
  sink.moveTo(x, y - STROKE_M / 2);
  sink.lineTo(x, y + STROKE_M / 2);
};

/** Marks of one path do not darken each other: many short paths do, and are still few to draw. */
const MARKS_A_PATH = 24;

const drawEach = (
  pen: Pen,
  mark: MarkName,
  points: readonly IcePoint[],
  draw: (sink: PathSink, x: number, y: number) => void,
): void => {
  for (let from = 0; from < points.length; from += MARKS_A_PATH) {
    pen.path(mark, sink => {
      for (const point of points.slice(from, from + MARKS_A_PATH)) {
        const { x, y } = sheetPoint(point);
        draw(sink, x, y);
      }
    });
  }
};
