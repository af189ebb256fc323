import { useEffect, useRef, useState } from 'react';
import { rememberFilm } from '../../film/film-hand.ts';
import { ActLink } from '../../parts/act.tsx';
import { addressOfSpeaking } from '../../shell/addresses.ts';
import { useKeys } from '../../shell/keys.ts';
import { useFilms } from '../use-films.ts';
import { audiencesLine, type FromAudience, type Line, type Showing } from './run-channel.ts';
import { RUN_KEYS } from './run-keys.ts';
import { Stage } from './stage.tsx';
import { useOrder } from './use-order.ts';

/** The audience's window: the picture alone. It does what the speaker's window says, and hands keys on to it. */
export function ShowPage({ meetingId }: { readonly meetingId: string }) {
  const [showing, setShowing] = useState<Showing>();
  const { films, again } = useFilms(showing?.hashes ?? []);
  const line = useRef<Line<FromAudience>>(undefined);
  const lookAgain = useRef(again);
  lookAgain.current = again;
  const place = useRef<() => { readonly turn: number; readonly frameIndex: number } | undefined>(undefined);
  useEffect(() => {
    let isLed = false;
    let left: ReturnType<typeof setTimeout> | undefined;
    const opened = audiencesLine(meetingId, message => {
      if (message.says === 'shows') {
        // A speaker's page that was loaded again does not know of this window yet.
        const at = place.current?.();
        if (!isLed) opened.say({ says: 'here', ...(at ? { at } : {}) });
        isLed = true;
        if (left !== undefined && message.showing.isOpening) return;
        clearTimeout(left);
        left = undefined;
        setShowing(message.showing);
      } else if (message.says === 'left') {
        isLed = false;
        // A page that is loaded again is back at once: until then the picture stays, and runs on.
        left = setTimeout(() => setShowing(undefined), BACK_WITHIN_MS);
      } else void rememberFilm(message.hash, message.file).then(() => lookAgain.current(message.hash));
    });
    line.current = opened;
    opened.say({ says: 'here' });
    const leave = () => opened.say({ says: 'gone' });
    window.addEventListener('pagehide', leave);
    return () => {
      clearTimeout(left);
      window.removeEventListener('pagehide', leave);
      leave();
      opened.close();
    };
  }, [meetingId]);
  const missing = [...films].flatMap(([hash, film]) => (film.kind === 'missing' ? [hash] : [])).join(' ');
  useEffect(() => {
    for (const hash of missing.split(' ')) if (hash !== '') line.current?.say({ says: 'wantsFilm', hash });
  }, [missing]);
  const film = showing?.picture ? films.get(showing.picture.hash) : undefined;
  const player = film?.kind === 'open' ? film.player : undefined;
  // Sound comes from the speaker's window: two of them would be an echo.
  useEffect(() => {
    player?.mute(true);
  }, [player]);
  const order = showing?.picture?.order ?? null;
  place.current = () =>
    player && order && 'to' in order ? { turn: order.turn, frameIndex: player.now().frameIndex } : undefined;
  useOrder(player, order, turn => line.current?.say({ says: 'arrived', turn }));
  useKeys([
    ...RUN_KEYS.map(({ keys, says, does }) => ({
      keys,
      says,
      act: () => line.current?.say({ says: 'press', does }),
    })),
    { keys: 'f', says: 'full screen', act: toggleFull },
  ]);
  const title = showing === undefined ? 'The picture' : showing.meetingTitle;
  useEffect(() => {
    document.documentElement.dataset.theme = 'film';
    document.title = `${title} · the picture`;
  }, [title]);
  return (
    <main className="show" onDoubleClick={toggleFull}>
      {showing === undefined ? (
        <p className="w stage-says">
          This window shows what the speaker’s window says.{' '}
          <ActLink to={addressOfSpeaking(meetingId)}>Be the speaker here</ActLink>
        </p>
      ) : (
        <Stage
          player={player}
          picture={showing.picture}
          line={showing.line}
          isBlack={showing.isBlack || showing.isOver}
          says={showing.isOver ? '' : showing.line}
        />
      )}
    </main>
  );
}

const BACK_WITHIN_MS = 15_000;

function toggleFull(): void {
  if (document.fullscreenElement) void document.exitFullscreen();
  else void document.documentElement.requestFullscreen?.().catch(() => undefined);
}
