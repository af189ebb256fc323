import { useKeys } from '../shell/keys.ts';
import type { Player } from './player.ts';

/** The keys of the film room: general media keys, frames by arrows, and one letter for each act. */
export const useFilmKeys = ({
  player,
  beginMark,
  freezeNow,
  neighbour,
}: {
  readonly player: Player;
  readonly beginMark: () => void;
  readonly freezeNow: () => void;
  readonly neighbour: (direction: 1 | -1) => void;
}): void =>
  useKeys([
    { keys: 'l', says: 'play, and faster', act: () => player.faster(1) },
    { keys: 'k', says: 'pause', act: () => player.pause() },
    { keys: 'j', says: 'play backwards, and faster', act: () => player.faster(-1) },
    { keys: 'Shift+l', says: 'play in slow motion, and slower', act: () => player.slower(1) },
    { keys: 'Shift+j', says: 'slow motion backwards', act: () => player.slower(-1) },
    { keys: 'o', says: 'loop from here, to here, and let go', act: () => player.setLoop() },
    { keys: 's', says: 'sound off and on', act: () => player.mute(!player.now().muted) },
    { keys: 'Space', says: 'play or pause', act: () => player.toggle() },
    { keys: 'ArrowRight', says: 'one frame on', act: () => player.step(1) },
    { keys: 'ArrowLeft', says: 'one frame back', act: () => player.step(-1) },
    { keys: 'Shift+ArrowRight', says: 'ten frames on', act: () => player.step(10) },
    { keys: 'Shift+ArrowLeft', says: 'ten frames back', act: () => player.step(-10) },
    { keys: 'Home', says: 'to the first frame', act: () => void player.jump(0) },
    { keys: 'End', says: 'to the last frame', act: () => void player.jump(player.film.index.frameCount - 1) },
    { keys: '[', says: 'the moment before', act: () => neighbour(-1) },
    { keys: ']', says: 'the next moment', act: () => neighbour(1) },
    { keys: 'm', says: 'mark a moment', act: beginMark },
    { keys: 'f', says: 'freeze this frame', act: freezeNow },
  ]);
