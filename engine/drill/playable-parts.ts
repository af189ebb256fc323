import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { Act, Spot } from './drill.ts';

export interface PlayableSpot extends Omit<Spot, 'acts'> {
  readonly id: SpotId;
  /** Where the plan drew it, when that was off the ice; `atM` is then the nearest place to stand. */
  readonly drawnOffM?: IcePoint;
  /** By rank. */
  readonly acts: readonly PlayableAct[];
}

export type PlayableAct = Act & { readonly id: ActId };

/** Where a puck is at the whistle: on a stick, or lying at `atM` (metres). Several that lie together are one heap. */
export interface PuckStart {
  readonly atM: IcePoint;
  readonly ownerSpot: SpotId | null;
  /** 1 on a stick. */
  readonly count: number;
}
