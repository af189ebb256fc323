import type { DrillPlan } from '../drill/drill.ts';
import type { FreezeScene } from '../drill/plan-from-freeze.ts';
import type { Run } from '../run/run-result.ts';
import type { End } from '../units/ends.ts';
import type { IcePoint, IceVelocity } from '../units/points.ts';
import { MISSING_M } from './ideas-rows.ts';
import { matchPeople, turnOnto } from './match-people.ts';

/** How near a rep comes to the picture it was made from, term by term. */
export interface Likeness {
  /** All of it in one figure, metres: √(places² + gaps²), where a missing or extra person counts `MISSING_M`. */
  readonly distanceM: number;
  /** The moment of the rep that comes nearest, seconds after the whistle. */
  readonly timeS: number;
  /** The rep is nearer to the picture in a mirror, one side of the ice for the other. */
  readonly isMirrored: boolean;
  /** Root mean square of how far everybody, and the puck, is from the place in the picture, metres. */
  readonly placesM: number;
  /** Root mean square of how much every distance to the puck differs, metres. */
  readonly gapsM: number;
  /** Root mean square of the difference of velocities, m/s; null when the picture tells none, as one picture alone. */
  readonly speedsMps: number | null;
  readonly missingCount: number;
  readonly extraCount: number;
}

/** Between two looks, seconds: a skater moves half a metre. */
const LOOK_S = 0.05;

/**
 * Compares a rep with a picture at the moment that comes nearest (or at `atTimeS` ≥ 0, seconds). Metres, frame of the rink, the
 * picture turned so that we attack the end that we attack in the drill. `velocitiesMps` by id, in the picture's frame, when film has told them. Null when the
 * picture and the drill have nobody in common. Our own measure: it orders drills, it is no physical quantity.
 */
export const likenessOf = (
  scene: FreezeScene,
  attacks: End,
  plan: DrillPlan,
  run: Run,
  options: {
    readonly atTimeS?: number;
    readonly velocitiesMps?: Readonly<Record<string, IceVelocity>>;
  } = {},
): Likeness | null => {
  const matched = matchPeople(scene, attacks, plan);
  if (matched.pairs.length === 0) return null;
  const turn = turnOnto(plan, attacks);
  const puckM = scene.puck && { xM: turn * scene.puck.atM.xM, yM: turn * scene.puck.atM.yM };
  const apartCount = matched.missing.length + matched.extra.length;
  const looks =
    options.atTimeS === undefined
      ? Array.from({ length: Math.floor(run.durationS / LOOK_S) + 1 }, (_, i) => i * LOOK_S)
      : [Math.min(options.atTimeS, run.durationS)];
  let best: Likeness | null = null;
  for (const timeS of looks) {
    for (const mirror of [1, -1]) {
      const terms = termsAt(matched.pairs, puckM, run, Math.round(timeS * run.stepHz), mirror, apartCount);
      if (best !== null && terms.distanceM >= best.distanceM) continue;
      best = {
        ...terms,
        timeS,
        isMirrored: mirror < 0,
        speedsMps: speedsAt(
          matched.pairs,
          options.velocitiesMps,
          run,
          Math.round(timeS * run.stepHz),
          turn,
          mirror,
        ),
        missingCount: matched.missing.length,
        extraCount: matched.extra.length,
      };
    }
  }
  return best;
};

type Pairs = ReturnType<typeof matchPeople>['pairs'];

const termsAt = (
  pairs: Pairs,
  puckM: IcePoint | undefined,
  run: Run,
  sample: number,
  mirror: number,
  apartCount: number,
): Pick<Likeness, 'distanceM' | 'placesM' | 'gapsM'> => {
  const playedPuckM = puckM && puckNearest(run, sample, { xM: puckM.xM, yM: mirror * puckM.yM });
  let places = apartCount * MISSING_M.value ** 2;
  let gaps = 0;
  let gapCount = 0;
  for (const { atM, spot } of pairs) {
    const played = placeIn(run, spot, sample);
    places += (played.xM - atM.xM) ** 2 + (played.yM - mirror * atM.yM) ** 2;
    if (!puckM || !playedPuckM) continue;
    gaps += (distance(played, playedPuckM) - distance(atM, puckM)) ** 2;
    gapCount++;
  }
  let count = pairs.length + apartCount;
  if (puckM) {
    places += playedPuckM
      ? (playedPuckM.xM - puckM.xM) ** 2 + (playedPuckM.yM - mirror * puckM.yM) ** 2
      : MISSING_M.value ** 2;
    count++;
  }
  const placesSqM2 = places / count;
  const gapsSqM2 = gapCount === 0 ? 0 : gaps / gapCount;
  return {
    distanceM: Math.sqrt(placesSqM2 + gapsSqM2),
    placesM: Math.sqrt(placesSqM2),
    gapsM: Math.sqrt(gapsSqM2),
  };
};

const speedsAt = (
  pairs: Pairs,
  velocities: Readonly<Record<string, IceVelocity>> | undefined,
  run: Run,
  sample: number,
  turn: number,
  mirror: number,
): number | null => {
  let sum = 0;
  let count = 0;
  for (const { skater, spot } of pairs) {
    const seen = velocities?.[skater.id];
    const track = run.tracks.find(each => each.spot === spot);
    if (!seen || !track) continue;
    const x = (track.xMps[sample] ?? 0) - turn * seen.xMps;
    const y = (track.yMps[sample] ?? 0) - mirror * turn * seen.yMps;
    sum += x * x + y * y;
    count++;
  }
  return count === 0 ? null : Math.sqrt(sum / count);
};

/** Of several pucks the one that is nearest to where the picture has it. */
const puckNearest = (run: Run, sample: number, toM: IcePoint): IcePoint | undefined =>
  run.pucks
    .filter(puck => puck.owner[sample] !== -2)
    .map(puck => ({ xM: puck.xM[sample] ?? 0, yM: puck.yM[sample] ?? 0 }))
    .sort((a, b) => distance(a, toM) - distance(b, toM))[0];

const placeIn = (run: Run, spot: string, sample: number): IcePoint => {
  const track = run.tracks.find(each => each.spot === spot);
  if (!track) throw new Error(`a run without a track of ${spot}, of ${run.tracks.length}`);
  return { xM: track.xM[sample] ?? 0, yM: track.yM[sample] ?? 0 };
};

const distance = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);
