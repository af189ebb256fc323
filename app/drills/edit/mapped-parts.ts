import type { Drill, DrillAct, DrillSpot } from '@icewright/book';
import { attackedEndOf, type Cue, lineAtOtherEnd, otherEnd } from '@icewright/engine';
import type { PlaceMap } from './place-map.ts';

/** Parts of a drill as they are when laid elsewhere. Everything that names a place, a way, an end or a line goes along. */

export const mappedAct = (act: DrillAct, map: PlaceMap): DrillAct => {
  const laid = mappedDeed(act, map);
  return laid.cue === undefined ? laid : { ...laid, cue: mappedCue(laid.cue, map) };
};

export const mappedCue = (cue: Cue, map: PlaceMap): Cue => {
  if (cue.on === 'reaches') return { ...cue, atM: map.point(cue.atM) };
  if ('line' in cue && map.swapsEnds) return { ...cue, line: lineAtOtherEnd(cue.line) };
  return cue;
};

/**
 * The spot with all its acts. Where the ends change places ours stay ours and play towards the other end, so that a gap or a stick in the
 * lane to the own net stays the same play. `isOfNet`: a goalie who is laid elsewhere without skaters belongs to the net, not to a team.
 */
export const mappedSpot = (spot: DrillSpot, map: PlaceMap, isOfNet: boolean): DrillSpot => ({
  ...(map.swapsEnds ? turnedSpot(spot, isOfNet) : spot),
  atM: map.point(spot.atM),
  facingRad: map.angle(spot.facingRad),
  acts: Object.fromEntries(
    Object.entries(spot.acts).map(([id, act]) => [id, mappedAct(act, map)]),
  ) as DrillSpot['acts'],
});

export const mappedGear = (gear: Drill['gear'][never], map: PlaceMap): Drill['gear'][never] => ({
  ...gear,
  atM: map.point(gear.atM),
  facingRad: map.angle(gear.facingRad),
});

export const mappedGame = (game: Drill['games'][never], map: PlaceMap): Drill['games'][never] => ({
  ...game,
  fromM: map.point(game.fromM),
  toM: map.point(game.toM),
});

/** Whether goalies alone are laid elsewhere. */
export const areGoalies = (spots: readonly DrillSpot[]): boolean =>
  spots.length > 0 && spots.every(({ kind }) => kind === 'goalie');

const turnedSpot = (spot: DrillSpot, isOfNet: boolean): DrillSpot => {
  const { attacks: _before, ...turned } = { ...spot, side: isOfNet ? otherSide(spot.side) : spot.side };
  const end = otherEnd(attackedEndOf(spot));
  return attackedEndOf(turned) === end ? turned : { ...turned, attacks: end };
};

const mappedDeed = (act: DrillAct, map: PlaceMap): DrillAct => {
  if (act.kind === 'skate' || act.kind === 'carry') return { ...act, throughM: act.throughM.map(map.point) };
  if (act.kind === 'shoot' && map.swapsEnds) return { ...act, atEnd: otherEnd(act.atEnd) };
  if (act.kind === 'turn' && map.mirrors) return { ...act, angleRad: 0 - act.angleRad };
  return act;
};

const otherSide = (side: DrillSpot['side']): DrillSpot['side'] => (side === 'us' ? 'them' : 'us');
