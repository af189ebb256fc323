import type { IcePoint, Rink, Run, SpotId } from '@icewright/engine';
import type { PointerEvent } from 'react';
import type { Selection } from './edit/selection.ts';
import type { Grip } from './grip.ts';
import type { Hand } from './use-hand.ts';

type Take = (grip: Grip, event: PointerEvent, placeM: IcePoint) => void;

/** What every handle of the board works with. */
export interface HandleProps {
  readonly hand: Hand;
  readonly rink: Rink;
  readonly run: Run | null;
  readonly selection: Selection;
  readonly isUpright: boolean;
  readonly onSelect: (selection: Selection) => void;
  readonly onTake: Take;
  readonly ownsPuckAtEnd: (spotId: SpotId) => boolean;
  readonly onSaid: (said: string) => void;
}
