import { FULL_PAINT, SPOT_ALONE, SPOT_SHAPE } from './feature-rows.ts';
import type { PaintMaps } from './paint-maps.ts';

/** A small red patch that lies alone on the ice and has the shape of a disc seen aslant. */
export interface FoundSpot {
  readonly xPx: number;
  readonly yPx: number;
  /** Half its longer and shorter axis, pixels. */
  readonly halfLongPx: number;
  readonly halfShortPx: number;
  /** Direction of the longer one, radians, 0 to the right, towards down. */
  readonly tiltRad: number;
  readonly areaPx2: number;
}

/** Smaller ones cannot be told from noise; larger ones are no spots of a sheet seen whole. */
const LEAST_AREA_PX2 = 8;
const MOST_AREA_SHARE = 0.004;

/** Red spots of a picture, the largest first; none is an empty list. Source: our own rule, shape by second moments. */
export const findSpots = ({ red, blue, widthPx, heightPx }: PaintMaps): FoundSpot[] => {
  const seen = new Uint8Array(red.length);
  const spots: FoundSpot[] = [];
  const mostArea = MOST_AREA_SHARE * red.length;
  for (let start = 0; start < red.length; start++) {
    if (red[start]! < FULL_PAINT.value || seen[start] === 1) continue;
    const patch = patchFrom(start, red, seen, widthPx, heightPx);
    if (patch.length < LEAST_AREA_PX2 || patch.length > mostArea) continue;
    const spot = spotOf(patch, red, widthPx);
    if (spot !== null && isAlone(spot, red, blue, widthPx, heightPx)) spots.push(spot);
  }
  return spots.sort((a, b) => b.areaPx2 - a.areaPx2);
};

const patchFrom = (
  start: number,
  red: Float32Array,
  seen: Uint8Array,
  widthPx: number,
  heightPx: number,
): number[] => {
  const patch = [start];
  seen[start] = 1;
  for (let at = 0; at < patch.length; at++) {
    const x = patch[at]! % widthPx;
    const y = (patch[at]! - x) / widthPx;
    for (let ny = Math.max(0, y - 1); ny <= Math.min(heightPx - 1, y + 1); ny++) {
      for (let nx = Math.max(0, x - 1); nx <= Math.min(widthPx - 1, x + 1); nx++) {
        const next = ny * widthPx + nx;
        if (seen[next] === 1 || red[next]! < FULL_PAINT.value) continue;
        seen[next] = 1;
        patch.push(next);
      }
    }
  }
  return patch;
};

const spotOf = (patch: readonly number[], red: Float32Array, widthPx: number): FoundSpot | null => {
  let [sum, xPx, yPx] = [0, 0, 0];
  for (const at of patch) {
    sum += red[at]!;
    xPx += red[at]! * ((at % widthPx) + 0.5);
    yPx += red[at]! * (Math.floor(at / widthPx) + 0.5);
  }
  xPx /= sum;
  yPx /= sum;
  let [xx, xy, yy] = [0, 0, 0];
  for (const at of patch) {
    const dx = (at % widthPx) + 0.5 - xPx;
    const dy = Math.floor(at / widthPx) + 0.5 - yPx;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  const mean = (xx + yy) / 2 / patch.length;
  const apart = Math.hypot((xx - yy) / 2, xy) / patch.length;
  // A full ellipse has a quarter of its half axis squared as its variance; a pixel adds a twelfth.
  const halfLongPx = 2 * Math.sqrt(mean + apart + 1 / 12);
  const halfShortPx = 2 * Math.sqrt(Math.max(0, mean - apart) + 1 / 12);
  const areaShare = patch.length / (Math.PI * halfLongPx * halfShortPx);
  const isLevel = xx >= yy;
  return areaShare >= SPOT_SHAPE.value && isLevel
    ? { xPx, yPx, halfLongPx, halfShortPx, tiltRad: Math.atan2(2 * xy, xx - yy) / 2, areaPx2: patch.length }
    : null;
};

/** Whether the ring round a spot, at twice its size, shows little paint: a jersey or a letter has more beside it. */
const isAlone = (
  { xPx, yPx, halfLongPx, halfShortPx }: FoundSpot,
  red: Float32Array,
  blue: Float32Array,
  widthPx: number,
  heightPx: number,
): boolean => {
  let bare = 0;
  for (let k = 0; k < RING; k++) {
    const rad = (2 * Math.PI * k) / RING;
    const x = Math.floor(xPx + Math.cos(rad) * (1.7 * halfLongPx + 2));
    const y = Math.floor(yPx + Math.sin(rad) * (1.7 * halfShortPx + 2));
    if (x < 0 || y < 0 || x >= widthPx || y >= heightPx) continue;
    const at = y * widthPx + x;
    if (red[at]! < FULL_PAINT.value / 2 && blue[at]! < FULL_PAINT.value / 3) bare++;
  }
  return bare >= SPOT_ALONE.value * RING;
};

const RING = 24;
