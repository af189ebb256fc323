import { type FilmPart, type Game, inOrder } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { edit, endStep } from '../../shell/book.ts';
import { clockText } from '../film-clock.ts';
import { isLive } from '../live/live-part.ts';
import type { Player } from '../player.ts';
import { CameraFrame, useOtherFilm } from './camera-frame.tsx';
import { OtherPicture } from './other-picture.tsx';
import { maySamePlay } from './same-play.ts';
import { clockBetween, type EventFrame, eventFrameOf } from './tied-clock.ts';
import './other-cameras.css';

type FilmId = Id<'film'>;

/** An event that was shown in one film, while the same is looked for in another. */
export interface TieDraft {
  readonly film: FilmId;
  readonly event: EventFrame;
  readonly with: FilmId;
}

/** Several cameras of one game: tied by an event that both show, each shows what the other saw. */
export function OtherCameras({
  gameId,
  game,
  partId,
  player,
  draft,
  setDraft,
  onGo,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly partId: FilmId;
  readonly player: Player;
  readonly draft: TieDraft | undefined;
  readonly setDraft: (draft: TieDraft | undefined) => void;
  /** To a film of the game, and a frame of it. */
  readonly onGo: (film: FilmId, frameIndex?: number) => void;
}) {
  // What was marked live has no pictures: its clock is tied where its moments are.
  const others = inOrder(game.films).filter(([id, part]) => id !== partId && !isLive(part)) as [
    FilmId,
    FilmPart,
  ][];
  if (others.length === 0) return null;
  const here = () => eventFrameOf(player.film.index, player.now().frameIndex);
  if (draft && draft.with === partId) {
    const first = game.films[draft.film];
    return (
      <section className="sec other-cameras" aria-label="Tie two cameras">
        <h2>The same event</h2>
        <p className="w">
          It is at {clockText(draft.event.filmTimeS)} of {first?.label}, frame {draft.event.frameIndex}. Stop
          where this film shows the very same.
        </p>
        {first && <TiePicture part={first} frameIndex={draft.event.frameIndex} />}
        <p className="other-acts">
          <Act
            lead
            onPress={() => {
              endStep(gameId);
              edit(gameId).set(['films', partId, 'tied'], {
                to: draft.film,
                ours: here(),
                theirs: draft.event,
              });
              setDraft(undefined);
            }}
          >
            It is this frame
          </Act>
          <Act onPress={() => setDraft(undefined)}>Leave it</Act>
        </p>
      </section>
    );
  }
  return (
    <section className="sec other-cameras" aria-label="Other cameras">
      <h2>
        Other films <span className="q3">of this game</span>
      </h2>
      <ul>
        {others.map(([id, part]) => (
          <OtherCamera
            key={id}
            gameId={gameId}
            films={game.films}
            partId={partId}
            otherId={id}
            part={part}
            player={player}
            onGo={onGo}
            onTie={() => {
              player.pause();
              setDraft({ film: partId, event: here(), with: id });
              onGo(id);
            }}
          />
        ))}
      </ul>
    </section>
  );
}

/** What the other film shows at the event, to look for the same. */
function TiePicture({ part, frameIndex }: { readonly part: FilmPart; readonly frameIndex: number }) {
  const other = useOtherFilm(part);
  return (
    <figure className="tie-picture">
      <CameraFrame other={other} frameIndex={frameIndex} />
      <figcaption className="q3">
        {other.isGone
          ? `${part.fileName} is not at hand, so its picture cannot be shown.`
          : `${part.label}, frame ${frameIndex}`}
      </figcaption>
    </figure>
  );
}

/** Somebody says so of a film that was added as a part. */
const isCamera = (gameId: string, film: FilmId): void => {
  endStep(gameId);
  edit(gameId).set(['films', film, 'as'], 'camera');
};

function OtherCamera({
  gameId,
  films,
  partId,
  otherId,
  part,
  player,
  onGo,
  onTie,
}: {
  readonly gameId: string;
  readonly films: Game['films'];
  readonly partId: FilmId;
  readonly otherId: FilmId;
  readonly part: FilmPart;
  readonly player: Player;
  readonly onGo: (film: FilmId, frameIndex?: number) => void;
  readonly onTie: () => void;
}) {
  const [frame, setFrame] = useState<number>();
  const clock = clockBetween(films, partId, otherId);
  const here = films[partId];
  if (clock.kind === 'none' && here && !maySamePlay(here, part)) {
    return (
      <li>
        <span>{part.label}</span> <span className="q3">another part of this game</span>{' '}
        <Act bare onPress={() => isCamera(gameId, otherId)} label={`${part.label} shows the same play`}>
          It shows the same play
        </Act>
      </li>
    );
  }
  if (clock.kind === 'none') {
    return (
      <li>
        <span>{part.label}</span>{' '}
        <Act bare onPress={onTie} label={`Tie to ${part.label} by an event`}>
          Tie: this frame shows a whistle or a puck drop that is in both
        </Act>
      </li>
    );
  }
  // Only a tie between these two can be taken back here; one by way of a third film stands with that film.
  const tiedAt = films[otherId]?.tied?.to === partId ? otherId : partId;
  const isDirect = films[tiedAt]?.tied?.to === (tiedAt === partId ? otherId : partId);
  return (
    <li>
      <OtherPicture part={part} player={player} clock={clock} onFrame={setFrame} />
      <p className="other-acts">
        <span>{part.label}</span>
        {frame !== undefined && (
          <Act onPress={() => onGo(otherId, frame)} label={`Go on in ${part.label}`}>
            Go on there
          </Act>
        )}
        {isDirect && (
          <Act bare onPress={() => edit(gameId).remove(['films', tiedAt, 'tied'])}>
            Untie
          </Act>
        )}
      </p>
    </li>
  );
}
