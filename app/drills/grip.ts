import type { ActId, IcePoint, Id, SpotId } from '@icewright/engine';
import type { Picked, Selection } from './edit/selection.ts';
import { newActId } from './route-writes.ts';

/** What the pointer has taken hold of. */
export type Grip =
  /** One thing that stands on the ice, and all that is selected with it. */
  | {
      readonly kind: 'things';
      readonly picked: Picked;
      readonly selection: Selection;
      readonly fromM: IcePoint;
    }
  | { readonly kind: 'through'; readonly spotId: SpotId; readonly actId: ActId; readonly index: number }
  | { readonly kind: 'bend'; readonly spotId: SpotId; readonly actId: ActId; readonly index: number }
  | { readonly kind: 'pull'; readonly spotId: SpotId; readonly newAct: ActId }
  /** A corner of a small game's region. */
  | { readonly kind: 'corner'; readonly game: Id<'game'>; readonly corner: number }
  /** The lozenge of an act, on its way to what fires it. */
  | { readonly kind: 'cue'; readonly spotId: SpotId; readonly actId: ActId };

export const newPull = (spotId: SpotId): Grip => ({ kind: 'pull', spotId, newAct: newActId() });
