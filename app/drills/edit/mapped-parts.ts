import type { Drill, DrillAct, DrillSpot } from '@icewright/book';
import { type Cue, otherEnd } from '@icewright/engine';
import { lineAtOtherEnd, type PlaceMap } from './place-map.ts';

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

/** The spot with all its acts. `swapsSides` when those who defend one net now defend the other. */
export const mappedSpot = (spot: DrillSpot, map: PlaceMap, swapsSides: boolean): DrillSpot => ({
  ...spot,
  side: swapsSides || (map.swapsEnds && spot.kind === 'goalie') ? otherSide(spot.side) : spot.side,
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

/**
 * Who defends which net stands in the side alone, so where the ends change places, a gap or a stick in the lane to the own
 * net only stays the same play when the sides change too. A drill without them keeps its sides.
 */
export const mustSwapSides = (spots: readonly DrillSpot[], map: PlaceMap): boolean =>
  map.swapsEnds && spots.some(spot => Object.values(spot.acts).some(defendsNet));

const defendsNet = (act: DrillAct): boolean =>
  act.kind === 'gap' || (act.kind === 'screen' && act.to === undefined);

const mappedDeed = (act: DrillAct, map: PlaceMap): DrillAct => {
  if (act.kind === 'skate' || act.kind === 'carry') return { ...act, throughM: act.throughM.map(map.point) };
  if (act.kind === 'shoot' && map.swapsEnds) return { ...act, atEnd: otherEnd(act.atEnd) };
  if (act.kind === 'turn' && map.mirrors) return { ...act, angleRad: 0 - act.angleRad };
  return act;
};

const otherSide = (side: DrillSpot['side']): DrillSpot['side'] => (side === 'us' ? 'them' : 'us');
