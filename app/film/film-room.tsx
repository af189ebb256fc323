import type { Game, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { type CSSProperties, type ReactNode, useEffect, useMemo, useState } from 'react';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { useCarried } from './carry/use-carried.tsx';
import { KeptReady } from './copies/kept-ready.tsx';
import { useCopies } from './copies/use-copies.ts';
import { WholeReady } from './copies/whole-ready.tsx';
import { FilmBar } from './film-bar.tsx';
import { useFilmKeys } from './film-keys.ts';
import { FilmMargin } from './film-margin.tsx';
import { FreezeMargin } from './freeze-margin.tsx';
import { useHolds } from './holds/use-holds.ts';
import { LandmarkChoice } from './landmark-choice.tsx';
import { LiveTie } from './live/live-tie.tsx';
import { freezeHere } from './make-freeze.ts';
import { MarksPanel } from './marks/marks-panel.tsx';
import { useMarks } from './marks/use-marks.ts';
import type { ListedMoment, MomentFilter } from './moments/filter-moments.ts';
import { MarkMoment } from './moments/mark-moment.tsx';
import { momentsOf } from './moments/moments-of.ts';
import { MomentsPanel } from './moments/moments-panel.tsx';
import { OwnKeys } from './moments/own-keys.tsx';
import { usePlayMoments } from './moments/play-moments.ts';
import { SecondLook } from './moments/second-look.tsx';
import { useChosenMoment } from './moments/use-chosen-moment.ts';
import { useMarking } from './moments/use-marking.ts';
import type { Player } from './player.ts';
import { PulseStrip } from './pulse-strip.tsx';
import { ReelPanel } from './reel/reel-panel.tsx';
import { RoomActs } from './room-acts.tsx';
import { roomClass } from './room-class.ts';
import { RoomPicture } from './room-picture.tsx';
import { countsWords } from './room-words.ts';
import { useFollowed } from './track/use-followed.tsx';
import { useOpenFreeze } from './use-open-freeze.ts';
import { usePlayerPart } from './use-player.ts';
import { useHeight } from './use-width.ts';

/** The film room: picture, clock and pulse, moments; beside them the freeze that is open. */
export function FilmRoom({
  gameId,
  game,
  team,
  partId,
  player,
  head,
  above,
  parts,
  cameras,
  asked,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly partId: Id<'film'>;
  readonly player: Player;
  readonly head: (acts: ReactNode) => ReactNode;
  readonly above: ReactNode;
  readonly parts: ReactNode;
  /** What other films of the game show at this moment. */
  readonly cameras: ReactNode;
  readonly asked: { readonly freeze: string | undefined; readonly moment: string | undefined };
}) {
  const [freezeId, setFreezeId] = useState(asked.freeze);
  const [momentId, setMomentId] = useChosenMoment(game, freezeId, asked.moment);
  const [filter, setFilter] = useState<MomentFilter>({});
  /** Somebody judges the moments a second time: nothing of what was said of them is shown. */
  const [isBlind, setBlind] = useState(false);
  /** Where the chosen moment opens beside the picture, while no freeze lies there. */
  const [beside, setBeside] = useState<HTMLElement | null>(null);
  const { offer, pinsOffer, rink, freeze, desk, view, options, drawn, shown, setShown, frozenAt, isFrozen } =
    useOpenFreeze(gameId, game, team, partId, player, freezeId, isBlind);
  const carried = useCarried(player, game, partId, rink, team.lengths);
  const followed = useFollowed({ gameId, game, team, film: partId, player, rink, ...carried });
  const marks = useMarks({ gameId, game, film: partId, player, team, rink, carriedAt: carried.fitAt });
  useHolds(player, game.freezes, partId);
  const moments = useMemo(() => momentsOf(game, partId), [game, partId]);
  const copies = useCopies(
    player,
    game.films[partId]?.hash ?? '',
    useMemo(() => moments.map(([, one]) => one.frameIndex), [moments]),
  );
  const moment = momentId ? game.moments[momentId as Id<'moment'>] : undefined;

  // A link from elsewhere speaks of one frame.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the room opens
  useEffect(() => {
    const first = freeze ?? moment ?? moments[0]?.[1];
    if (first && (asked.freeze || asked.moment)) void player.jump(first.frameIndex);
  }, [player]);

  const chooseMoment = (id: string) => {
    setMomentId(id);
    marking.say('');
    const one = game.moments[id as Id<'moment'>];
    if (!one) return;
    void player.jump(one.frameIndex);
    setFreezeId(one.freeze);
  };
  const openFreeze = (id: string) => {
    setFreezeId(id);
    const one = game.freezes[id as Id<'freeze'>];
    if (one) void player.jump(one.frameIndex);
  };
  const freezeNow = () => {
    player.pause();
    setFreezeId(freezeHere(gameId, game, partId, player, momentId, carried.tieHere()));
  };
  const frozen =
    freeze && freezeId && freeze.film === partId
      ? { id: freezeId as Id<'freeze'>, frameIndex: freeze.frameIndex }
      : undefined;
  const marking = useMarking({
    gameId,
    game,
    team,
    partId,
    clock: {
      now: () => ({ frameIndex: player.now().frameIndex, timeS: player.timeS }),
      within: one => ({ ...one, toS: Math.min(one.toS, player.film.durationS) }),
    },
    frozen,
    rests: isBlind,
    keysRest: marks.desk.isOpen,
    onMarked: setMomentId,
  });
  const playing = usePlayMoments(player, id => {
    setMomentId(id);
    marking.say('');
  });
  const playChosen = () => moment && momentId && playing.play([[momentId as Id<'moment'>, moment]]);
  const knownToS = usePlayerPart(player, state => state.knownToS ?? -1);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a long film's index grows while it is looked through
  const film = useMemo(
    () => ({ film: partId, index: player.film.index, knownToS: player.now().knownToS }),
    [partId, player, knownToS],
  );
  const show = (frameIndex: number) => void player.jump(frameIndex);
  const neighbour = (direction: 1 | -1) => {
    const at = player.now().frameIndex;
    const list = direction > 0 ? moments : [...moments].reverse();
    const next = list.find(([, one]) => (one.frameIndex - at) * direction > 0);
    if (next) chooseMoment(next[0]);
  };
  useFilmKeys({
    player,
    beginMark: () => marking.begin(),
    freezeNow,
    neighbour,
    marks: () => !isBlind && marks.toggle(),
    playChosen,
  });

  const isNarrow = useIsNarrow(1100);
  const [stands, setStands] = useState<HTMLElement | null>(null);
  const highPx = useHeight(stands);
  const habit = moment?.habit ?? freeze?.habit;
  return (
    <>
      {head(
        <RoomActs
          {...{ gameId, game, team, desk, view, isNarrow, marks, isBlind }}
          mark={marking}
          freezeNow={freezeNow}
        />,
      )}
      <div className="film-above">{above}</div>
      <main
        className={roomClass(desk !== undefined, player.film)}
        style={highPx > 0 ? ({ '--picture-high': `${highPx}px` } as CSSProperties) : undefined}
      >
        <div className="film-stands" ref={setStands}>
          <RoomPicture
            {...{
              player,
              game,
              marks,
              isBlind,
              desk,
              view,
              isFrozen,
              shown,
              offer,
              pinsOffer,
              drawn,
              followed,
            }}
          />
        </div>
        <div className="film-left">
          {isNarrow && isFrozen && desk && view && desk.tool.kind === 'pin' && (
            <div className="pins-near">
              <LandmarkChoice desk={desk} view={view} />
            </div>
          )}
          <FilmBar player={player} counts={isBlind ? '' : countsWords(team, moments, habit)} />
          {followed.charts}
          {marks.desk.isOpen && (
            <MarksPanel {...marks} gameId={gameId} title={marks.title} onFreeze={freezeNow} />
          )}
          {marking.draft && (
            <MarkMoment
              draft={marking.draft}
              team={team}
              habitAtFirst={habit}
              onMark={marking.mark}
              onLeave={marking.leave}
            />
          )}
          {(marking.said || playing.said) !== '' && (
            <p className="q2 marked-said" role="status">
              {marking.said || playing.said}
            </p>
          )}
          <PulseStrip
            player={player}
            moments={isBlind ? NONE : moments}
            team={team}
            habit={habit}
            chosen={momentId}
          />
          {isBlind && (
            <SecondLook
              gameId={gameId}
              moments={moments}
              team={team}
              opinions={game.opinions}
              onShow={show}
              onLeave={() => setBlind(false)}
            />
          )}
        </div>
        <aside className="film-right" aria-label={desk ? 'The freeze' : 'Beside the film'}>
          {desk && view ? (
            <FreezeMargin
              {...{ gameId, game, team, desk, view, shown, setShown }}
              {...{ options, drawn, isFrozen, followed, offer, pinsOffer, isBlind }}
              isNamedAtPicture={isNarrow && isFrozen}
              carriedHere={isFrozen ? undefined : carried.here(freezeNow)}
              others={
                view.fit && !view.isCarried && frozenAt !== undefined ? carried.others(frozenAt) : undefined
              }
              onBack={() => openFreeze(desk.freezeId)}
              onLeave={() => setFreezeId(undefined)}
            />
          ) : (
            <>
              {!isNarrow && <div ref={setBeside} />}
              {cameras}
              {carried.here(freezeNow)}
              {followed.section}
              <FilmMargin
                {...{ game, partId, team, isBlind }}
                onFreeze={openFreeze}
                onHabit={marking.begin}
              />
              {!isBlind && <LiveTie {...{ gameId, game, team, partId, player }} />}
              <OwnKeys team={team} onPress={marking.press} />
            </>
          )}
        </aside>
        <div className="film-below">
          {!isBlind && (
            <MomentsPanel
              {...{ gameId, game, moments, team, filter }}
              chosen={momentId}
              onFilter={setFilter}
              beside={beside ?? undefined}
              onPlay={playing.play}
              here={marking.here}
              onSaid={marking.say}
              film={film}
              onChoose={chooseMoment}
              onFreeze={(freeze, id) => {
                openFreeze(freeze);
                setMomentId(id);
              }}
              onGone={() => setMomentId(undefined)}
              onSecondLook={() => {
                setFreezeId(undefined);
                setMomentId(undefined);
                marking.leave();
                marks.desk.setOpen(false);
                setBlind(true);
              }}
              onShow={show}
              reel={shown => <ReelPanel {...marks} team={team} shown={shown} />}
            />
          )}
          {parts}
          <KeptReady copies={copies} />
          <WholeReady copies={copies} />
        </div>
      </main>
    </>
  );
}

const NONE: readonly ListedMoment[] = [];
