import type { Flow } from '../drill/drill.ts';
import { USUAL_FLOW } from '../drill/usual-flow.ts';
import type { MendCandidate, MendCase, MendSays } from './mend.ts';
import { rounded } from './mend-places.ts';
import { BOTH_ENDS, PUCK_ADDED, SECOND_OF_FLOW, SOONEST_GO } from './mend-rows.ts';

const STEPS_S = [1, 2, 3, 4, 6, 8, 10, 15, 20];
/** Of the time from one go to the next now. */
const SOONER = [0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.15, 0.1];
const LATER = [1.1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 6];
/** No two goes are less than this apart, seconds: somebody has to look and go. */
const SOONEST_S = SOONEST_GO.value;

/** The next rep sooner, or at both ends, so that lines stand less. Metres of size as `mend-rows.ts` has them. Empty when nothing is played in the rep. */
export const goesSooner = (of: MendCase): readonly MendCandidate[] => [
  ...everyTimes(of, SOONER),
  ...endsOther(of, ['byTurns', 'both']),
  ...(flowOfPlan(of).ends === 'one' ? everyTimes(of, SOONER, 'both') : []),
];

/** The next rep later, or at one end, so that there is time and there are people. Empty when nothing is played in the rep. */
export const goesLater = (of: MendCase): readonly MendCandidate[] => [
  ...everyTimes(of, LATER),
  ...pausesLonger(of),
  ...endsOther(of, ['one', 'byTurns']),
];

/** Reps at the end drawn alone, so that the other is left to a small game. Empty when that is so already. */
export const staysAtOneEnd = (of: MendCase): readonly MendCandidate[] => endsOther(of, ['one']);

const everyTimes = (
  of: MendCase,
  times: readonly number[],
  ends?: Flow['ends'],
): readonly MendCandidate[] => {
  const flow = flowOfPlan(of);
  const isTimed = flow.next.on === 'every';
  const nowS = flow.next.on === 'every' ? flow.next.seconds : of.run.durationS + flow.pauseS;
  return [...new Set(times.map(by => Math.round(nowS * by)))]
    .filter(seconds => seconds >= SOONEST_S && seconds <= 120 && seconds !== nowS)
    .map(seconds => ({
      says: { ...saysOf(of), verb: 'goEvery', number: seconds, unit: 's', ...(ends ? { ends } : {}) },
      writes: [
        { path: ['flow'], value: { ...flow, next: { on: 'every', seconds }, ends: ends ?? flow.ends } },
      ],
      size:
        Math.abs(seconds - nowS) * SECOND_OF_FLOW.value + (isTimed ? 0 : 1) + (ends ? BOTH_ENDS.value : 0),
    }));
};

const pausesLonger = (of: MendCase): readonly MendCandidate[] => {
  const flow = flowOfPlan(of);
  if (flow.next.on !== 'end') return [];
  return STEPS_S.map(byS => rounded(flow.pauseS + byS)).map(pauseS => ({
    says: { ...saysOf(of), verb: 'pauseFor', number: pauseS, unit: 's' },
    writes: [{ path: ['flow'], value: { ...flow, pauseS } }],
    size: (pauseS - flow.pauseS) * SECOND_OF_FLOW.value,
  }));
};

const endsOther = (of: MendCase, ends: readonly Flow['ends'][]): readonly MendCandidate[] => {
  const flow = flowOfPlan(of);
  return ends
    .filter(one => one !== flow.ends)
    .map(one => ({
      says: { ...saysOf(of), verb: 'ends', number: 0, unit: '', ends: one },
      writes: [{ path: ['flow'], value: { ...flow, ends: one } }],
      size: BOTH_ENDS.value,
    }));
};

/** More pucks in the heap that has most, as many as are said to be missing and more. Empty when the drill has no heap. */
export const heapsGreater = (of: MendCase): readonly MendCandidate[] => {
  const [most] = Object.entries(of.plan.pucks)
    .filter(([, { ownerSpot }]) => !ownerSpot || of.plan.spots[ownerSpot]?.kind !== 'skater')
    .sort(([, a], [, b]) => b.count - a.count);
  if (!most) return [];
  const [id, { count }] = most;
  const lacking = Math.max(1, Math.ceil(of.finding.value - of.finding.threshold));
  return [lacking, lacking + 1, lacking + 3].map(by => ({
    says: { ...saysOf(of), verb: 'morePucks', number: by, unit: 'pucks' },
    writes: [{ path: ['pucks', id, 'count'], value: count + by }],
    size: PUCK_ADDED.value * 0.1 * by,
  }));
};

const flowOfPlan = (of: MendCase): Flow => of.plan.flow ?? USUAL_FLOW;

const saysOf = (of: MendCase): Pick<MendSays, 'spot'> => ({
  spot: of.finding.spots[0] ?? of.playable.spots[0]!.id,
});
