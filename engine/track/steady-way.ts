import { squareIn, times } from './ice-covariance.ts';
import type { JoinedPlace } from './join-ways.ts';
import type { SkatePower } from './skate-step.ts';
import { smoothWay, type WayPoint } from './smooth-way.ts';
import { HEAVY_TAIL } from './track-rows.ts';

/**
 * The likeliest way through joined places, at the times asked for (growing, seconds), where a found place may be far off: `smoothWay` again and again,
 * each found place counting the less the further it lies from the way before. Hands always count whole. Empty when nothing was placed.
 * Source: Student's t errors by reweighting, Lange, Little & Taylor 1989, J. Am. Stat. Assoc. 84 (from memory).
 */
export const steadyWay = (
  places: readonly JoinedPlace[],
  timesS: readonly number[],
  power: SkatePower,
): WayPoint[] => {
  const placeTimesS = places.map(({ timeS }) => timeS);
  let weighed = places.map(place => weighedBy(place, 1));
  for (let round = 0; round < ROUNDS; round++) {
    const way = smoothWay(weighed, placeTimesS, power);
    weighed = places.map((place, i) => weighedBy(place, weightOf(place, way[i]!)));
  }
  return smoothWay(weighed, timesS, power);
};

const ROUNDS = 3;

const weighedBy = (place: JoinedPlace, weight: number) => ({
  timeS: place.timeS,
  atM: place.atM,
  covM2: times(place.covM2, place.together / weight),
});

const weightOf = ({ by, atM, covM2 }: JoinedPlace, { atM: wayM }: WayPoint): number => {
  if (by === 'hand') return 1;
  const degrees = HEAVY_TAIL.value;
  const away = { xM: atM.xM - wayM.xM, yM: atM.yM - wayM.yM };
  return Math.min(1, (degrees + 2) / (degrees + squareIn(away, covM2)));
};
