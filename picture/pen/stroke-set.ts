import type { Lettering, LetteringName } from '../lettering.ts';
import { letteringOf } from '../lettering.ts';
import type { Mark } from '../marks.ts';
import type { PenState } from './pen-state.ts';

/** Width and dash of a mark where it is drawn now. */
export const strokeSet = (
  mark: Mark,
  state: PenState,
): { readonly width: number; readonly dash: readonly [number, number] | null } => {
  const grow = mark.byK ? state.k : 1;
  const width = (mark.width ?? 0) * grow;
  return {
    width: mark.paint ? Math.max(width, state.thinFloor) : width,
    dash: mark.dash ? [mark.dash[0] * grow, mark.dash[1] * grow] : null,
  };
};

/** Size of the letters where they are set now. */
export const letterSize = (name: LetteringName, state: PenState, size: number | undefined): number => {
  if (size !== undefined) return size;
  const lettering: Lettering = letteringOf(name);
  return lettering.size * (lettering.byK ? state.k : 1);
};
