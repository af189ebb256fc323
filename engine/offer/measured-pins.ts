import { fitPinsOn } from '../film/sheet-that-fits.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import type { Rink } from '../rink/rink.ts';
import { type DrawnSheet, measurePin } from './measure-pin.ts';
import { OFFER_CLICK } from './offer-rows.ts';
import type { OfferedPin } from './offered-pin.ts';
import type { PaintMaps } from './paint-maps.ts';
import { discsOf, strokesOf } from './strokes.ts';
import { tellingPins } from './telling-pins.ts';
import { placesInView } from './view-reach.ts';

/**
 * The landmarks whose own markings are found where a map (ice in metres to a picture of half diagonal 1) draws them: measured, those that stray
 * from the rest left out, and of the others those that tell most about the ice in view. Points at the boards and goal posts are not
 * among them: what is painted ends there by what stands in front. Source: `measurePin`, `fitPins`.
 */
export const measuredPins = (
  rink: Rink,
  map: Float64Array,
  paint: PaintMaps,
  inside: Uint8Array,
): OfferedPin[] => {
  const { widthPx, heightPx } = paint;
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const filmFromIce = [0, 1, 2].flatMap(row =>
    [0, 1, 2].map(k =>
      row === 2
        ? map[6 + k]!
        : halfDiagonal * map[3 * row + k]! + (row === 0 ? widthPx / 2 : heightPx / 2) * map[6 + k]!,
    ),
  );
  const sheet: DrawnSheet = { strokes: strokesOf(rink), discs: discsOf(rink), filmFromIce };
  const pins = landmarksOf(rink).flatMap(({ id, atM }): OfferedPin[] => {
    if (ENDS_BY_WHAT_STANDS.test(id)) return [];
    const w = filmFromIce[6]! * atM.xM + filmFromIce[7]! * atM.yM + filmFromIce[8]!;
    if (!(w > 0)) return [];
    const xPx = (filmFromIce[0]! * atM.xM + filmFromIce[1]! * atM.yM + filmFromIce[2]!) / w;
    const yPx = (filmFromIce[3]! * atM.xM + filmFromIce[4]! * atM.yM + filmFromIce[5]!) / w;
    if (!(xPx >= 0 && yPx >= 0 && xPx < widthPx && yPx < heightPx)) return [];
    if (inside[Math.floor(yPx) * widthPx + Math.floor(xPx)] === 0) return [];
    const measured = measurePin(paint, sheet, atM, xPx, yPx);
    return measured === null
      ? []
      : [{ landmark: id, filmPx: { xPx: measured.xPx, yPx: measured.yPx }, sdPx: measured.sdPx }];
  });
  return tellingPins(rink, withoutStrays(rink, pins), map, placesInView(paint, inside), paint);
};

const ENDS_BY_WHAT_STANDS = /\.boards(?!Side)|goalPost|^goalLine/;

/** Without the one that lies farthest from the fit of all, as long as it is far from it. */
const withoutStrays = (rink: Rink, pins: readonly OfferedPin[]): OfferedPin[] => {
  let kept = [...pins];
  while (kept.length > LEAST_TO_JUDGE) {
    const named = kept.map(({ landmark, filmPx }) => ({ id: landmark, landmark, filmPx }));
    const result = fitPinsOn(rink, named, OFFER_CLICK.value);
    if (result.kind === 'refused') break;
    const { residuals } = result.fit;
    const sizes = residuals.map(({ byPx }) => byPx).sort((a, b) => a - b);
    const worst = residuals.reduce((most, one) => (one.byPx > most.byPx ? one : most));
    if (worst.byPx < Math.max(STRAY_PX, STRAY_TIMES * sizes[sizes.length >> 1]!)) break;
    kept = kept.filter(({ landmark }) => landmark !== worst.pin);
  }
  return kept;
};

const LEAST_TO_JUDGE = 6;
const STRAY_PX = 1;
const STRAY_TIMES = 4;
