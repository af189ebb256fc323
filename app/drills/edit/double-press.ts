import type { IcePoint } from '@icewright/engine';
import type { Grip } from '../grip.ts';
import { newActId } from '../route-writes.ts';
import type { Hand } from '../use-hand.ts';
import { routeSplit, routeSplitBetween } from './route-cut.ts';
import { pickedAct, type Selection } from './selection.ts';

/** Two presses on a point of a route, or on the line between two, split the route there. */
export function doublePressed(of: {
  readonly hand: Hand;
  readonly grip: Grip;
  readonly atM: IcePoint;
  readonly onSelect: (selection: Selection) => void;
  readonly onSaid: (said: string) => void;
}): void {
  const { hand, grip, atM } = of;
  if (grip.kind !== 'through' && grip.kind !== 'bend') return;
  const newAct = newActId();
  const writes =
    grip.kind === 'through'
      ? routeSplit(hand.kept, grip.spotId, grip.actId, grip.index, newAct)
      : routeSplitBetween(hand.kept, grip.spotId, grip.actId, grip.index, atM, newAct);
  if (writes === null) of.onSaid('There is nothing to split at the end of a route.');
  else {
    hand.keep(writes);
    of.onSelect([pickedAct(grip.spotId, newAct)]);
  }
}
