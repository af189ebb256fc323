import { emptyDrill, type Game, newId, type Team } from '@icewright/book';
import { drillPlanFromFreeze, type Id } from '@icewright/engine';
import { useLocation } from 'wouter';
import { Act } from '../parts/act.tsx';
import { createDocument } from '../shell/book.ts';
import { drillSceneOf } from './drill-scene.ts';
import { clockText } from './film-clock.ts';
import { sheetOfGame } from './fit-of-freeze.ts';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { gameTitle } from './game-words.ts';

/** The freeze's skaters on the drill board, with the way back to this picture. */
export function MakeDrill({
  gameId,
  game,
  desk,
  view,
  team,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
}) {
  const [, go] = useLocation();
  const { freeze, ice } = view;
  const habit = freeze.habit && team.habits[freeze.habit];
  const notNow =
    ice === undefined
      ? 'the pins must hold the picture first'
      : ice.scene.skaters.length === 0
        ? 'place the skaters first'
        : undefined;
  const make = () => {
    if (!ice) return;
    const plan = drillPlanFromFreeze(drillSceneOf(freeze, ice), { attacks: freeze.attacks, newId });
    const said = `${gameTitle(game)}, ${clockText(freeze.filmTimeS, 1)}`;
    const start = emptyDrill({
      title: freeze.title || (habit ? habit.title : `From ${said}`),
      level: team.level,
      rink: sheetOfGame(game, team),
      madeAt: new Date().toISOString(),
      from: { kind: 'freeze', game: gameId as Id<'document'>, freeze: desk.freezeId as Id<'freeze'>, said },
    });
    const id = createDocument('drill', {
      ...start,
      ...(habit ? { says: habit.says, habits: [freeze.habit as Id<'habit'>] } : {}),
      ...(structuredClone(plan) as Pick<typeof start, 'spots' | 'pucks' | 'gear'>),
    });
    go(`/drills/${id}`);
  };
  return (
    <Act lead notNow={notNow} onPress={make}>
      Make a drill of this freeze
    </Act>
  );
}
