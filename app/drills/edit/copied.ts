import type { Drill, DrillAct, DrillPart } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import { gearAlong, pucksAlong } from './laid-elsewhere.ts';
import { needsOf } from './names-mended.ts';
import { type Selection, spotsPicked } from './selection.ts';

/** The selection as a part that can be put into this drill again or into another. Pucks on a stick and nets of a game come along. */
export const copied = (drill: Drill, selection: Selection): Omit<DrillPart, 'icewright' | 'schema'> => {
  const picked = spotsPicked(selection);
  const spots = only(drill.spots, picked);
  const acts = selection.flatMap(one => {
    const act =
      one.kind === 'act' && !picked.has(one.spot) ? drill.spots[one.spot]?.acts[one.act] : undefined;
    return act === undefined ? [] : [act];
  });
  const pucks = Object.entries(only(drill.pucks, pucksAlong(drill, selection))).map(([id, puck]) => {
    const { ownerSpot, ...lying } = puck;
    // Two pucks cannot lie on one stick: a puck that is copied without its owner lies on the ice.
    return [id, ownerSpot !== undefined && picked.has(ownerSpot) ? puck : lying] as const;
  });
  const games = new Set(selection.flatMap(one => (one.kind === 'game' ? [one.game] : [])));
  return {
    spots,
    pucks: Object.fromEntries(pucks) as Drill['pucks'],
    gear: only(drill.gear, gearAlong(drill, selection)),
    games: only(drill.games, games),
    acts,
    outside: outsideOf(
      drill,
      [...Object.values(spots).flatMap(spot => Object.values(spot.acts)), ...acts],
      picked,
    ),
  };
};

const outsideOf = (
  drill: Drill,
  acts: readonly DrillAct[],
  picked: ReadonlySet<SpotId>,
): Record<SpotId, string> => {
  const named = acts.flatMap(act => [
    ...needsOf(act),
    ...(act.cue !== undefined && 'spot' in act.cue ? [act.cue.spot] : []),
  ]);
  return Object.fromEntries(
    named.flatMap(spot => {
      const role = picked.has(spot) ? undefined : drill.spots[spot]?.role;
      return role === undefined ? [] : [[spot, role]];
    }),
  ) as Record<SpotId, string>;
};

const only = <Key extends string, Part>(
  list: Readonly<Record<Key, Part>>,
  keys: ReadonlySet<Key>,
): Record<Key, Part> =>
  Object.fromEntries(Object.entries(list).filter(([key]) => keys.has(key as Key))) as Record<Key, Part>;
