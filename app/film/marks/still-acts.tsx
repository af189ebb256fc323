import type { Game } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { saveFile } from '../../parts/save-file.ts';
import { knownFeet } from '../bodies/known-feet.ts';
import { timeOfFrame } from '../frame-index.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import type { FilmTie } from './film-tie.ts';
import { type MarksTeam, marksAt } from './marks-at.ts';

/** The shown picture with its marks as a PNG of the film's own size. */
export function StillActs({
  game,
  film,
  player,
  tie,
  team,
  title,
}: {
  readonly game: Game;
  readonly film: string;
  readonly player: Player;
  readonly tie: FilmTie;
  readonly team: MarksTeam;
  readonly title: string;
}) {
  const isShown = usePlayerPart(player, state => !state.playing && state.shownFrame === state.frameIndex);
  const [withTitle, setWithTitle] = useState(false);
  const keep = async () => {
    const { frameIndex } = player.now();
    const filmTimeS = timeOfFrame(player.film.index, frameIndex);
    const fit = tie.fitAt(frameIndex);
    const picture = { film, frameIndex, filmTimeS };
    const marks = fit ? marksAt(game, picture, tie, fit, team) : [];
    const { stillOf } = await import('./still.ts');
    const blob = await stillOf(player.film, frameIndex, {
      marks,
      ...(fit ? { fit, standing: knownFeet(game, picture, fit) } : {}),
      ...(tie.rink ? { rink: tie.rink } : {}),
      ...(withTitle ? { title } : {}),
    });
    if (blob) saveFile(blob, `${title}.png`);
  };
  return (
    <>
      <Act notNow={isShown ? undefined : 'stop at a picture first'} onPress={() => void keep()}>
        Keep as a picture
      </Act>
      <label className="mark-titled q2">
        <input type="checkbox" checked={withTitle} onChange={event => setWithTitle(event.target.checked)} />{' '}
        with a title line
      </label>
    </>
  );
}
