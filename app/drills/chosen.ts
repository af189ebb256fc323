import type { ActId, SpotId } from '@icewright/engine';

/** What leads of what is selected: a spot, and one of its acts. */
export interface Chosen {
  readonly spotId: SpotId | null;
  readonly actId: ActId | null;
}
