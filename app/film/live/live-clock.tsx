import type { FilmPart, Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useEffect, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { clockText } from '../film-clock.ts';
import { isOver, openBreaks, standsOf } from './live-breaks.ts';
import { liveNowS } from './live-part.ts';
import { letClockRun, stopClock } from './stop-clock.ts';

/** The clock of a game that is marked while it is played; stopped in a break, so that the periods follow each other on it. */
export function LiveClock({
  gameId,
  filmId,
  part,
  moments,
}: {
  readonly gameId: string;
  readonly filmId: Id<'film'>;
  readonly part: FilmPart;
  readonly moments: Game['moments'];
}) {
  const [, setNow] = useState(0);
  useEffect(() => {
    const every = setInterval(() => setNow(Date.now()), 250);
    return () => clearInterval(every);
  }, []);
  if (isOver(part)) {
    return (
      <div className="live-clock">
        <p>
          <b className="num">{clockText(liveNowS(part), 0)}</b>{' '}
          <span className="q2">on the clock when the game was over</span>
        </p>
        <Act onPress={() => letClockRun(gameId, filmId, part)}>It goes on: let the clock run</Act>
      </div>
    );
  }
  const isStopped = openBreaks(part).length > 0;
  const brokenS = isStopped
    ? Math.max(0, (Date.now() - (standsOf(part).at(-1)?.fromMs ?? Date.now())) / 1000)
    : 0;
  return (
    <div className="live-clock">
      <p role="timer">
        <b className="num">{clockText(liveNowS(part), 0)}</b>{' '}
        <span className={isStopped ? 'warm b' : 'q3'}>
          {isStopped ? `stopped for a break of ${clockText(brokenS, 0)} so far` : 'since the marking began'}
        </span>
      </p>
      <Act
        isOn={isStopped}
        onPress={() =>
          isStopped ? letClockRun(gameId, filmId, part) : stopClock(gameId, filmId, part, moments)
        }
      >
        {isStopped ? 'Let the clock go on' : 'Stop the clock for a break'}
      </Act>
      <Act onPress={() => stopClock(gameId, filmId, part, moments, true)}>The game is over</Act>
    </div>
  );
}
