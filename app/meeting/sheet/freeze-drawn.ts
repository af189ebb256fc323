import type { Freeze, Game, Team } from '@icewright/book';
import type { FreezeDrawn } from '@icewright/picture';
import { rinkOfSheet, sheetOfGame } from '../../film/fit-of-freeze.ts';
import { freezeViewOf } from '../../film/freeze-view.ts';

/** The freeze on the ice, for paper; undefined while its pins do not hold the picture or nobody is placed. */
export function freezeDrawnOf(
  freeze: Freeze,
  game: Game,
  team: Team,
  roleOf: (placed: Freeze['skaters'][never]) => string,
): FreezeDrawn | undefined {
  const view = freezeViewOf(freeze, rinkOfSheet(sheetOfGame(game, team)), team.lengths);
  if (view.ice === undefined) return undefined;
  const { skaters, puck } = view.ice.scene;
  const covOf = new Map(skaters.map(({ id, covM2 }) => [id, covM2]));
  const people = view.people.flatMap(({ id, placed, atM }) => {
    if (atM === undefined) return [];
    const covM2 = covOf.get(id);
    return [
      {
        side: placed.side,
        role: roleOf(placed as never),
        atM,
        ...(covM2 ? { covM2 } : {}),
        ...(placed.ghostM ? { wantedM: placed.ghostM } : {}),
      },
    ];
  });
  if (people.length === 0) return undefined;
  return { rink: view.rink, people, seenM: view.seenM, ...(puck ? { puckM: puck.atM } : {}) };
}
