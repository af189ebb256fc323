import type { Act, DrillPlan, Run, Track } from '@icewright/engine';
import { type Polyline, pieceOf, pointAt, polylineOf, tracePoints } from '../ice/polyline.ts';
import { beside, type SheetPoint } from '../ice/sheet-point.ts';
import type { Pen } from '../pen/pen.ts';
import { type ScoreLayout, type Stave, speedAt, staveY } from './score-layout.ts';

const EVERY_S = 0.1;
const WAVE_PX = { length: 14, half: 2.6 } as const;
const RING_PX = 3.6;
const ARC_PX = { every: 7, half: 4, radius: 4.2 } as const;

/** The speed of one spot over time; the line wears the mark of what she does there. */
export const drawSpeedLine = (
  pen: Pen,
  stave: Stave,
  plan: DrillPlan,
  run: Run,
  layout: ScoreLayout,
  chosen: boolean,
): void => {
  const track = stave.track;
  const spot = plan.spots[stave.spot];
  if (!track || !spot) return;
  for (const stretch of stretchesOf(track, run)) {
    if (stave.isLineAlone && !stretch.hasPuck) continue;
    const line = polylineOf(pointsOf(stave, track, run, layout, stretch));
    const act = stretch.act < 0 ? undefined : spot.acts[track.acts[stretch.act]!];
    if (stretch.hasPuck) drawWave(pen, line, chosen);
    else if (!act || isStill(track, stretch)) drawRest(pen, line);
    else drawActLine(pen, line, act, isBackward(track, stretch), chosen);
    if (act && stretch.endsAct && endsInStop(act)) drawStopBars(pen, line);
    if (act?.kind === 'pivot') drawRing(pen, line);
  }
};

interface Stretch {
  readonly act: number;
  readonly from: number;
  readonly to: number;
  readonly hasPuck: boolean;
  readonly endsAct: boolean;
}

/** Pieces in which she does one thing, with the puck or without. */
const stretchesOf = (track: Track, run: Run): readonly Stretch[] => {
  const own = run.tracks.indexOf(track);
  const hasPuck = (sample: number): boolean => run.pucks.some(puck => puck.owner[sample] === own);
  const stretches: Stretch[] = [];
  let from = 0;
  let had = hasPuck(0);
  for (let sample = 1; sample <= run.sampleCount; sample++) {
    const isLast = sample === run.sampleCount;
    const has = isLast ? had : hasPuck(sample);
    const endsAct = isLast || track.actIndex[sample] !== track.actIndex[from];
    if (!endsAct && has === had) continue;
    const to = Math.min(sample, run.sampleCount - 1);
    stretches.push({ act: track.actIndex[from] ?? -1, from, to, hasPuck: had, endsAct });
    from = sample;
    had = has;
  }
  return stretches.filter(stretch => stretch.to > stretch.from);
};

const endsInStop = (act: Act): boolean =>
  act.kind === 'stop' || ((act.kind === 'skate' || act.kind === 'carry') && act.stops);

const pointsOf = (
  stave: Stave,
  track: Track,
  run: Run,
  layout: ScoreLayout,
  stretch: Stretch,
): readonly SheetPoint[] => {
  const step = Math.max(1, Math.round(EVERY_S * run.stepHz));
  const points: SheetPoint[] = [];
  const add = (sample: number) =>
    points.push({ x: layout.xOf(sample / run.stepHz), y: staveY(stave, speedAt(track, sample)) });
  for (let sample = stretch.from; sample < stretch.to; sample += step) add(sample);
  add(stretch.to);
  return points;
};

const isStill = (track: Track, stretch: Stretch): boolean => {
  for (let sample = stretch.from; sample <= stretch.to; sample++)
    if (speedAt(track, sample) > 0.2) return false;
  return true;
};

const isBackward = (track: Track, stretch: Stretch): boolean => {
  const middle = (stretch.from + stretch.to) >> 1;
  const facing = track.facingRad[middle] ?? 0;
  return (track.xMps[middle] ?? 0) * Math.cos(facing) + (track.yMps[middle] ?? 0) * Math.sin(facing) < 0;
};

const drawRest = (pen: Pen, line: Polyline): void => pen.path('rest', sink => tracePoints(sink, line.points));

const drawActLine = (pen: Pen, line: Polyline, act: Act, backward: boolean, chosen: boolean): void => {
  if (backward) drawArcs(pen, line);
  else {
    const mark = REACTIVE.includes(act.kind) ? 'scoreChase' : chosen ? 'scoreChosen' : 'scoreLine';
    pen.path(mark, sink => tracePoints(sink, line.points));
  }
};

const REACTIVE: readonly Act['kind'][] = ['chase', 'gap', 'steal', 'screen'];

const drawWave = (pen: Pen, line: Polyline, chosen: boolean): void =>
  pen.path(chosen ? 'scoreChosen' : 'scoreLine', sink => tracePoints(sink, waveAlong(line)));

const drawRing = (pen: Pen, line: Polyline): void => {
  const { at } = pointAt(line, 0);
  pen.circle('scoreRing', at.x, at.y, RING_PX);
};

const drawArcs = (pen: Pen, line: Polyline): void => {
  const halfAngleRad = Math.asin(ARC_PX.half / ARC_PX.radius);
  pen.path('scoreBack', sink => {
    for (let length = ARC_PX.every / 2; length < line.length; length += ARC_PX.every) {
      const { at, turnRad } = pointAt(line, length);
      const bulgeRad = turnRad + Math.PI;
      const from = bulgeRad - halfAngleRad;
      sink.moveTo(at.x + Math.cos(from) * ARC_PX.radius, at.y + Math.sin(from) * ARC_PX.radius);
      sink.arc(at.x, at.y, ARC_PX.radius, from, bulgeRad + halfAngleRad);
    }
  });
};

const waveAlong = (line: Polyline): readonly SheetPoint[] => {
  const points: SheetPoint[] = [];
  const count = Math.max(2, Math.ceil(line.length / 1.2));
  for (let index = 0; index <= count; index++) {
    const length = (line.length * index) / count;
    const { at, turnRad } = pointAt(line, length);
    const fade = Math.min(1, length / 5, (line.length - length) / 5);
    points.push(beside(at, turnRad, Math.sin((2 * Math.PI * length) / WAVE_PX.length) * WAVE_PX.half * fade));
  }
  return points;
};

const drawStopBars = (pen: Pen, line: Polyline): void => {
  const { at } = pointAt(pieceOf(line, 0, line.length), line.length);
  pen.path('scoreStop', sink => {
    for (const x of [at.x, at.x + 4.2]) {
      sink.moveTo(x, at.y - 6.5);
      sink.lineTo(x, at.y + 6.5);
    }
  });
};
