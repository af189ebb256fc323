import { useKeys } from '../shell/keys.ts';
import type { Player } from './player.ts';

interface FilmKeyActs {
  readonly player: Player;
  readonly beginMark: () => void;
  readonly freezeNow: () => void;
  readonly neighbour: (direction: 1 | -1) => void;
  readonly playChosen: () => void;
  readonly marks: () => void;
}

/** The keys of the film room: general media keys, frames by arrows, and one letter for each act. */
const FILM_KEYS: readonly {
  readonly keys: string;
  readonly says: string;
  readonly act: (room: FilmKeyActs) => void;
}[] = [
  { keys: 'l', says: 'play, and faster', act: room => room.player.faster(1) },
  { keys: 'k', says: 'pause', act: room => room.player.pause() },
  { keys: 'j', says: 'play backwards, and faster', act: room => room.player.faster(-1) },
  { keys: 'Shift+l', says: 'play in slow motion, and slower', act: room => room.player.slower(1) },
  { keys: 'Shift+j', says: 'slow motion backwards', act: room => room.player.slower(-1) },
  { keys: 'o', says: 'loop from here, to here, and let go', act: room => room.player.setLoop() },
  { keys: 's', says: 'sound off and on', act: room => room.player.mute(!room.player.now().muted) },
  { keys: 'Space', says: 'play or pause', act: room => room.player.toggle() },
  { keys: 'ArrowRight', says: 'one frame on', act: room => room.player.step(1) },
  { keys: 'ArrowLeft', says: 'one frame back', act: room => room.player.step(-1) },
  { keys: 'Shift+ArrowRight', says: 'ten frames on', act: room => room.player.step(10) },
  { keys: 'Shift+ArrowLeft', says: 'ten frames back', act: room => room.player.step(-10) },
  { keys: 'Home', says: 'to the first frame', act: room => void room.player.jump(0) },
  {
    keys: 'End',
    says: 'to the last frame',
    act: room => void room.player.jump(room.player.film.index.frameCount - 1),
  },
  { keys: '[', says: 'the moment before', act: room => room.neighbour(-1) },
  { keys: ']', says: 'the next moment', act: room => room.neighbour(1) },
  { keys: 'p', says: 'play the seconds of the chosen moment', act: room => room.playChosen() },
  { keys: 'm', says: 'mark a moment', act: room => room.beginMark() },
  { keys: 'Shift+m', says: 'draw marks on the picture', act: room => room.marks() },
  { keys: 'f', says: 'freeze this frame', act: room => room.freezeNow() },
];

/** Letters that mean something here already, so that no key of the coach's own can take one. */
export const FILM_LETTERS: readonly string[] = FILM_KEYS.map(({ keys }) => keys).filter(keys =>
  /^[a-z0-9]$/.test(keys),
);

export const useFilmKeys = (room: FilmKeyActs): void =>
  useKeys(FILM_KEYS.map(({ act, ...line }) => ({ ...line, act: () => act(room) })));
