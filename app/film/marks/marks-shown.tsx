import type { Game, Team } from '@icewright/book';
import type { FilmPoint, Id } from '@icewright/engine';
import type { FilmView } from '@icewright/picture';
import { useMemo } from 'react';
import { useDocument, useTeam } from '../../shell/book.ts';
import { knownFeet } from '../bodies/known-feet.ts';
import { UnderBodies } from '../bodies/under-bodies.tsx';
import { useBodies } from '../bodies/use-bodies.ts';
import { useStretches } from '../carry/use-stretches.ts';
import { timeOfFrame } from '../frame-index.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import type { FilmTie } from './film-tie.ts';
import { frameSeen } from './frame-seen.ts';
import { keptTieOf } from './kept-tie.ts';
import { marksAt, marksWords, type SeenMark } from './marks-at.ts';
import './marks.css';

interface ShownOf {
  readonly gameId: string;
  readonly filmId: string;
  readonly player: Player;
  readonly filmPerScreen: number;
}

/** The marks of a film over its picture, wherever it is shown; nothing to work on. */
export function MarksShown(props: ShownOf) {
  const view = useDocument('game', props.gameId);
  const { value: team } = useTeam();
  if (view.state !== 'ready' || !team || Object.keys(view.value.marks).length === 0) return null;
  return <MarksOfGame {...props} game={view.value} team={team} />;
}

function MarksOfGame({
  game,
  team,
  filmId,
  player,
  filmPerScreen,
}: ShownOf & { readonly game: Game; readonly team: Team }) {
  const { widthPx, heightPx, index } = player.film;
  const stretches = useStretches(game.films[filmId as Id<'film'>]?.hash ?? '', NOT_FOLLOWING);
  const tie = useMemo(() => keptTieOf(game, team, filmId, stretches), [game, team, filmId, stretches]);
  const frameIndex = usePlayerPart(player, frameSeen);
  const fit = frameIndex < 0 ? undefined : tie.fitAt(frameIndex);
  if (!fit) return null;
  const picture = { film: filmId, frameIndex, filmTimeS: timeOfFrame(index, frameIndex) };
  const marks = marksAt(game, picture, tie, fit, team);
  if (marks.length === 0) return null;
  const view = { fit, widthPx, heightPx, unitPx: unitOnScreen(widthPx, filmPerScreen) };
  const known = knownFeet(game, picture, fit);
  return <MarksOfPicture {...{ player, frameIndex, marks, view, tie, known }} />;
}

function MarksOfPicture({
  player,
  frameIndex,
  marks,
  view,
  tie,
  known,
}: {
  readonly player: Player;
  readonly frameIndex: number;
  readonly marks: readonly SeenMark[];
  readonly view: FilmView;
  readonly tie: FilmTie;
  readonly known: readonly FilmPoint[];
}) {
  const bodies = useBodies(player, frameIndex, marks, view, tie.rink, known);
  return (
    <svg
      className="marks-layer"
      viewBox={`0 0 ${view.widthPx} ${view.heightPx}`}
      preserveAspectRatio="none"
      data-frame={frameIndex}
      role="img"
      aria-label={marksWords(marks)}
    >
      <UnderBodies marks={marks} view={view} bodies={bodies} />
    </svg>
  );
}

const NOT_FOLLOWING = { kind: 'none' } as const;

/** On a narrow picture marks are smaller, or they would hide it; on a wall they are as large as the picture. */
const unitOnScreen = (widthPx: number, filmPerScreen: number): number => {
  const screenPx = widthPx / filmPerScreen;
  return filmPerScreen * Math.max(0.62, Math.min(1, screenPx / 640), screenPx / 1280);
};
