import type { Freeze, Game } from '@icewright/book';
import {
  type Carry,
  carryPins,
  iceFromFilm,
  keptFitOf,
  landmarksOf,
  type PinFit,
  type PinnedFrame,
  type Rink,
  SURELY_SDS,
} from '@icewright/engine';
import { namedPinsOf, ownFitOf } from '../fit-of-freeze.ts';
import type { CarryState } from './use-carry.ts';

/** The pins of a film's freezes as one text, which changes only when they do: moving a skater carries nothing anew. */
export const pinsSaid = (game: Game, film: string): string =>
  JSON.stringify(
    Object.values(game.freezes)
      .filter(one => one.film === film)
      .map(({ frameIndex, clickSdPx, pins }): PinnedFreeze => ({ frameIndex, clickSdPx, pins })),
  );

/** What the pins of a film say about the other frames of a followed stretch. */
export const carryOf = (state: CarryState, said: string, rink: Rink): Carry | undefined => {
  if (state.kind !== 'followed') return undefined;
  const frames = new Set(state.stretch.frames.map(({ frameIndex }) => frameIndex));
  const iceOf = new Map(landmarksOf(rink).map(one => [one.id as string, one.atM]));
  const pinned = (JSON.parse(said) as PinnedFreeze[])
    .filter(one => frames.has(one.frameIndex) && ownFitOf(one, rink).kind === 'fit')
    .map(
      (one): PinnedFrame => ({
        frameIndex: one.frameIndex,
        clickSdPx: one.clickSdPx,
        pins: namedPinsOf(one).flatMap(({ id, landmark, filmPx }) => {
          const iceM = iceOf.get(landmark);
          return iceM ? [{ id, iceM, filmPx }] : [];
        }),
      }),
    );
  return carryPins(state.stretch, state.lens, pinned);
};

type PinnedFreeze = Pick<Freeze, 'frameIndex' | 'clickSdPx' | 'pins'>;

/** The tie of a frame, to be kept with a freeze of it; undefined where nothing is carried there. */
export const tieAt = (carry: Carry | undefined, frameIndex: number): Freeze['carried'] => {
  const at = carry?.at(frameIndex);
  if (at?.kind !== 'carried') return undefined;
  const { scaling, coefficients, covariance, ...rest } = keptFitOf(at.fit);
  return {
    from: [...at.from],
    scaling,
    coefficients: [...coefficients],
    covariance: [...covariance],
    ...rest,
  };
};

/** 95 % of the ± below the middle of the picture, metres, the worse of along and across; undefined where it shows no ice. */
export const heldToM = (
  fit: PinFit,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): number | undefined => {
  const placed = iceFromFilm(fit, { xPx: widthPx / 2, yPx: 0.6 * heightPx }, { footSdPx: 0 });
  if (placed.kind === 'none') return undefined;
  return SURELY_SDS * Math.sqrt(Math.max(placed.covM2.xxM2, placed.covM2.yyM2));
};
