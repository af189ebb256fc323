import type { Drill } from '@icewright/book';
import type { IcePoint, Id, SpotId } from '@icewright/engine';
import { spotMoved } from '../route-writes.ts';
import type { Write } from '../write.ts';
import { areGoalies, mappedAct, mappedGame, mappedGear, mappedSpot } from './mapped-parts.ts';
import { HALF_TURN, MIRROR_ACROSS, MIRROR_ALONG, movedBy, type PlaceMap } from './place-map.ts';
import { type Selection, spotsPicked } from './selection.ts';

/** The selection moved by so much. One spot alone leaves its routes where they are; several things keep their shape. */
export const moved = (drill: Drill, selection: Selection, byM: IcePoint): Write[] => {
  const [only] = selection;
  if (selection.length === 1 && only?.kind === 'spot') {
    const spot = drill.spots[only.spot];
    return spot === undefined ? [] : spotMoved(drill, only.spot, movedBy(byM).point(spot.atM));
  }
  return laidElsewhere(drill, selection, movedBy(byM));
};

/** Over the long axis (`along`) or over the red line (`across`). */
export const mirrored = (drill: Drill, selection: Selection, over: 'along' | 'across'): Write[] =>
  laidElsewhere(drill, selection, over === 'along' ? MIRROR_ALONG : MIRROR_ACROSS);

export const halfTurned = (drill: Drill, selection: Selection): Write[] =>
  laidElsewhere(drill, selection, HALF_TURN);

/**
 * The selection laid elsewhere, as the smallest writes, so that what somebody else changes in the same parts at the same
 * time is kept too. Pucks on a stick and the nets of a game come along.
 */
export const laidElsewhere = (drill: Drill, selection: Selection, map: PlaceMap): Write[] => {
  const spots = spotsPicked(selection);
  const areOfNet = areGoalies([...spots].flatMap(id => drill.spots[id] ?? []));
  return [
    ...[...spots].flatMap(id => spotWrites(drill, id, map, areOfNet)),
    ...selection.flatMap(one =>
      one.kind === 'act' && !spots.has(one.spot) ? actWrites(drill, one, map) : [],
    ),
    ...[...pucksAlong(drill, selection)].flatMap(id =>
      partWrites(['pucks', id], drill.pucks[id], puck => ({ ...puck, atM: map.point(puck.atM) })),
    ),
    ...[...gearAlong(drill, selection)].flatMap(id =>
      partWrites(['gear', id], drill.gear[id], gear => mappedGear(gear, map)),
    ),
    ...selection.flatMap(one =>
      one.kind === 'game'
        ? partWrites(['games', one.game], drill.games[one.game], game => mappedGame(game, map))
        : [],
    ),
  ];
};

/** The pucks that are picked, and those on the sticks of who is. */
export const pucksAlong = (drill: Drill, selection: Selection): ReadonlySet<Id<'puck'>> => {
  const spots = spotsPicked(selection);
  const owned = (Object.keys(drill.pucks) as Id<'puck'>[]).filter(id => {
    const owner = drill.pucks[id]?.ownerSpot;
    return owner !== undefined && spots.has(owner);
  });
  return new Set([...selection.flatMap(one => (one.kind === 'puck' ? [one.puck] : [])), ...owned]);
};

/** The gear that is picked, and the nets of the games that are. */
export const gearAlong = (drill: Drill, selection: Selection): ReadonlySet<Id<'gear'>> =>
  new Set(
    selection.flatMap(one => {
      if (one.kind === 'gear') return [one.gear];
      return one.kind === 'game' ? (drill.games[one.game]?.nets ?? []) : [];
    }),
  );

const spotWrites = (drill: Drill, id: SpotId, map: PlaceMap, isOfNet: boolean): Write[] => {
  const spot = drill.spots[id];
  if (spot === undefined) return [];
  const { acts, ...laid } = mappedSpot(spot, map, isOfNet);
  return [
    ...changesOf(['spots', id], spot, { attacks: undefined, ...laid, acts: spot.acts }),
    ...Object.entries(acts).flatMap(([actId, act]) =>
      changesOf(['spots', id, 'acts', actId], spot.acts[actId as never], act),
    ),
  ];
};

const actWrites = (drill: Drill, one: Extract<Selection[number], { kind: 'act' }>, map: PlaceMap): Write[] =>
  partWrites(['spots', one.spot, 'acts', one.act], drill.spots[one.spot]?.acts[one.act], act =>
    mappedAct(act, map),
  );

const partWrites = <Part extends object>(
  path: readonly string[],
  part: Part | undefined,
  lay: (part: Part) => Part,
): Write[] => (part === undefined ? [] : changesOf(path, part, lay(part)));

/** A write for every field that is another value than before. */
const changesOf = (path: readonly string[], before: object | undefined, after: object): Write[] =>
  Object.entries(after)
    .filter(
      ([key, value]) => JSON.stringify(value) !== JSON.stringify((before as Record<string, unknown>)[key]),
    )
    .map(([key, value]) => ({ path: [...path, key], value }));
