import type { Order, Press } from './meeting-run.ts';

/** What the audience sees, as the speaker's window says it. Windows of one browser speak to each other; no network is asked. */
export interface Showing {
  readonly meetingTitle: string;
  /** Films of the meeting, by hash, so that none is opened only when it is wanted. */
  readonly hashes: readonly string[];
  readonly picture: {
    readonly hash: string;
    readonly gameId: string;
    readonly filmId: string;
    readonly order: Order;
  } | null;
  /** The line below the picture; empty: the picture alone. */
  readonly line: string;
  readonly isBlack: boolean;
  readonly isOver: boolean;
  /** The speaker's window is still opening this film: whoever shows it already goes on. */
  readonly isOpening: boolean;
}

/** What the audience's window may ask for; the frame is added by the speaker's, which knows it. */
export type AskedPress = Exclude<Press['does'], 'to' | 'arrived' | 'found'>;

export type FromSpeaker =
  | { readonly says: 'shows'; readonly showing: Showing }
  /** A film that only the speaker's window has in hand. */
  | { readonly says: 'film'; readonly hash: string; readonly file: File }
  | { readonly says: 'left' };

export type FromAudience =
  /** With how far it is in an order to run, when it followed one already. */
  | { readonly says: 'here'; readonly at?: { readonly turn: number; readonly frameIndex: number } }
  | { readonly says: 'gone' }
  | { readonly says: 'press'; readonly does: AskedPress }
  | { readonly says: 'arrived'; readonly turn: number }
  | { readonly says: 'wantsFilm'; readonly hash: string };

export interface Line<Out> {
  readonly say: (message: Out) => void;
  readonly close: () => void;
}

export const speakersLine = (meetingId: string, onHeard: (message: FromAudience) => void) =>
  lineOf<FromSpeaker, FromAudience>(meetingId, 'speaker', onHeard);

export const audiencesLine = (meetingId: string, onHeard: (message: FromSpeaker) => void) =>
  lineOf<FromAudience, FromSpeaker>(meetingId, 'audience', onHeard);

/** Each side hears the other only: two windows of one kind do not steer each other. */
function lineOf<Out, In>(
  meetingId: string,
  side: 'speaker' | 'audience',
  onHeard: (message: In) => void,
): Line<Out> {
  const other = side === 'speaker' ? 'audience' : 'speaker';
  const speaks = new BroadcastChannel(`icewright.meeting.${meetingId}.${side}`);
  const hears = new BroadcastChannel(`icewright.meeting.${meetingId}.${other}`);
  hears.addEventListener('message', ({ data }: MessageEvent<In>) => onHeard(data));
  return {
    say: message => speaks.postMessage(message),
    close: () => {
      speaks.close();
      hears.close();
    },
  };
}
