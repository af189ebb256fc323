import type { Player } from './player.ts';

/**
 * Plays on at real speed and stands at exactly this frame, which `onStand` is told once, also when the film plays no further.
 * `onLetGo` is told when something else was asked of the film. What is given back lets go of it: the film is then left as it is.
 */
export function playTo(
  player: Player,
  lastFrame: number,
  onStand: () => void,
  onLetGo = () => {},
): () => void {
  let isOver = false;
  let hasPlayed = false;
  const end = () => {
    isOver = true;
    stop();
  };
  const look = () => {
    const { frameIndex, playing, onVideo, stuck, holding } = player.now();
    if (isOver) return;
    // The video is told to stop one picture early: by the time it does, it shows the one that is meant.
    const isThere = frameIndex >= lastFrame - (onVideo && playing ? 1 : 0);
    // At a freeze that holds the picture it stands a while, and goes on by itself.
    if (!isThere && (playing || holding)) {
      hasPlayed = true;
      return;
    }
    end();
    // It stands beyond the frame that it was to stop at: somebody took it there.
    if (hasPlayed && !playing && !holding && frameIndex > lastFrame) return onLetGo();
    if (isThere && !stuck) void player.jump(lastFrame);
    if (isThere || stuck || frameIndex >= player.film.index.frameCount - 1) onStand();
    else onLetGo();
  };
  const stop = player.subscribe(look);
  if (player.now().frameIndex < lastFrame) player.play(1);
  look();
  return end;
}
