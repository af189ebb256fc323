import { emptyDrill, type Game, newId, type Team } from '@icewright/book';
import { drillPlanFromWays, type Id } from '@icewright/engine';
import { useLocation } from 'wouter';
import { Act } from '../../parts/act.tsx';
import { createDocument } from '../../shell/book.ts';
import { clockText } from '../film-clock.ts';
import { sheetOfGame } from '../fit-of-freeze.ts';
import { gameTitle } from '../game-words.ts';
import type { DrawnTrack } from './track-layer.tsx';

/** Keeps the ways of the followed skaters as a drill, at the speeds of the film, and goes to it. */
export function DrillOfStretch({
  gameId,
  game,
  team,
  tracks,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly tracks: readonly DrawnTrack[];
}) {
  const [, go] = useLocation();
  const told = tracks.filter(({ looks }) => looks.length > 1);
  const make = () => {
    const { attacks } = told[0]!.track;
    const plan = drillPlanFromWays(
      told.map(({ track: { side, kind, role }, looks }) => ({ side, kind, role, looks })),
      { attacks, level: team.level, newId },
    );
    const fromS = Math.min(...told.map(({ looks }) => looks[0]!.timeS));
    const toS = Math.max(...told.map(({ looks }) => looks[looks.length - 1]!.timeS));
    const said = `${gameTitle(game)}, ${clockText(fromS, 1)} to ${clockText(toS, 1)}`;
    const start = emptyDrill({
      title: `From ${said}`,
      level: team.level,
      rink: sheetOfGame(game, team),
      madeAt: new Date().toISOString(),
      ...fromFreeze(gameId, game, told, said),
    });
    const id = createDocument('drill', {
      ...start,
      ...(structuredClone(plan) as Pick<typeof start, 'spots' | 'pucks' | 'gear'>),
    });
    go(`/drills/${id}`);
  };
  return (
    <>
      <Act notNow={told.length === 0 ? 'nobody has been followed yet' : undefined} onPress={make}>
        Make a drill of this stretch
      </Act>
      <span className="q3">their ways at the speeds of the film, from standing, without a puck</span>
    </>
  );
}

/** The freeze in which the first of them was placed is the way back. */
const fromFreeze = (gameId: string, game: Game, told: readonly DrawnTrack[], said: string) => {
  const hands = new Set(told.flatMap(({ track }) => Object.values(track.hands).map(hand => hand.frameIndex)));
  const film = told[0]!.track.film;
  const freeze = Object.entries(game.freezes).find(
    ([, one]) => one.film === film && hands.has(one.frameIndex),
  )?.[0];
  return freeze
    ? {
        from: {
          kind: 'freeze' as const,
          game: gameId as Id<'document'>,
          freeze: freeze as Id<'freeze'>,
          said,
        },
      }
    : {};
};
