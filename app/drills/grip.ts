import type { ActId, SpotId } from '@icewright/engine';
import { newActId } from './route-writes.ts';

/** What is chosen: a spot, and one of its acts. */
export interface Chosen {
  readonly spotId: SpotId | null;
  readonly actId: ActId | null;
}

/** What the pointer has taken hold of. */
export type Grip =
  | { readonly kind: 'spot'; readonly spotId: SpotId }
  | { readonly kind: 'through'; readonly spotId: SpotId; readonly actId: ActId; readonly index: number }
  | { readonly kind: 'bend'; readonly spotId: SpotId; readonly actId: ActId; readonly index: number }
  | { readonly kind: 'pull'; readonly spotId: SpotId; readonly newAct: ActId }
  | { readonly kind: 'puck'; readonly puckId: string }
  | { readonly kind: 'gear'; readonly gearId: string };

export const newPull = (spotId: SpotId): Grip => ({ kind: 'pull', spotId, newAct: newActId() });
