import type { FilmPart, Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useEffect, useState } from 'react';
import { useSearch } from 'wouter';
import { Act, ActLink } from '../parts/act.tsx';
import { Empty, Failure } from '../parts/empty.tsx';
import { daySaid } from '../parts/figures.ts';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { useDocument, useTeam } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import { UndoActs } from '../shell/undo-acts.tsx';
import { addPart } from './add-part.ts';
import { OtherCameras, type TieDraft } from './cameras/other-cameras.tsx';
import { DropZone } from './drop-zone.tsx';
import {
  type FilmFile,
  pickFilm,
  type RefusedFilm,
  type TakenFilm,
  takeFilm,
  takeFolderFilm,
  type UnreadFilm,
} from './film-door.ts';
import { filmInHand } from './film-hand.ts';
import { FilmMissing } from './film-missing.tsx';
import { FilmParts } from './film-parts.tsx';
import { FilmRoom } from './film-room.tsx';
import { GameFields } from './game-head.tsx';
import { gameTitle, resultWords } from './game-words.ts';
import { useLeaveEmpty } from './leave-empty.ts';
import { GameOver } from './live/game-over.tsx';
import { isOver } from './live/live-breaks.ts';
import { isLive, partAtFirst, startLive } from './live/live-part.ts';
import { LiveRoom } from './live/live-room.tsx';
import { MomentsAlone } from './moments/moments-alone.tsx';
import { Refused } from './refused.tsx';
import { useFilm } from './use-film.ts';
import { usePlayer } from './use-player.ts';

/** One game: its film, moments and freezes. `?freeze=` and `?moment=` open what a link from elsewhere speaks of. */
export function GameRoom({ gameId }: { readonly gameId: string }) {
  const view = useDocument('game', gameId);
  const { value: team } = useTeam();
  if (view.state === 'ready' && team) return <OpenGame gameId={gameId} game={view.value} team={team} />;
  if (view.state === 'loading' || !team) return <p className="vh">Opening the game</p>;
  return (
    <>
      <RunningHead back={{ to: '/film', said: 'Film' }} title="A game" titleWords="A game" />
      <Failure
        where="Game"
        what={
          view.state === 'missing' ? 'This game is not on this machine.' : 'This game cannot be read here.'
        }
        lost="Nothing was changed."
      >
        <ActLink to="/film">To all games</ActLink>
      </Failure>
    </>
  );
}

function OpenGame({
  gameId,
  game,
  team,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: NonNullable<ReturnType<typeof useTeam>['value']>;
}) {
  const asked = new URLSearchParams(useSearch());
  const [chosenPart, setPart] = useState<Id<'film'>>();
  const [refusal, setRefusal] = useState<RefusedFilm>();
  const [busy, setBusy] = useState(false);
  // On a phone the film would begin below its fields.
  const isNarrow = useIsNarrow(701);
  const [naming, setNaming] = useState(() => asked.has('new') && !(isNarrow && hasFilm(game)));
  const partId = [chosenPart, partAsked(game, asked), partAtFirst(game.films)].find(
    id => id && game.films[id],
  );
  // The address follows what is open in the room: a freeze that closes in it must not open another film.
  useEffect(() => {
    setPart(before => before ?? partId);
  }, [partId]);
  const part = partId && game.films[partId];
  const live = part !== undefined && isLive(part);
  const LivePart = part && isOver(part) ? GameOver : LiveRoom;
  const { state, again } = useFilm(live ? undefined : part);
  const player = usePlayer(state.kind === 'open' ? state.film : undefined);
  useLeaveEmpty(gameId, game, asked.has('new'));
  const [tie, setTie] = useState<TieDraft>();
  const [goal, setGoal] = useState<{ readonly film: Id<'film'>; readonly frameIndex: number }>();
  // The frame is gone to once the other film is open.
  // biome-ignore lint/correctness/useExhaustiveDependencies: with every new player, once
  useEffect(() => {
    if (!player || !goal || goal.film !== partId) return;
    void player.jump(goal.frameIndex);
    setGoal(undefined);
  }, [player]);
  const go = (film: Id<'film'>, frameIndex?: number) => {
    setGoal(frameIndex === undefined ? undefined : { film, frameIndex });
    setPart(film);
  };
  const add = async (chosen: Promise<FilmFile | undefined>, as?: 'part' | 'camera') => {
    setRefusal(undefined);
    const film = await chosen;
    if (film) await take(takeFilm(film), as);
  };
  const take = async (taking: Promise<TakenFilm>, as?: 'part' | 'camera') => {
    setRefusal(undefined);
    setBusy(true);
    const taken = await taking;
    setBusy(false);
    if (taken.kind === 'refused') return setRefusal(taken);
    setPart(addPart(gameId, taken.part, game.films, as));
    if (taken.part.hash === part?.hash) again();
  };
  const parts = partId && (
    <FilmParts
      gameId={gameId}
      game={game}
      partId={partId}
      lies={state.kind === 'open' ? state.lies : undefined}
      busy={busy}
      onPart={setPart}
      onAdd={as => void add(pickFilm(), as)}
    />
  );
  const head = (acts?: React.ReactNode) => (
    <RunningHead
      back={{ to: '/film', said: 'Film' }}
      title={gameTitle(game)}
      titleWords={gameTitle(game)}
      meta={<Meta game={game} naming={naming} onNaming={() => setNaming(!naming)} />}
      acts={
        <>
          <UndoActs />
          {acts}
        </>
      }
    />
  );
  const above = (
    <>
      {naming && <GameFields gameId={gameId} game={game} team={team} asksWhom={asked.has('new') && !part} />}
      {refusal && (
        <Refused
          refusal={refusal}
          film={refusal.film}
          onMade={made => void take(takeFolderFilm(made))}
          onLeave={() => setRefusal(undefined)}
        />
      )}
    </>
  );
  return (
    <DropZone onFilm={film => void add(film)}>
      {part && partId && live ? (
        <LivePart
          key={partId}
          gameId={gameId}
          game={game}
          team={team}
          partId={partId}
          part={part}
          head={head}
          above={above}
          openFilm={
            <>
              <Act working={busy} onPress={() => void add(pickFilm())}>
                Open a film
              </Act>
              {Object.keys(game.films).length > 1 && parts}
            </>
          }
        />
      ) : part && partId && player ? (
        <FilmRoom
          key={partId}
          gameId={gameId}
          game={game}
          team={team}
          partId={partId}
          player={player}
          head={head}
          above={above}
          parts={parts}
          cameras={
            <OtherCameras
              gameId={gameId}
              game={game}
              partId={partId}
              player={player}
              draft={tie}
              setDraft={setTie}
              onGo={go}
            />
          }
          asked={{ freeze: asked.get('freeze') ?? undefined, moment: asked.get('moment') ?? undefined }}
        />
      ) : (
        <>
          {head()}
          <div className="place">
            {above}
            {!part && (
              <Empty says="This game has no film yet.">
                <Act lead working={busy} onPress={() => void add(pickFilm())}>
                  Open a film
                </Act>{' '}
                <Act onPress={() => setPart(startLive(gameId, game.films))}>Mark live, film later</Act>
              </Empty>
            )}
            {part && (state.kind === 'looking' || state.kind === 'open') && (
              <p className="film-state w" role="status">
                Looking through {part.fileName}
              </p>
            )}
            {part && state.kind === 'missing' && (
              <FilmMissing part={part} onFound={again} onOther={film => void add(Promise.resolve(film))} />
            )}
            {part && state.kind === 'refused' && (
              <Refused
                refusal={state}
                film={unreadOf(part)}
                onMade={made => void take(takeFolderFilm(made))}
              />
            )}
            {part && (state.kind === 'missing' || state.kind === 'refused') && parts}
          </div>
          {partId && (state.kind === 'missing' || state.kind === 'refused') && (
            <MomentsAlone key={partId} gameId={gameId} game={game} team={team} partId={partId} />
          )}
        </>
      )}
    </DropZone>
  );
}

function Meta({
  game,
  naming,
  onNaming,
}: {
  readonly game: Game;
  readonly naming: boolean;
  readonly onNaming: () => void;
}) {
  const moments = Object.keys(game.moments).length;
  const freezes = Object.keys(game.freezes).length;
  return (
    <>
      {[daySaid(game.day), resultWords(game)].filter(Boolean).join(', ')}. <b>{moments}</b>{' '}
      {moments === 1 ? 'moment' : 'moments'}, {freezes} {freezes === 1 ? 'freeze' : 'freezes'}{' '}
      <button type="button" className="quiet" aria-expanded={naming} onClick={onNaming}>
        {naming ? 'close the fields' : 'change'}
      </button>
    </>
  );
}

const hasFilm = (game: Game): boolean => Object.values(game.films).some(one => !isLive(one));

const unreadOf = ({ hash, fileName }: FilmPart): UnreadFilm => {
  const file = filmInHand(hash);
  return file ? { file, fileName } : { hash, fileName };
};

const partAsked = (game: Game, asked: URLSearchParams): Id<'film'> | undefined => {
  const freeze = game.freezes[asked.get('freeze') as Id<'freeze'>];
  const moment = game.moments[asked.get('moment') as Id<'moment'>];
  return freeze?.film ?? moment?.film;
};
