import type { FilmPart, Game } from '@icewright/book';
import type { Id } from '@icewright/engine';
import type { FrameIndex } from '../frame-index.ts';
import { clampFrame, middleOfFrame, timeOfFrame } from '../frame-index.ts';

type FilmId = Id<'film'>;

/** A frame in which an event is seen: it happened somewhere while that frame was exposed. */
export interface EventFrame {
  readonly frameIndex: number;
  /** The middle of the frame, seconds of its film. */
  readonly filmTimeS: number;
  readonly halfFrameS: number;
}

/** How the clock of one film follows from that of another: add `shiftS`; it is right to ± `plusMinusS`. */
export type TiedClock =
  | { readonly kind: 'tied'; readonly shiftS: number; readonly plusMinusS: number }
  | { readonly kind: 'none'; readonly reason: 'notTied' };

export const eventFrameOf = (index: FrameIndex, frameIndex: number): EventFrame => {
  const at = clampFrame(index, frameIndex);
  const filmTimeS = middleOfFrame(index, at);
  return { frameIndex: at, filmTimeS, halfFrameS: filmTimeS - timeOfFrame(index, at) };
};

/** From one film's clock to another's over the events that tie them, also by way of a third. Each tie adds its own ±. */
export const clockBetween = (films: Game['films'], from: FilmId, to: FilmId): TiedClock => {
  const reached = new Map<FilmId, { shiftS: number; plusMinusS: number }>([
    [from, { shiftS: 0, plusMinusS: 0 }],
  ]);
  // A map's keys are walked in the order they are put in, those of the walk itself too: the fewest ties come first.
  for (const at of reached.keys()) {
    const here = reached.get(at)!;
    for (const { film, shiftS, plusMinusS } of tiesOf(films, at)) {
      if (reached.has(film)) continue;
      reached.set(film, { shiftS: here.shiftS + shiftS, plusMinusS: here.plusMinusS + plusMinusS });
    }
  }
  const found = reached.get(to);
  return found && to !== from ? { kind: 'tied', ...found } : { kind: 'none', reason: 'notTied' };
};

const tiesOf = (
  films: Game['films'],
  at: FilmId,
): { readonly film: FilmId; readonly shiftS: number; readonly plusMinusS: number }[] =>
  (Object.entries(films) as [FilmId, FilmPart][]).flatMap(([id, { tied }]) => {
    if (!tied || !films[tied.to] || tied.to === id) return [];
    const shiftS = tied.theirs.filmTimeS - tied.ours.filmTimeS;
    const plusMinusS = tied.theirs.halfFrameS + tied.ours.halfFrameS;
    if (id === at) return [{ film: tied.to, shiftS, plusMinusS }];
    return tied.to === at ? [{ film: id, shiftS: -shiftS, plusMinusS }] : [];
  });
