import type { Act, DrillPlan, Run, Track } from '@icewright/engine';
import {
  evenlyAlong,
  offTheWay,
  type Polyline,
  pieceOf,
  pointAt,
  polylineOf,
  tracePoints,
} from '../ice/polyline.ts';
import type { SheetPoint } from '../ice/sheet-point.ts';
import type { Pen } from '../pen/pen.ts';
import { type ScoreLayout, type Stave, speedAt, staveY } from './score-layout.ts';

const EVERY_S = 0.1;
const WAVE_PX = { length: 14, half: 2.6, every: 1.75 } as const;
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
  holds: Holds,
): void => {
  const track = stave.track;
  const spot = plan.spots[stave.spot];
  if (!track || !spot) return;
  for (const stretch of stretchesOf(track, run, holds)) {
    if (stave.isLineAlone && !stretch.hasPuck) continue;
    const line = polylineOf(pointsOf(stave, track, run, layout, stretch));
    const act = stretch.act < 0 ? undefined : spot.acts[track.acts[stretch.act]!];
    if (stretch.hasPuck) drawWave(pen, line, chosen);
    else if (!act || stretch.isStill) drawRest(pen, line);
    else drawActLine(pen, line, act, isBackward(track, stretch), chosen);
    if (act && stretch.endsAct && endsInStop(act)) drawStopBars(pen, line);
    if (act?.kind === 'pivot' || stretch.turns) drawRing(pen, line);
  }
};

/** For each track, at which samples it has a puck. */
export type Holds = readonly Uint8Array[];

export const holdsOf = (run: Run): Holds => {
  const holds = run.tracks.map(() => new Uint8Array(run.sampleCount));
  for (const { owner } of run.pucks) {
    for (let sample = 0; sample < run.sampleCount; sample++) {
      const held = holds[owner[sample]!];
      if (held) held[sample] = 1;
    }
  }
  return holds;
};

interface Stretch {
  readonly act: number;
  readonly from: number;
  readonly to: number;
  readonly hasPuck: boolean;
  readonly isStill: boolean;
  readonly endsAct: boolean;
  /** The keeper of a gap begins it with a change between forward and backward. */
  readonly turns: boolean;
}

/** Slower than this she stands, and a line of what she does would be a line of nothing. */
const STILL_MPS = 0.2;

/** Pieces in which she does one thing, with the puck or without, going or standing. */
const stretchesOf = (track: Track, run: Run, holds: Holds): readonly Stretch[] => {
  const held = holds[run.tracks.indexOf(track)];
  const hasPuck = (sample: number): boolean => held?.[sample] === 1;
  const turnsAt = turnSamplesOf(track, run);
  const stretches: Stretch[] = [];
  let from = 0;
  let had = hasPuck(0);
  let stood = speedAt(track, 0) < STILL_MPS;
  for (let sample = 1; sample <= run.sampleCount; sample++) {
    const isLast = sample === run.sampleCount;
    const has = isLast ? had : hasPuck(sample);
    const stands = isLast ? stood : speedAt(track, sample) < STILL_MPS;
    const endsAct = isLast || track.actIndex[sample] !== track.actIndex[from];
    if (!endsAct && has === had && stands === stood && !turnsAt.has(sample)) continue;
    const to = Math.min(sample, run.sampleCount - 1);
    const act = track.actIndex[from] ?? -1;
    stretches.push({ act, from, to, hasPuck: had, isStill: stood, endsAct, turns: turnsAt.has(from) });
    from = sample;
    had = has;
    stood = stands;
  }
  return stretches.filter(stretch => stretch.to > stretch.from);
};

const turnSamplesOf = (track: Track, run: Run): ReadonlySet<number> =>
  new Set(
    run.events.flatMap(event =>
      event.kind === 'turnsRound' && event.spot === track.spot ? [Math.round(event.timeS * run.stepHz)] : [],
    ),
  );

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
  const count = Math.max(2, Math.ceil(line.length / WAVE_PX.every));
  const middle = evenlyAlong(line, line.length, count);
  return middle.map((at, index) => {
    const length = (line.length * index) / count;
    const fade = Math.min(1, length / 5, (line.length - length) / 5);
    const swing = Math.sin((2 * Math.PI * length) / WAVE_PX.length) * WAVE_PX.half * fade;
    return offTheWay(at, middle[Math.max(0, index - 2)]!, middle[Math.min(count, index + 2)]!, swing);
  });
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
