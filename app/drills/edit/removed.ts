import type { Drill, DrillAct } from '@icewright/book';
import type { ActId, SpotId } from '@icewright/engine';
import type { Write } from '../write.ts';
import { needsOf } from './names-mended.ts';
import { type Selection, spotsPicked } from './selection.ts';

/** The selection goes, and with it whatever others were to do because of it: nothing is left that names what is not there. */
export const removed = (drill: Drill, selection: Selection): Write[] => {
  const gone = spotsPicked(selection);
  const gear = new Set(selection.flatMap(one => (one.kind === 'gear' ? [one.gear] : [])));
  const games = new Set<string>(selection.flatMap(one => (one.kind === 'game' ? [one.game] : [])));
  return [
    ...selection.map(one => ({ path: pathOf(one), value: undefined })),
    ...(gone.size === 0
      ? []
      : [...pucksLeft(drill, gone, selection), ...actsLeft(drill, gone), ...linesLeft(drill, gone)]),
    ...Object.entries(drill.games)
      .filter(([id, game]) => !games.has(id) && game.nets.some(net => gear.has(net)))
      .map(([id, game]) => ({ path: ['games', id, 'nets'], value: game.nets.filter(net => !gear.has(net)) })),
  ];
};

const pathOf = (one: Selection[number]): readonly string[] => {
  switch (one.kind) {
    case 'spot':
      return ['spots', one.spot];
    case 'act':
      return ['spots', one.spot, 'acts', one.act];
    case 'puck':
      return ['pucks', one.puck];
    case 'gear':
      return ['gear', one.gear];
    case 'game':
      return ['games', one.game];
  }
};

/** A puck stays where it lay on the stick, unless it was taken too. */
const pucksLeft = (drill: Drill, gone: ReadonlySet<SpotId>, selection: Selection): Write[] =>
  Object.entries(drill.pucks)
    .filter(
      ([id, { ownerSpot }]) =>
        ownerSpot !== undefined &&
        gone.has(ownerSpot) &&
        !selection.some(one => one.kind === 'puck' && one.puck === id),
    )
    .map(([id]) => ({ path: ['pucks', id, 'ownerSpot'], value: undefined }));

const actsLeft = (drill: Drill, gone: ReadonlySet<SpotId>): Write[] =>
  (Object.entries(drill.spots) as [SpotId, Drill['spots'][SpotId]][])
    .filter(([id]) => !gone.has(id))
    .flatMap(([id, spot]) =>
      (Object.entries(spot.acts) as [ActId, DrillAct][]).flatMap(([actId, act]) => {
        const path = ['spots', id, 'acts', actId];
        if (needsOf(act).some(each => gone.has(each))) return [{ path, value: undefined }];
        const waits = act.cue !== undefined && 'spot' in act.cue && gone.has(act.cue.spot);
        return waits ? [{ path: [...path, 'cue'], value: undefined }] : [];
      }),
    );

/** Who went to the line of somebody who is gone goes back to the own one. */
const linesLeft = (drill: Drill, gone: ReadonlySet<SpotId>): Write[] =>
  (Object.entries(drill.flow?.goesTo ?? {}) as [SpotId, SpotId][])
    .filter(([from, to]) => gone.has(from) || gone.has(to))
    .map(([from]) => ({ path: ['flow', 'goesTo', from], value: undefined }));
