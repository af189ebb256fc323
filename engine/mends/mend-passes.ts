import type { PassWay } from '../drill/drill.ts';
import type { PlayableAct, PlayableSpot } from '../drill/playable-parts.ts';
import type { MendCandidate, MendCase } from './mend.ts';
import { rounded } from './mend-places.ts';
import { MPS_OF_PASS, OTHER_WAY, SOFTEST_PASS } from './mend-rows.ts';

const SPEED_STEPS_MPS = [1, 2, 3, 4, 6, 8, 12];
/** Ways that may take the place of another. A rim and a drop are other plays. */
const WAYS: readonly PassWay[] = ['direct', 'bank', 'saucer'];
const SOFTEST_MPS = SOFTEST_PASS.value;

type PassAct = PlayableAct & { readonly kind: 'pass' };

/** The pass that the finding is about, with who makes it; undefined when it is about none. */
export const passOf = (of: MendCase): { readonly spot: PlayableSpot; readonly act: PassAct } | undefined => {
  for (const spot of of.playable.spots) {
    const act = spot.acts.find(({ id }) => id === of.finding.act);
    if (act?.kind === 'pass') return { spot, act };
  }
  return undefined;
};

/** The pass harder or softer, no harder than the level passes and no softer than 4 m/s. Empty when the finding is about no pass. */
export const passSpeeds = (of: MendCase): readonly MendCandidate[] => {
  const pass = passOf(of);
  if (!pass) return [];
  const { spot, act } = pass;
  const hardest = Math.max(of.level.model.hardPassMps, act.speedMps);
  return SPEED_STEPS_MPS.flatMap(by => [act.speedMps + by, act.speedMps - by])
    .map(rounded)
    .filter(speed => speed >= SOFTEST_MPS && speed <= hardest)
    .map(speed => ({
      says: { verb: 'passAt', spot: spot.id, number: speed, unit: 'm/s' },
      writes: [{ path: ['spots', spot.id, 'acts', act.id, 'speedMps'], value: speed }],
      size: Math.abs(speed - act.speedMps) * MPS_OF_PASS.value,
    }));
};

/** The pass made another way, at its speed or harder. Empty when the finding is about no pass. */
export const passWays = (of: MendCase): readonly MendCandidate[] => {
  const pass = passOf(of);
  if (!pass) return [];
  const { spot, act } = pass;
  const path = ['spots', spot.id, 'acts', act.id];
  return WAYS.filter(way => way !== act.way).flatMap(way =>
    [0, 3, 6]
      .filter(by => by === 0 || act.speedMps + by <= of.level.model.hardPassMps)
      .map(by => ({
        says: { verb: 'passWay', spot: spot.id, number: rounded(act.speedMps + by), unit: 'm/s', way },
        writes: [
          { path: [...path, 'way'], value: way },
          ...(by === 0 ? [] : [{ path: [...path, 'speedMps'], value: rounded(act.speedMps + by) }]),
        ],
        size: OTHER_WAY.value + by * MPS_OF_PASS.value,
      })),
  );
};
