import type { IcePoint } from '../units/points.ts';
import type { Pin, Refusal } from './pins.ts';

/** Eight unknowns, two a pin. */
export const NEEDED_PLACES = 4;

/** Landmarks are known to the millimetre; nearer than this they are one place, or on one line. */
const SAME_M = 0.01;

/**
 * Whether the places of the pins on the ice can fix a view at all, whatever was clicked: four different places, and
 * not all, nor all but one, on one line. Null when they can.
 */
export const refusalByPlaces = (
  pins: readonly Pin[],
): { reason: Refusal; pins: readonly string[]; placeCount: number } | null => {
  const places: IcePoint[] = [];
  const repeated: string[] = [];
  for (const pin of pins) {
    if (places.some(place => distanceM(place, pin.iceM) < SAME_M)) repeated.push(pin.id);
    else places.push(pin.iceM);
  }
  const placeCount = places.length;
  if (pins.length < NEEDED_PLACES) return { reason: 'tooFew', pins: pins.map(pin => pin.id), placeCount };
  if (placeCount < NEEDED_PLACES) return { reason: 'samePlace', pins: repeated, placeCount };
  for (let i = 0; i < placeCount; i++) {
    for (let j = i + 1; j < placeCount; j++) {
      const isOnLine = (point: IcePoint) => offLineM(point, places[i]!, places[j]!) < SAME_M;
      if (places.filter(isOnLine).length < placeCount - 1) continue;
      const onLine = pins.filter(pin => isOnLine(pin.iceM)).map(pin => pin.id);
      return { reason: 'onOneLine', pins: onLine, placeCount };
    }
  }
  return null;
};

const distanceM = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);

const offLineM = (point: IcePoint, a: IcePoint, b: IcePoint): number =>
  Math.abs((b.xM - a.xM) * (point.yM - a.yM) - (b.yM - a.yM) * (point.xM - a.xM)) / distanceM(a, b);
