import type { SpotId } from '../units/ids.ts';
import type { MendCandidate, MendCase } from './mend.ts';
import { actThen, rounded, spotOf } from './mend-places.ts';
import { OTHER_DEED, QUARTER_TURN } from './mend-rows.ts';

/** Another distance for the gap of the finding, nearer to what was held. Empty when the act is no gap. */
export const gapsOther = (of: MendCase): readonly MendCandidate[] => {
  const spot = spotOf(of, of.finding.spots[0]);
  const act = spot?.acts.find(({ id }) => id === of.finding.act);
  if (!spot || act?.kind !== 'gap') return [];
  const sign = of.finding.value < act.distanceM ? -1 : 1;
  return [0.5, 1, 1.5, 2, 3, 4]
    .map(byM => rounded(act.distanceM + sign * byM))
    .filter(distanceM => distanceM >= 1 && distanceM <= 30)
    .map(distanceM => ({
      says: { verb: 'gapOf', spot: spot.id, number: distanceM, unit: 'm' },
      writes: [{ path: ['spots', spot.id, 'acts', act.id, 'distanceM'], value: distanceM }],
      // The gap is what the drill is for: its start is moved first.
      size: 1 + 2 * Math.abs(distanceM - act.distanceM),
    }));
};

/** The hunter keeps a gap outside reach instead. Empty when the act then is no hunt. */
export const gapsInstead = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  const act = spot && actThen(of, spot);
  if (!spot || (act?.kind !== 'chase' && act?.kind !== 'steal')) return [];
  const { whom, rank, cue } = act;
  return [1, 2].map(outM => {
    const distanceM = rounded(of.level.model.lungeReachM + outM);
    return {
      says: { verb: 'gapInstead', spot: spot.id, number: distanceM, unit: 'm' },
      writes: [
        {
          path: ['spots', spot.id, 'acts', act.id],
          value: { rank, kind: 'gap', whom, distanceM, ...(cue ? { cue } : {}) },
        },
      ],
      size: OTHER_DEED.value + outM,
    };
  });
};

/** A line that waits is turned about its first skater, so that it stands elsewhere. Empty when nobody waits there. */
export const linesTurned = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  if (!spot || spot.waitingCount === 0) return [];
  return [90, -90, 180].map(byDeg => ({
    says: { verb: 'turnLine', spot: spot.id, number: Math.abs(byDeg), unit: '°' },
    writes: [
      {
        path: ['spots', spot.id, 'facingRad'],
        value: inHalfTurns(spot.facingRad + (byDeg * Math.PI) / 180),
      },
    ],
    size: (QUARTER_TURN.value * Math.abs(byDeg)) / 90,
  }));
};

const inHalfTurns = (rad: number): number => Math.atan2(Math.sin(rad), Math.cos(rad));
