import { groupsOf } from '../drill/drill-groups.ts';
import type { PlayableSpot } from '../drill/playable-parts.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import type { SpotId } from '../units/ids.ts';
import { type FastFlight, fastFlightsOf } from './fast-flights.ts';
import { PUCK_ROOM_M, PUCK_ROOM_S } from './finding-rows.ts';
import type { Finding, PuckTrack, RunEvent, Track } from './run-result.ts';
import type { RunState } from './run-state.ts';
import { waitingPlacesOf } from './waiting-places.ts';

/**
 * Each time a free puck faster than `PUCK_HURTS_MPS` goes within `PUCK_ROOM_M` of somebody who has no part in it: somebody who
 * waits in a line (not behind who made the pass or who is to have it), or, for a shot, a skater of another group who is there
 * within `PUCK_ROOM_S` before or after. Groups are those of `groupsOf`; one that has nobody of the shooter's side opposes
 * the shooter and is no other group, nor is somebody who has nothing to do. A puck that only goes away from them is no finding, and goalies are never asked. One finding a
 * flight and spot, at the nearest. Value: metres from the puck to the middle of the body; threshold: room; speed: of the
 * puck there; place and time: of the puck; `spots`: whose line or lane, then who sent the puck. Empty when there is none. Our own rule on `finding-rows.ts`.
 */
export const findShotAcross = (
  run: Pick<RunState, 'playable' | 'rink'>,
  tracks: readonly Track[],
  pucks: readonly PuckTrack[],
  events: readonly RunEvent[],
): readonly Finding[] => {
  const findings: Finding[] = [];
  const { spots } = run.playable;
  pucks.forEach((puck, puckIndex) => {
    for (const flight of fastFlightsOf(puck, puckIndex, events)) {
      const groups = groupsOf(spots);
      spots.forEach((spot, index) => {
        if (spot.kind === 'goalie') return;
        const nearest = nearer(
          nearestToLine(puck, flight, spot, run),
          isOfOthers(spot, flight, spots, groups) ? nearestToLane(puck, flight, tracks[index]!) : undefined,
        );
        if (nearest) findings.push(findingAt(puck, flight, spot, nearest));
      });
    }
  });
  return findings;
};

const isOfOthers = (
  spot: PlayableSpot,
  { release }: FastFlight,
  spots: readonly PlayableSpot[],
  groups: ReadonlyMap<SpotId, number>,
): boolean => {
  const group = groups.get(spot.id);
  if (release.kind === 'pass' || spot.acts.length === 0 || group === groups.get(release.spot)) return false;
  const side = spots.find(({ id }) => id === release.spot)?.side;
  return spots.some(one => groups.get(one.id) === group && one.side === side);
};

interface Nearest {
  readonly apartM: number;
  /** Sample of the puck. */
  readonly at: number;
}

const nearer = (a: Nearest | undefined, b: Nearest | undefined): Nearest | undefined =>
  a && b ? (a.apartM <= b.apartM ? a : b) : (a ?? b);

const nearestToLine = (
  puck: PuckTrack,
  flight: FastFlight,
  spot: PlayableSpot,
  run: Pick<RunState, 'rink'>,
): Nearest | undefined => {
  const { release } = flight;
  if (release.kind === 'pass' && (spot.id === release.spot || spot.id === release.to)) return undefined;
  return waitingPlacesOf(spot, run.rink.boards)
    .map(place => nearestOver(puck, flight, i => apartM(puck, i, place.xM, place.yM)))
    .reduce(nearer, undefined);
};

const nearestToLane = (puck: PuckTrack, flight: FastFlight, track: Track): Nearest | undefined => {
  const window = Math.round(PUCK_ROOM_S.value * STEP_HZ);
  const last = track.xM.length - 1;
  return nearestOver(puck, flight, i => {
    let least = Number.POSITIVE_INFINITY;
    const now = Math.min(i, last);
    // Who cannot come into the room within the window need not be compared time by time.
    if (apartM(puck, i, track.xM[now]!, track.yM[now]!) > FAR_M) return least;
    for (let k = Math.max(0, i - window); k <= Math.min(last, i + window); k += LANE_EVERY) {
      least = Math.min(least, apartM(puck, i, track.xM[k]!, track.yM[k]!));
    }
    return least;
  });
};

/** Farther off now than a skater at 14 m/s goes within the window, and the room. */
const FAR_M = PUCK_ROOM_M.value + 14 * PUCK_ROOM_S.value;

/** Samples between the times at which a skater's place is compared: less than half a metre at full speed. */
const LANE_EVERY = 6;

/** The nearest of a flight when that is within the room and the puck came nearer to get there. */
const nearestOver = (
  puck: PuckTrack,
  flight: FastFlight,
  apartAt: (sample: number) => number,
): Nearest | undefined => {
  let best: Nearest = { apartM: Number.POSITIVE_INFINITY, at: -1 };
  const last = Math.min(flight.to, puck.xM.length - 1);
  for (let i = flight.from; i <= last; i++) {
    const here = apartAt(i);
    if (here < best.apartM - NEARER_M) best = { apartM: here, at: i };
  }
  return best.at > flight.from && best.apartM < PUCK_ROOM_M.value ? best : undefined;
};

/** The first of several nearest places is taken, whatever the rounding. */
const NEARER_M = 1e-9;

const apartM = (puck: PuckTrack, i: number, xM: number, yM: number): number => {
  const x = puck.xM[i]! - xM;
  const y = puck.yM[i]! - yM;
  return Math.sqrt(x * x + y * y);
};

const findingAt = (puck: PuckTrack, flight: FastFlight, spot: PlayableSpot, nearest: Nearest): Finding => {
  const { at } = nearest;
  const before = Math.max(flight.from, at - 1);
  const after = Math.min(before + 1, puck.xM.length - 1);
  return {
    kind: 'shotAcrossGroup',
    weight: 'look',
    timeS: at / STEP_HZ,
    atM: { xM: puck.xM[at]!, yM: puck.yM[at]! },
    spots: [spot.id, flight.release.spot],
    act: flight.release.act,
    value: nearest.apartM,
    threshold: PUCK_ROOM_M.value,
    speedMps: apartM(puck, before, puck.xM[after]!, puck.yM[after]!) * STEP_HZ,
    unit: 'm',
    status: PUCK_ROOM_M.status,
    source: PUCK_ROOM_M.source,
  };
};
