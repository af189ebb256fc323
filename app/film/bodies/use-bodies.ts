import type { FilmPoint, Rink } from '@icewright/engine';
import type { FilmMark, FilmView } from '@icewright/picture';
import { useEffect, useState } from 'react';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import { findBodies } from './find-bodies.ts';

/** Who stands before the marks of a picture, as an address of a picture that is white but where they are. */
export interface BodiesBefore {
  readonly href: string;
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * Who stands before the marks of the picture that is shown, while the film stands; undefined until they are found, and while it plays: to look
 * through a picture takes longer than the next one takes to come.
 */
export const useBodies = (
  player: Player,
  frameIndex: number,
  marks: readonly FilmMark[],
  view: FilmView,
  rink: Rink | undefined,
  known: readonly FilmPoint[],
): BodiesBefore | undefined => {
  const standsAt = usePlayerPart(player, state =>
    !state.playing && !state.onVideo && !state.looking && state.shownFrame === state.frameIndex
      ? state.frameIndex
      : -1,
  );
  const [found, setFound] = useState<{ readonly for: string; readonly bodies: BodiesBefore }>();
  const key =
    standsAt === frameIndex && rink !== undefined
      ? JSON.stringify([
          frameIndex,
          view.fit.filmFromIce,
          marks.map(one => [one.kind, one.placesM, one.sizeM]),
          known.map(({ xPx, yPx }) => [Math.round(xPx), Math.round(yPx)]),
        ])
      : '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says all that the answer hangs on
  useEffect(() => {
    if (key === '' || rink === undefined) return;
    let isWanted = true;
    const timer = setTimeout(async () => {
      const picture = player.shownCanvas();
      const bodies = picture && (await findBodies(picture, marks, view, rink, known));
      if (!bodies || !isWanted) return;
      const href = await addressOf(bodies.cover);
      if (!isWanted) return;
      const { leftPx, topPx, cover } = bodies;
      setFound({ for: key, bodies: { href, leftPx, topPx, widthPx: cover.width, heightPx: cover.height } });
    }, SETTLED_MS);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [key]);
  return found && found.for === key ? found.bodies : undefined;
};

/** While a mark is dragged, or frames are stepped through, nothing is looked for. */
const SETTLED_MS = 120;

const addressOf = async (cover: OffscreenCanvas): Promise<string> => {
  const white = new OffscreenCanvas(cover.width, cover.height);
  const context = white.getContext('2d')!;
  context.fillStyle = 'white';
  context.fillRect(0, 0, white.width, white.height);
  context.drawImage(cover, 0, 0);
  const blob = await white.convertToBlob({ type: 'image/png' });
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(String(reader.result)));
    reader.addEventListener('error', () => reject(reader.error));
    reader.readAsDataURL(blob);
  });
};
