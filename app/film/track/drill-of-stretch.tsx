import { emptyDrill, type Game, newId, type Team } from '@icewright/book';
import { drillPlanFromWays, type Id, type Rink } from '@icewright/engine';
import { useLocation } from 'wouter';
import { Act } from '../../parts/act.tsx';
import { createDocument } from '../../shell/book.ts';
import { clockText } from '../film-clock.ts';
import { sheetOfGame } from '../fit-of-freeze.ts';
import { gameTitle } from '../game-words.ts';
import type { DrawnTrack } from './track-layer.tsx';
import { trackOfPlaced } from './track-of-placed.ts';

/** Keeps the ways of the followed skaters as a drill, at the speeds of the film, and goes to it. */
export function DrillOfStretch({
  gameId,
  game,
  team,
  rink,
  tracks,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly rink: Rink;
  readonly tracks: readonly DrawnTrack[];
}) {
  const [, go] = useLocation();
  const told = tracks.filter(({ looks }) => looks.length > 1);
  const puck = puckIn(game, told);
  const make = () => {
    const { attacks } = told[0]!.track;
    const plan = drillPlanFromWays(
      told.map(({ id, track: { side, kind, role }, looks }) => ({
        ...{ side, kind, role, looks },
        hasPuck: id === puck?.track.id,
      })),
      { attacks, level: team.level, boards: rink.boards, newId },
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
      <span className="q3">
        their ways at the speeds of the film, after a run-up;{' '}
        {puck
          ? `${puck.track.name} with the puck, as in the freeze of ${clockText(puck.atS, 1)}`
          : 'without a puck: no freeze in it says which of them has it'}
      </span>
    </>
  );
}

/** Who has the puck, as far as a freeze within the stretch says: the first one of them. */
const puckIn = (game: Game, told: readonly DrawnTrack[]) =>
  Object.values(game.freezes)
    .sort((a, b) => a.filmTimeS - b.filmTimeS)
    .flatMap(freeze => {
      const carrier = freeze.puck?.carrier && freeze.skaters[freeze.puck.carrier];
      const followed = carrier && trackOfPlaced(game.tracks, freeze, carrier);
      const track = followed && told.find(({ id }) => id === followed.track);
      return track ? [{ track, atS: freeze.filmTimeS }] : [];
    })[0];

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
