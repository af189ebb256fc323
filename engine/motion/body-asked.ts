import type { Body } from '../drill/in-boards.ts';
import type { Boards } from '../rink/boards.ts';
import type { RoutePower } from '../skater/route-profile.ts';

/** What an act of the body depends on. Metres, metres a second, frame of the rink; the facing is a unit vector. */
export interface BodyAsked {
  readonly boards: Boards;
  readonly model: RoutePower;
  readonly from: Readonly<Body>;
  readonly facingX: number;
  readonly facingY: number;
  /** Going backward now: moving, and facing the other way. */
  readonly isBackward: boolean;
  readonly withPuck: boolean;
}
