import type { Freeze, Game } from '@icewright/book';
import type { PinFit, Rink } from '@icewright/engine';
import { fitOfFreeze } from '../fit-of-freeze.ts';

/** How each picture of a film is tied to the ice, as far as that is known. */
export interface FilmTie {
  /** The sheet; absent: who stands before a mark is not looked for. */
  readonly rink?: Rink;
  readonly fitAt: (frameIndex: number) => PinFit | undefined;
  readonly fitOf: (freezeId: string) => PinFit | undefined;
}

/** By the pins of the picture's own freeze; else by those carried to it from other pictures. */
export const tieOfFilm = (
  freezes: Game['freezes'],
  film: string,
  rink: Rink,
  carriedAt: (frameIndex: number) => PinFit | undefined,
): FilmTie => {
  const byFrame = new Map<number, Freeze>();
  for (const one of Object.values(freezes)) if (one.film === film) byFrame.set(one.frameIndex, one);
  const own = new Map<Freeze, PinFit | undefined>();
  const fitted = (freeze: Freeze): PinFit | undefined => {
    if (!own.has(freeze)) {
      const result = fitOfFreeze(freeze, rink);
      own.set(freeze, result.kind === 'fit' ? result.fit : undefined);
    }
    return own.get(freeze);
  };
  return {
    rink,
    fitAt: frameIndex => {
      const freeze = byFrame.get(frameIndex);
      return (freeze && fitted(freeze)) ?? carriedAt(frameIndex);
    },
    fitOf: id => {
      const freeze = freezes[id as keyof typeof freezes];
      return freeze && fitted(freeze);
    },
  };
};
