import { inOrder } from '@icewright/book';
import { type ReactNode, useMemo, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { useKeys } from '../../shell/keys.ts';
import type { MomentFilter } from '../moments/filter-moments.ts';
import { MarkMoment } from '../moments/mark-moment.tsx';
import { momentsOf } from '../moments/moments-of.ts';
import { MomentsPanel } from '../moments/moments-panel.tsx';
import { type Situation, situationBefore } from '../moments/new-moment.ts';
import { OwnKeys } from '../moments/own-keys.tsx';
import { useMarking } from '../moments/use-marking.ts';
import { FilmToCome } from './film-to-come.tsx';
import { HowItStands } from './how-it-stands.tsx';
import { openBreaks, withinBreaks } from './live-breaks.ts';
import { LiveClock } from './live-clock.tsx';
import { liveFrame, liveNowS, liveStartMs } from './live-part.ts';
import type { WithoutFilm } from './without-film.ts';

/** Marking while the game is played, with no film yet: a clock, the coach's own keys, and the list. */
export function LiveRoom({
  gameId,
  game,
  team,
  partId,
  part,
  head,
  above,
  openFilm,
}: WithoutFilm & { readonly head: (acts: ReactNode) => ReactNode }) {
  const [momentId, setMomentId] = useState<string>();
  const [filter, setFilter] = useState<MomentFilter>({});
  const [stands, setStands] = useState<Partial<Situation>>(() =>
    situationBefore(game, { film: partId, frameIndex: Number.POSITIVE_INFINITY }),
  );
  const marking = useMarking({
    gameId,
    game,
    team,
    partId,
    clock: {
      now: () => {
        const timeS = liveNowS(part);
        return { frameIndex: liveFrame(timeS), timeS };
      },
      within: seconds => withinBreaks(part, liveStartMs(part), seconds),
      ...(openBreaks(part).length > 0 ? { says: 'The clock is stopped: it stands at the break.' } : {}),
    },
    frozen: undefined,
    stands,
    onStands: setStands,
    // Nothing opens while the game runs: what is to be said of a moment can wait.
    onMarked: () => {},
  });
  useKeys([{ keys: 'm', says: 'mark a moment', act: () => marking.begin() }]);
  const moments = useMemo(() => momentsOf(game, partId), [game, partId]);
  const habitAtFirst = inOrder(team.habits).find(([, one]) => one.kept)?.[0];
  return (
    <>
      {head(
        <Act lead onPress={() => marking.begin()} isOn={marking.draft !== undefined}>
          Mark a moment <kbd>M</kbd>
        </Act>,
      )}
      <main className="film-room live-room">
        <LiveClock gameId={gameId} filmId={partId} part={part} moments={game.moments} />
        <p className="q2 marked-said" role="status">
          {marking.said}
        </p>
        <div className="live-keys">
          <OwnKeys team={team} onPress={marking.press} saysHowItStands />
        </div>
        <MarkMoment
          draft={marking.draft}
          team={team}
          habitAtFirst={habitAtFirst}
          isLive
          onMark={marking.mark}
          onLeave={marking.leave}
        />
        <HowItStands team={team} stands={stands} onStands={setStands} />
        {/* Below the keys: what is pressed while the game runs comes first on a phone. */}
        <div className="film-above">{above}</div>
        <MomentsPanel
          gameId={gameId}
          game={game}
          moments={[...moments].reverse()}
          team={team}
          chosen={momentId}
          filter={filter}
          onFilter={setFilter}
          here={marking.here}
          onSaid={marking.say}
          onChoose={id => setMomentId(id === momentId ? undefined : id)}
          onGone={() => setMomentId(undefined)}
        />
        <FilmToCome films={game.films}>{openFilm}</FilmToCome>
      </main>
    </>
  );
}
