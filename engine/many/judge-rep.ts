import type { Playable } from '../drill/playable.ts';
import type { Run, RunEvent } from '../run/run-result.ts';
import type { Side } from '../units/ends.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { findPuckOver, isLevel } from './level-with-puck.ts';
import type { Outcome, Verdict } from './outcome.ts';
import { passesIn } from './passes-in.ts';
import { standardHeldIn } from './standard-held.ts';

/**
 * How a rep came out. A wanted thing that came, in time or not, has its place (metres) and time (seconds after the whistle).
 */
export type Judged =
  | { readonly verdict: 'yes' | 'other'; readonly atM: IcePoint; readonly timeS: number }
  | {
      readonly verdict: Exclude<Verdict, 'yes' | 'other'>;
      readonly atM?: undefined;
      readonly timeS?: undefined;
    };

const NO: Judged = { verdict: 'no' };
const UNASKED: Judged = { verdict: 'unasked' };

/**
 * Judges one rep. Always answers; a spot or act that the drill does not have gives `no` or `unasked`. For `levelWithPuck` place and time are those of
 * the skater when she got level for the last time before the crossing (`yes`), or for the first time after it, before the
 * next shot (`other`).
 */
export const judgeRep = (outcome: Outcome, run: Run, playable: Playable): Judged => {
  switch (outcome.kind) {
    case 'caughtBefore':
      return judgeCaught(outcome, run);
    case 'passArrives':
      return judgePass(outcome, run);
    case 'puckRegained':
      return judgeRegained(outcome, run, playable);
    case 'levelWithPuck':
      return judgeLevel(outcome, run);
    case 'cueInTime':
      return judgeCue(outcome, run);
    case 'standardHeld':
      return judgeHeld(outcome, run, playable);
  }
};

const judgeHeld = (
  outcome: Extract<Outcome, { kind: 'standardHeld' }>,
  run: Run,
  playable: Playable,
): Judged => {
  const held = standardHeldIn(outcome.standard, run, playable);
  if (held.kind === 'none') return UNASKED;
  return { verdict: held.kind === 'held' ? 'yes' : 'other', atM: held.atM, timeS: held.timeS };
};

const judgePass = (outcome: Extract<Outcome, { kind: 'passArrives' }>, run: Run): Judged => {
  const pass = passesIn(run).find(one => one.act === outcome.act && one.spot === outcome.spot);
  if (!pass) return UNASKED;
  if (pass.end === 'missed' || !pass.atM || pass.endS === undefined) return NO;
  return { verdict: pass.end === 'received' ? 'yes' : 'other', atM: pass.atM, timeS: pass.endS };
};

const judgeCue = (outcome: Extract<Outcome, { kind: 'cueInTime' }>, run: Run): Judged => {
  const start = run.events.find(
    event => event.kind === 'actStarts' && event.spot === outcome.spot && event.act === outcome.act,
  );
  if (!start) return NO;
  const isEarly = run.findings.some(
    finding =>
      finding.kind === 'twoActsAtOnce' && finding.act === outcome.act && finding.spots[0] === outcome.spot,
  );
  return judged(isEarly ? 'other' : 'yes', start);
};

const judged = (verdict: 'yes' | 'other', event: RunEvent): Judged => ({
  verdict,
  atM: event.atM,
  timeS: event.timeS,
});

const judgeCaught = (outcome: Extract<Outcome, { kind: 'caughtBefore' }>, run: Run): Judged => {
  const over = run.events.find(
    event => event.kind === 'spotCrosses' && event.spot === outcome.spot && event.line === outcome.line,
  );
  const { by } = outcome;
  const caught = run.events.find(
    event =>
      (event.kind === 'caught' && event.spot === outcome.spot && (by === undefined || event.by === by)) ||
      (event.kind === 'steal' && event.from === outcome.spot && (by === undefined || event.spot === by)),
  );
  if (!caught) return NO;
  return judged(over === undefined || caught.timeS < over.timeS ? 'yes' : 'other', caught);
};

const judgeRegained = (
  outcome: Extract<Outcome, { kind: 'puckRegained' }>,
  run: Run,
  playable: Playable,
): Judged => {
  const sides = new Map<SpotId, Side>(playable.spots.map(spot => [spot.id, spot.side]));
  let hadByOthers = playable.pucks.some(
    ({ ownerSpot }) => ownerSpot !== null && sides.get(ownerSpot) !== outcome.side,
  );
  let overS = Number.POSITIVE_INFINITY;
  for (const event of run.events) {
    if (event.kind === 'puckCrosses' && event.line === outcome.beforeLine && hadByOthers)
      overS = Math.min(overS, event.timeS);
    if (!TAKES.includes(event.kind) || !('spot' in event)) continue;
    if (sides.get(event.spot) !== outcome.side) hadByOthers = true;
    else if (hadByOthers) return judged(event.timeS < overS ? 'yes' : 'other', event);
  }
  return hadByOthers ? NO : UNASKED;
};

/** Events with which somebody comes to have a puck. */
const TAKES: readonly RunEvent['kind'][] = ['receive', 'intercept', 'pickUp', 'steal'];

const judgeLevel = (outcome: Extract<Outcome, { kind: 'levelWithPuck' }>, run: Run): Judged => {
  const track = run.tracks.find(one => one.spot === outcome.spot);
  const over = findPuckOver(run, outcome.atLine);
  if (!track || !over) return UNASKED;
  const isLevelAt = (sample: number): boolean => isLevel(track, over, sample, outcome.withinM);
  const judgedAt = (verdict: 'yes' | 'other', sample: number): Judged => ({
    verdict,
    atM: { xM: track.xM[sample]!, yM: track.yM[sample]! },
    timeS: sample / run.stepHz,
  });
  if (isLevelAt(over.sample)) {
    let since = over.sample;
    while (since > 0 && isLevelAt(since - 1)) since--;
    return judgedAt('yes', since);
  }
  const shot = run.events.find(event => event.kind === 'shot' && event.timeS > over.event.timeS);
  const last = shot ? Math.floor(shot.timeS * run.stepHz) : run.sampleCount - 1;
  for (let sample = over.sample + 1; sample <= last; sample++) {
    if (isLevelAt(sample)) return judgedAt('other', sample);
  }
  return NO;
};
