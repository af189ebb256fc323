import type { Meeting, Team } from '@icewright/book';
import { useEffect, useMemo, useReducer, useRef, useState } from 'react';
import { filmInHand, findRemembered } from '../../film/film-hand.ts';
import type { Player } from '../../film/player.ts';
import { itemFramesOf } from '../item-frames.ts';
import { lineOf, type ShownItem } from '../shown-item.ts';
import type { MeetingFilms } from '../use-films.ts';
import { nextRun, onSaid, orderOf, type Press, type Run, type RunItem } from './meeting-run.ts';
import { type AskedPress, type FromSpeaker, type Line, type Showing, speakersLine } from './run-channel.ts';
import { useOrder } from './use-order.ts';

export interface Speaker {
  readonly run: Run;
  readonly shown: ShownItem | undefined;
  readonly next: ShownItem | undefined;
  readonly player: Player | undefined;
  /** The film of this item is still being opened. */
  readonly isOpening: boolean;
  readonly showing: Showing;
  /** What the next press does. */
  readonly onSaid: string;
  readonly press: (does: AskedPress) => void;
  readonly goTo: (index: number) => void;
  /** Another window shows the picture to the team. */
  readonly hasAudience: boolean;
}

/** The speaker's window leads: it holds where the meeting stands, and tells the audience's window. */
export function useSpeaker(of: {
  readonly meetingId: string;
  readonly meeting: Meeting;
  readonly team: Team;
  readonly items: readonly ShownItem[];
  readonly films: MeetingFilms;
  /** Where it stands to begin with. */
  readonly first: Run;
}): Speaker {
  const { meetingId, meeting, team, items, films } = of;
  const runItems = useMemo(() => items.map(shown => runItemOf(shown, films)), [items, films]);
  const latest = useRef(runItems);
  latest.current = runItems;
  const [run, dispatch] = useReducer(
    (now: Run, press: Press) => nextRun(now, press, latest.current),
    of.first,
  );
  const at = Math.min(run.index, Math.max(0, items.length - 1));
  const shown = items[at];
  const film = shown?.state === 'there' ? films.get(shown.part.hash) : undefined;
  const player = film?.kind === 'open' ? film.player : undefined;
  const order = useMemo(() => orderOf({ ...run, index: at }, runItems), [run, at, runItems]);
  useOrder(player, order, turn => {
    // A page that was loaded again may not play with sound before it is pressed: the team's window then says when the film is there.
    if (!(hasAudience && player?.now().stuck)) dispatch({ does: 'arrived', turn });
  });
  const press = (does: AskedPress) => {
    const frameIndex = player?.now().frameIndex ?? 0;
    dispatch(does === 'on' || does === 'back' || does === 'skip' ? { does } : { does, frameIndex });
  };
  useStandByClock(run, shown, () => dispatch({ does: 'on' }));
  const isOpening = runItems[at]?.isOpening === true;
  const showing = useMemo(
    () => showingOf({ meeting, team, items, shown, run, order, isOpening }),
    [meeting, team, items, shown, run, order, isOpening],
  );
  const hasAudience = useAudience(meetingId, showing, press, dispatch);
  useEffect(() => {
    player?.mute(false);
  }, [player]);
  return {
    run,
    shown,
    next: items[at + 1],
    player: order === null ? undefined : player,
    isOpening,
    showing,
    onSaid: onSaid({ ...run, index: at }, runItems),
    press,
    goTo: index => dispatch({ does: 'to', index }),
    hasAudience,
  };
}

function runItemOf(shown: ShownItem, films: MeetingFilms): RunItem {
  const film = shown.state === 'there' ? films.get(shown.part.hash) : undefined;
  const isThere = shown.state === 'there' && film?.kind === 'open';
  return {
    id: shown.id,
    frames: isThere ? itemFramesOf(shown, film.player.film.index) : undefined,
    isOpening: shown.state === 'opening' || (shown.state === 'there' && (!film || film.kind === 'looking')),
  };
}

/** A stand by the clock ends by itself; one that waits for a press does not. */
function useStandByClock(run: Run, shown: ShownItem | undefined, onEnd: () => void): void {
  const end = useRef(onEnd);
  end.current = onEnd;
  const seconds = run.phase === 'stands' && !run.isBlack ? shown?.item.stop?.seconds : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each stand anew
  useEffect(() => {
    if (seconds === undefined) return;
    const timer = setTimeout(() => end.current(), seconds * 1000);
    return () => clearTimeout(timer);
  }, [seconds, run.turn]);
}

function showingOf(of: {
  readonly meeting: Meeting;
  readonly team: Team;
  readonly items: readonly ShownItem[];
  readonly shown: ShownItem | undefined;
  readonly run: Run;
  readonly order: ReturnType<typeof orderOf>;
  readonly isOpening: boolean;
}): Showing {
  const { meeting, team, items, shown, run, order, isOpening } = of;
  const hashes = items.flatMap(one => (one.state === 'there' ? [one.part.hash] : []));
  const isOver = run.phase === 'over';
  return {
    meetingTitle: meeting.title,
    hashes: [...new Set(hashes)],
    picture:
      shown?.state === 'there' && order !== null
        ? { hash: shown.part.hash, gameId: shown.gameId, filmId: shown.partId, order }
        : null,
    // Where there is no picture the line is what there is to see.
    line:
      isOver || shown === undefined || (!meeting.showsWords && order !== null)
        ? ''
        : saidOf(shown, run, team),
    isBlack: run.isBlack,
    isOver,
    isOpening,
  };
}

function useAudience(
  meetingId: string,
  showing: Showing,
  onPress: (does: AskedPress) => void,
  onTold: (told: Extract<Press, { does: 'arrived' | 'found' }>) => void,
): boolean {
  const [hasAudience, setHasAudience] = useState(false);
  const latest = useRef({ showing, onPress, onTold });
  latest.current = { showing, onPress, onTold };
  const line = useRef<Line<FromSpeaker>>(undefined);
  useEffect(() => {
    const opened = speakersLine(meetingId, message => {
      if (message.says === 'here') {
        setHasAudience(true);
        opened.say({ says: 'shows', showing: latest.current.showing });
        if (message.at) latest.current.onTold({ does: 'found', ...message.at });
      } else if (message.says === 'gone') setHasAudience(false);
      else if (message.says === 'press') latest.current.onPress(message.does);
      else if (message.says === 'arrived') latest.current.onTold({ does: 'arrived', turn: message.turn });
      else void giveFilm(opened, message.hash);
    });
    line.current = opened;
    opened.say({ says: 'shows', showing: latest.current.showing });
    const leave = () => opened.say({ says: 'left' });
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      leave();
      opened.close();
    };
  }, [meetingId]);
  useEffect(() => line.current?.say({ says: 'shows', showing }), [showing]);
  return hasAudience;
}

async function giveFilm(line: Line<FromSpeaker>, hash: string): Promise<void> {
  const file = filmInHand(hash) ?? (await findRemembered(hash));
  if (file) line.say({ says: 'film', hash, file });
}

/** The line of a moment; while the film stands, what the group is asked there. */
const saidOf = (shown: ShownItem, { phase }: Run, team: Team): string =>
  phase === 'stands' && shown.item.asks !== '' ? shown.item.asks : lineOf(shown, team);
