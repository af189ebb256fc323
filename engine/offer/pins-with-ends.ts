import type { OfferedPin } from './offered-pin.ts';

/** The landmark at the same place after a half turn of the sheet: both signs of its quarter change. */
export const turnedLandmark = (landmark: string): string =>
  landmark.replace(/[+-](?=[xy])/g, sign => (sign === '+' ? '-' : '+'));

/** The same pins with the ends of the sheet turned round, or as they are. */
export const pinsWithEnds = (pins: readonly OfferedPin[], isTurned: boolean): OfferedPin[] =>
  pins.map(pin => (isTurned ? { ...pin, landmark: turnedLandmark(pin.landmark) } : pin));
