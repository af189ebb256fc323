import type { FitResult } from '@icewright/engine';

/** Why the pins do not hold the picture: one sentence, and what to do. */
export const refusedPinsWords = (
  refused: Extract<FitResult, { kind: 'refused' }>,
): { readonly says: string; readonly todo: string } => {
  const { reason, placeCount, neededCount } = refused;
  switch (reason) {
    case 'tooFew': {
      const more = neededCount - placeCount;
      return {
        says: `${placeCount === 1 ? 'One pin' : `${COUNT[placeCount] ?? placeCount} pins`} cannot hold a picture yet.`,
        todo: `${more === 1 ? 'One more' : `${COUNT[more] ?? more} more`} on other marks, far from each other.`,
      };
    }
    case 'samePlace':
      return {
        says: 'Some of these pins name the same place on the ice.',
        todo: 'Put each pin on a mark of its own.',
      };
    case 'onOneLine':
      return {
        says: 'All these pins, or all but one, lie on one line.',
        todo: 'The ice could still tilt about it. Add pins well away from that line.',
      };
    case 'tinySpread':
      return {
        says: 'These pins lie too close together.',
        todo: 'A click that is one pixel off would turn the whole sheet. Add pins further out.',
      };
    case 'mirrored':
      return {
        says: 'With these pins the picture would be seen in a mirror.',
        todo: 'Left and right, or far and near, are swapped in some of them. The map lies as the picture does: the camera is below its lower edge.',
      };
    case 'noSuchView':
      return {
        says: 'No camera sees these marks in these places.',
        todo: 'At least one pin has the wrong name. Check them one by one.',
      };
  }
};

const COUNT: Readonly<Record<number, string>> = { 2: 'Two', 3: 'Three', 4: 'Four' };
