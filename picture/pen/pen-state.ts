import type { Placing } from './pen.ts';

/** What `place` changes: a pen keeps one and puts the old one back afterwards. */
export interface PenState {
  readonly k: number;
  readonly thinFloor: number;
  /** All turns of the places around, so that letters can be set upright. */
  readonly turnRad: number;
}

export const placedState = (state: PenState, where: Placing): PenState => ({
  k: where.k ?? state.k,
  thinFloor: where.thinFloor ?? state.thinFloor,
  turnRad: state.turnRad + (where.turnRad ?? 0),
});
