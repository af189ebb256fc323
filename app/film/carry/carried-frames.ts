import type { Freeze, Game } from '@icewright/book';
import {
  type Carry,
  carryPins,
  iceFromFilm,
  keptFitOf,
  landmarksOf,
  noneBecause,
  type PinFit,
  type PinnedFrame,
  type Rink,
  SURELY_SDS,
} from '@icewright/engine';
import { namedPinsOf, ownFitOf } from '../fit-of-freeze.ts';
import type { Tied } from '../track/track-messages.ts';
import type { FollowedStretch } from './kept-stretches.ts';

/** The pins of a film's freezes as one text, which changes only when they do: moving a skater carries nothing anew. */
export const pinsSaid = (game: Game, film: string): string =>
  JSON.stringify(
    Object.values(game.freezes)
      .filter(one => one.film === film)
      .map(({ frameIndex, clickSdPx, pins }): PinnedFreeze => ({ frameIndex, clickSdPx, pins })),
  );

/** What the pins of a film say about the other frames of a followed stretch. */
export const carryOf = (tied: Tied | undefined): Carry | undefined =>
  tied && carryPins(tied.stretch, tied.lens, tied.pinned);

/** A followed stretch with the frames of it that are pinned so that they hold. */
export const tiedOf = ({ stretch, lens }: FollowedStretch, said: string, rink: Rink): Tied => {
  const frames = new Set(stretch.frames.map(({ frameIndex }) => frameIndex));
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
  return { stretch, lens, pinned };
};

/** The same over several stretches: of the newest that reaches a frame. Each is worked out when it is first needed. */
export const carryOfAll = (
  stretches: readonly FollowedStretch[],
  said: string,
  rink: Rink,
): Pick<Carry, 'at'> & { readonly fitAt: (frameIndex: number) => PinFit | undefined } => {
  const carries = stretches.map(({ stretch, lens }) => {
    const frames = new Set(stretch.frames.map(({ frameIndex }) => frameIndex));
    let carry: Carry | undefined;
    return (frameIndex: number) => {
      if (!frames.has(frameIndex)) return undefined;
      carry ??= carryOf(tiedOf({ stretch, lens }, said, rink));
      return carry?.at(frameIndex);
    };
  });
  const known = new Map<number, ReturnType<Carry['at']>>();
  const at = (frameIndex: number): ReturnType<Carry['at']> => {
    const before = known.get(frameIndex);
    if (before) return before;
    let best: ReturnType<Carry['at']> = noneBecause('notTracked');
    for (const one of carries) {
      const found = one(frameIndex);
      if (found) best = found;
      if (best.kind === 'carried') break;
    }
    known.set(frameIndex, best);
    return best;
  };
  return {
    at,
    fitAt: frameIndex => {
      const there = at(frameIndex);
      return there.kind === 'carried' ? there.fit : undefined;
    },
  };
};

type PinnedFreeze = Pick<Freeze, 'frameIndex' | 'clickSdPx' | 'pins'>;

/** The tie of a frame, to be kept with a freeze of it; undefined where nothing is carried there. */
export const tieAt = (carry: Pick<Carry, 'at'> | undefined, frameIndex: number): Freeze['carried'] => {
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
