import {
  type Act,
  attackedEndOf,
  feetOf,
  type IcePoint,
  type Lengths,
  otherEnd,
  type Run,
  type SpotId,
  type Track,
} from '@icewright/engine';
import { directionRad, type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
import type { DrillLine, RouteLine } from './drill-line.ts';
import type { ActStep, LineWalk } from './line-walk.ts';
import { netOf } from './net-of.ts';
import { type ActTimes, placeOf, playedPath, playedTicks, trackOf } from './run-reading.ts';

type ReactiveAct = Extract<Act, { kind: 'chase' | 'gap' | 'steal' | 'screen' }>;

const gapWords = (gapM: number, lengths: Lengths): string =>
  lengths === 'feet' ? `gap ${feetOf(gapM).toFixed(0)} ft` : `gap ${gapM.toFixed(1)} m`;

/**
 * A chase, a steal, a gap or a screen: as it was played when there is a run; before that a sign of whom it goes to.
 */
export const reactiveLines = (walk: LineWalk, step: ActStep, act: ReactiveAct): readonly DrillLine[] =>
  playedReactive(walk, step, act) ??
  (act.kind === 'screen' ? plannedScreen(walk, step, act) : plannedPursuit(walk, step, act));

const playedReactive = (walk: LineWalk, step: ActStep, act: ReactiveAct): readonly DrillLine[] | null => {
  const { of, times } = step;
  const { run } = walk;
  const track = trackOf(run, of.spot);
  if (!run || !track || !times || times.endS <= times.startS) return null;
  const laneRad = act.kind === 'screen' ? laneDirection(walk, step, act, times.endS) : undefined;
  const puckM = act.kind === 'steal' ? stolenAt(run, of.spot, times) : undefined;
  const stretches = stretchesOf(run, track, times);
  return stretches.map(({ startS, endS, backward, begins }, index): DrillLine => {
    const isLast = index === stretches.length - 1;
    return {
      ...of,
      kind: 'route',
      style: 'chase',
      backward,
      points: playedPath(run, track, { startS, endS }).map(sheetPoint),
      end: isLast && laneRad === undefined ? 'head' : 'open',
      pivot: begins === 'turned',
      ticks: isLast ? playedTicks(run, of.spot, times).map(sheetPoint) : [],
      words: index === 0 ? wordsOf(walk, act) : '',
      ...(isLast && laneRad !== undefined ? { laneRad } : {}),
      ...(isLast && puckM ? { puckAtEnd: { way: 'stick', at: sheetPoint(puckM) } as const } : {}),
    };
  });
};

interface Stretch extends ActTimes {
  readonly backward: boolean;
  /** With a turn of the body, or by going the other way with the eyes where they were; the first of an act with neither. */
  readonly begins: 'turned' | 'other way' | 'act';
}

/** Shorter than this it is a change of weight and no way of skating: it goes with what is skated before. Our choice. */
const LEAST_STRETCH_S = 0.5;

/**
 * The parts of an act that are skated forward and backward: each from where the skater began to turn, or to go the other way facing as
 * before. Told by the whole way and not by one instant of it, or a rep a little later would be drawn all in another mark.
 */
const stretchesOf = (run: Run, track: Track, times: ActTimes): readonly Stretch[] => {
  const turns = run.events.flatMap(event =>
    event.kind === 'turnsRound' &&
    event.spot === track.spot &&
    event.timeS > times.startS &&
    event.timeS < times.endS
      ? [event.timeS]
      : [],
  );
  const edges = [times.startS, ...turns, times.endS];
  return edges.slice(1).flatMap((endS, index) => {
    const ways = waysOf(run, track, edges[index]!, endS);
    return ways.map((way, part): Stretch => {
      const begins = part > 0 ? 'other way' : index > 0 ? 'turned' : 'act';
      return { ...way, begins };
    });
  });
};

/** Between two turns: where the way goes from forward to backward or back, and stays so for a while. */
const waysOf = (run: Run, track: Track, startS: number, endS: number): readonly Omit<Stretch, 'begins'>[] => {
  const ways: { startS: number; endS: number; backward: boolean }[] = [];
  const from = Math.round(startS * run.stepHz);
  const to = Math.round(endS * run.stepHz);
  for (let sample = from; sample < to; sample++) {
    const backward = isBackward(track, sample);
    const last = ways[ways.length - 1];
    if (last?.backward === backward) last.endS = (sample + 1) / run.stepHz;
    else ways.push({ startS: sample / run.stepHz, endS: (sample + 1) / run.stepHz, backward });
  }
  const long = ways.filter(way => way.endS - way.startS >= LEAST_STRETCH_S);
  const kept = long.length > 0 ? long : [longestOf(ways) ?? { startS, endS, backward: false }];
  const joined = kept.filter((way, index) => way.backward !== kept[index - 1]?.backward);
  return joined.map((way, index) => ({
    startS: index === 0 ? startS : way.startS,
    endS: joined[index + 1]?.startS ?? endS,
    backward: way.backward,
  }));
};

const longestOf = <Way extends ActTimes>(ways: readonly Way[]): Way | undefined =>
  [...ways].sort((one, other) => other.endS - other.startS - (one.endS - one.startS))[0];

const isBackward = (track: Track, at: number): boolean => {
  const facingRad = track.facingRad[at] ?? 0;
  return (track.xMps[at] ?? 0) * Math.cos(facingRad) + (track.yMps[at] ?? 0) * Math.sin(facingRad) < 0;
};

/** Where the puck was won; a hunt that did not win it ends at no puck. */
const stolenAt = (run: Run, spot: SpotId, times: ActTimes): IcePoint | undefined =>
  run.events.find(
    event =>
      event.kind === 'steal' &&
      event.spot === spot &&
      event.timeS >= times.startS &&
      event.timeS <= times.endS + SOON_S,
  )?.atM;

/** Events of one moment may stand a step apart. */
const SOON_S = 0.05;

const plannedPursuit = (
  walk: LineWalk,
  { of, at }: ActStep,
  act: Exclude<ReactiveAct, { kind: 'screen' }>,
): readonly DrillLine[] => {
  const whom = walk.plan.spots[act.whom];
  if (!whom) return [];
  const from = sheetPoint(at);
  if (act.kind === 'gap') {
    return [
      { ...of, kind: 'gap', from, to: sheetPoint(whom.atM), words: gapWords(act.distanceM, walk.lengths) },
    ];
  }
  const to = sheetPoint(walk.places.get(act.whom)?.endM ?? whom.atM);
  return [{ ...of, kind: 'chaseSign', from, to, words: wordsOf(walk, act), takes: act.kind === 'steal' }];
};

/** The way into the lane, broken since it is the skater's own, and the bar across it. */
const plannedScreen = (
  walk: LineWalk,
  { of, at }: ActStep,
  act: Extract<ReactiveAct, { kind: 'screen' }>,
): readonly DrillLine[] => {
  const ends = laneEnds(walk, of.spot, act, spot => walk.plan.spots[spot]?.atM);
  if (!ends) return [];
  const [from, to] = ends;
  const place = {
    x: from.x + (to.x - from.x) * act.alongRatio,
    y: from.y + (to.y - from.y) * act.alongRatio,
  };
  const line: RouteLine = {
    kind: 'route',
    style: 'chase',
    backward: false,
    points: [sheetPoint(at), place],
    end: 'open',
    pivot: false,
    ticks: [],
    words: 'screen',
    laneRad: directionRad(from, to),
  };
  return [{ ...of, ...line }];
};

const laneDirection = (
  walk: LineWalk,
  { of }: ActStep,
  act: Extract<ReactiveAct, { kind: 'screen' }>,
  timeS: number,
): number | undefined => {
  const ends = laneEnds(walk, of.spot, act, spot => walk.run && placeOf(walk.run, spot, timeS));
  return ends ? directionRad(ends[0], ends[1]) : undefined;
};

/** Both ends of a lane on the page; it goes to the own net when nobody takes it. */
const laneEnds = (
  walk: LineWalk,
  own: ActStep['of']['spot'],
  act: Extract<ReactiveAct, { kind: 'screen' }>,
  placeAt: (spot: ActStep['of']['spot']) => IcePoint | undefined,
): readonly [SheetPoint, SheetPoint] | null => {
  const from = placeAt(act.from);
  if (!from) return null;
  const keeper = walk.plan.spots[own];
  const ownEnd = otherEnd(attackedEndOf(keeper ?? { side: 'us' }));
  const to = act.to ? placeAt(act.to) : netOf(walk.rink, from, ownEnd);
  return to ? [sheetPoint(from), sheetPoint(to)] : null;
};

const wordsOf = (walk: LineWalk, act: ReactiveAct): string => {
  if (act.kind === 'screen') return 'screen';
  const whom = walk.plan.spots[act.whom]?.role ?? '';
  if (act.kind === 'gap') return `${gapWords(act.distanceM, walk.lengths)} to ${whom}`;
  return act.kind === 'steal' ? `steal, ${whom}` : `chases ${whom}`;
};
