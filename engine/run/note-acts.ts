import { ACTS_OVERLAP_S } from '../drill/drill-rows.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import type { PlannedRoute } from '../motion/planned-route.ts';
import { type Actor, placeOf } from './actor.ts';
import { dueOf } from './cue-due.ts';
import type { Finding } from './run-result.ts';
import type { RunState } from './run-state.ts';

/** Source of a finding that follows from the drill alone. */
const FROM_THE_DRILL = { status: 'derived', source: 'the drill as it is drawn' } as const;

/**
 * Adds `twoActsAtOnce` when the cue of the act that starts now came while the act before was still under way, by more than can be held
 * back. Value: seconds too soon; threshold: `ACTS_OVERLAP_S`. Adds nothing for a first act or one without such a cue. Our own rule.
 */
export const noteTwoActs = (run: RunState, actor: Actor, act: PlayableAct): void => {
  const { cueS } = dueOf(run, actor);
  const overlapS = actor.freeSinceS - cueS;
  const isFirst = actor.actStartS < 0;
  if (isFirst || !Number.isFinite(cueS) || overlapS <= ACTS_OVERLAP_S.value) return;
  run.findings.push({
    kind: 'twoActsAtOnce',
    weight: 'know',
    timeS: cueS,
    atM: placeOf(actor),
    spots: [actor.spot.id],
    act: act.id,
    value: overlapS,
    threshold: ACTS_OVERLAP_S.value,
    unit: 's',
    status: ACTS_OVERLAP_S.status,
    source: ACTS_OVERLAP_S.source,
  });
};

/**
 * Adds `noBankPass`: no launch direction off the boards meets the receiver, and the passer keeps the puck. At the passer, metres; value 0 of the 1 way
 * needed. Source: the search over every direction with one and with two bounces.
 */
export const noteNoBankPass = (run: RunState, passer: Actor, receiver: Actor, act: PlayableAct): void => {
  run.findings.push({
    ...FROM_THE_DRILL,
    kind: 'noBankPass',
    weight: 'look',
    timeS: run.nowS,
    atM: placeOf(passer),
    spots: [passer.spot.id, receiver.spot.id],
    act: act.id,
    value: 0,
    threshold: 1,
    unit: 'ways',
    source: 'every launch direction with one and with two bounces',
  });
};

/** Adds `offTheIce` when the route is drawn over the boards; it is skated along them. Value: metres outside, at the place farthest out. Adds nothing else. */
export const noteOffTheIce = (run: RunState, actor: Actor, act: PlayableAct, route: PlannedRoute): void => {
  if (!route.off) return;
  run.findings.push({
    ...FROM_THE_DRILL,
    kind: 'offTheIce',
    weight: 'look',
    timeS: run.nowS,
    atM: route.off.atM,
    spots: [actor.spot.id],
    act: act.id,
    value: route.off.byM,
    threshold: 0,
    unit: 'm',
  });
};

/**
 * What is known only once the rep is over: cues that never came (value: seconds waited), pucks that were not there (value 0 of 1), spots drawn off
 * the ice (value: metres outside). Seconds after the whistle, metres in the frame of the rink. Empty when there is nothing. From the drill alone.
 */
export const leftoverFindings = (run: RunState): readonly Finding[] => {
  const findings: Finding[] = [];
  const add = (finding: Omit<Finding, 'status' | 'source'>): void => {
    findings.push({ ...finding, ...FROM_THE_DRILL });
  };
  for (const actor of run.actors) {
    const { spot } = actor;
    const next = spot.acts[actor.nextActIndex];
    if (spot.drawnOffM) {
      const offM = Math.hypot(spot.drawnOffM.xM - spot.atM.xM, spot.drawnOffM.yM - spot.atM.yM);
      add({
        kind: 'offTheIce',
        weight: 'look',
        timeS: 0,
        atM: spot.drawnOffM,
        spots: [spot.id],
        value: offM,
        threshold: 0,
        unit: 'm',
      });
    }
    const goes = spot.acts[actor.actIndex];
    if (goes?.kind === 'pickUp' && actor.prey === null) add(noPuck(actor, goes, run.nowS));
    if (!next) continue;
    if (actor.waitsForPuck) {
      add(noPuck(actor, next, run.nowS));
    } else if (next.cue && actor.dueS === Number.POSITIVE_INFINITY) {
      add({
        kind: 'cueNeverFires',
        weight: 'look',
        timeS: actor.actIndex < 0 ? actor.freeSinceS : actor.actStartS,
        atM: placeOf(actor),
        spots: 'spot' in next.cue && next.cue.spot !== spot.id ? [spot.id, next.cue.spot] : [spot.id],
        act: next.id,
        value: run.nowS - (actor.actIndex < 0 ? actor.freeSinceS : actor.actStartS),
        threshold: 0,
        unit: 's',
      });
    }
  }
  for (const { actor, act, timeS } of run.lackedPuck) add(noPuck(actor, act, timeS));
  return findings;
};

const noPuck = (actor: Actor, act: PlayableAct, timeS: number): Omit<Finding, 'status' | 'source'> => ({
  kind: 'noPuckToPlay',
  weight: 'look',
  timeS,
  atM: placeOf(actor),
  spots: [actor.spot.id],
  act: act.id,
  value: 0,
  threshold: 1,
  unit: 'pucks',
});
