import type { GreyPicture } from '../carry/grey-picture.ts';

/** A part of a picture in grey, kept at 1/`factor` of its size. */
export interface FrameCrop {
  readonly leftPx: number;
  readonly topPx: number;
  readonly factor: number;
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

/** What is to be kept: edges in pixels of the shown picture; what lies outside it is left away. */
export interface CropRect {
  readonly leftPx: number;
  readonly topPx: number;
  readonly rightPx: number;
  readonly bottomPx: number;
}

/** Cuts a part out of a picture, `factor` × `factor` pixels (whole number ≥ 1) made one by their mean. Null when none of it is in the picture. */
export const cropOf = (
  { widthPx, heightPx, grey }: GreyPicture,
  rect: CropRect,
  factor: number,
): FrameCrop | null => {
  const leftPx = Math.max(0, Math.floor(rect.leftPx));
  const topPx = Math.max(0, Math.floor(rect.topPx));
  const width = Math.floor((Math.min(widthPx, Math.ceil(rect.rightPx)) - leftPx) / factor);
  const height = Math.floor((Math.min(heightPx, Math.ceil(rect.bottomPx)) - topPx) / factor);
  if (!(width > 1 && height > 1)) return null;
  const kept = new Uint8Array(width * height);
  const area = factor * factor;
  for (let y = 0, to = 0; y < height; y++) {
    for (let x = 0; x < width; x++, to++) {
      const from = (topPx + y * factor) * widthPx + leftPx + x * factor;
      let sum = 0;
      for (let row = 0; row < factor; row++) {
        for (let column = 0; column < factor; column++) sum += grey[from + row * widthPx + column]!;
      }
      kept[to] = Math.round(sum / area);
    }
  }
  return { leftPx, topPx, factor, width, height, grey: kept };
};

/** Grey at a point of the shown picture, between its neighbours; not a number outside the crop. */
export const greyAt = (
  { leftPx, topPx, factor, width, height, grey }: FrameCrop,
  xPx: number,
  yPx: number,
): number => {
  const x = (xPx - leftPx) / factor - 0.5;
  const y = (yPx - topPx) / factor - 0.5;
  const left = Math.floor(x);
  const top = Math.floor(y);
  if (!(left >= 0 && top >= 0 && left < width - 1 && top < height - 1)) return Number.NaN;
  const [fx, fy] = [x - left, y - top];
  const at = top * width + left;
  const upper = grey[at]! * (1 - fx) + grey[at + 1]! * fx;
  const lower = grey[at + width]! * (1 - fx) + grey[at + width + 1]! * fx;
  return upper * (1 - fy) + lower * fy;
};
