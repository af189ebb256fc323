import type { Drill, DrillSpot } from '@icewright/book';
import {
  BROUGHT_INSIDE,
  BROUGHT_WITHIN,
  type IcePoint,
  levelOf,
  playableOf,
  rinkOf,
  type SpotId,
} from '@icewright/engine';
import { HALF_TURN, type PlaceMap } from '../edit/place-map.ts';
import { laidBy } from './half-ice.ts';

/** So far inside the red line whoever stood farthest beyond it stands then, and only who stood within this of it is moved, metres. */
const INSIDE_M = BROUGHT_INSIDE.value;
const MOVED_WITHIN_M = BROUGHT_WITHIN.value;

/**
 * The drill on half ice with those who stand or skate past the red line brought in, everybody in the order in which they were along
 * the sheet; the goalie of the far net, whom nobody shoots at, is left out. Null where the far half cannot be spared: shots at
 * both nets, a far line that is waited for, or a rep that cannot be played so. Metres, frame of the rink.
 */
export function halfIceBroughtIn(drill: Drill): Drill | null {
  if (drill.rink.preset === 'halfIce' || drill.rink.preset === 'crossIce') return null;
  const ends = new Set(actsOf(drill).flatMap(act => (act.kind === 'shoot' ? [act.atEnd] : [])));
  if (ends.size > 1) return null;
  const places = placesOf(drill);
  const isMinus =
    ends.size === 1 ? ends.has('minusX') : places.filter(at => at.xM < 0).length > places.length / 2;
  const laid = isMinus ? laidBy(drill, HALF_TURN) : drill;
  if (actsOf(laid).some(({ cue }) => cue !== undefined && 'line' in cue && FAR_LINES.includes(cue.line)))
    return null;
  const lowestM = Math.min(INSIDE_M, ...placesOf(laid).map(at => at.xM));
  const pressed = laidBy({ ...laid, spots: withoutFarGoalie(laid.spots) }, pressedIn(lowestM));
  const made: Drill = {
    ...pressed,
    rink: drill.rink.preset === '200x85ft' ? { preset: 'halfIce' } : drill.rink,
  };
  const { kind } = playableOf(made, rinkOf(made.rink), levelOf(made.level));
  return kind === 'playable' ? made : null;
}

const pressedIn = (lowestM: number): PlaceMap => ({
  point: ({ xM, yM }) => ({ xM: xM >= MOVED_WITHIN_M ? xM : pressedM(xM, lowestM), yM }),
  angle: rad => rad,
  mirrors: false,
  swapsEnds: false,
});

/** From `lowestM` to the edge of who is moved, evenly; in centimetres, as the hand sets them. */
const pressedM = (xM: number, lowestM: number): number => {
  const ratio = (MOVED_WITHIN_M - INSIDE_M) / (MOVED_WITHIN_M - lowestM);
  return Math.round(100 * (INSIDE_M + (xM - lowestM) * ratio)) / 100;
};

const FAR_LINES: readonly string[] = ['goalLineMinusX', 'blueLineMinusX', 'centreLine'];

const withoutFarGoalie = (spots: Drill['spots']): Drill['spots'] =>
  Object.fromEntries(
    Object.entries(spots).filter(([, spot]) => spot.kind !== 'goalie' || spot.atM.xM > 0),
  ) as Record<SpotId, DrillSpot>;

const actsOf = (drill: Drill) => Object.values(drill.spots).flatMap(spot => Object.values(spot.acts));

const placesOf = (drill: Drill): readonly IcePoint[] => [
  ...Object.values(drill.spots).flatMap(spot =>
    spot.kind === 'goalie'
      ? []
      : [spot.atM, ...Object.values(spot.acts).flatMap(act => ('throughM' in act ? act.throughM : []))],
  ),
  ...Object.values(drill.pucks).map(puck => puck.atM),
  ...Object.values(drill.gear).map(gear => gear.atM),
  ...Object.values(drill.games ?? {}).flatMap(game => [game.fromM, game.toM]),
];
