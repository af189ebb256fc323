import type { GreyPicture } from './grey-picture.ts';

/** One picture of a pyramid; each is half as wide as the one before. Pixel i of it lies on pixel 2i of that. */
export interface PyramidLevel {
  readonly width: number;
  readonly height: number;
  readonly grey: Float32Array;
}

/**
 * A picture and its halves, finest first, blurred with 1 4 6 4 1 before each halving; edges are repeated. `levelCount` is a
 * whole number ≥ 1; fewer come back when the picture becomes narrower than 16 px. Source: Burt & Adelson 1983 (from memory).
 */
export const pyramidOf = (picture: GreyPicture, levelCount: number): PyramidLevel[] => {
  const { widthPx, heightPx, grey } = picture;
  if (grey.length < widthPx * heightPx) {
    throw new Error(`${widthPx} × ${heightPx} px need more than ${grey.length} values`);
  }
  const levels: PyramidLevel[] = [{ width: widthPx, height: heightPx, grey: new Float32Array(grey) }];
  while (levels.length < levelCount) {
    const last = levels[levels.length - 1]!;
    if (last.width < 32 || last.height < 32) break;
    levels.push(halved(last));
  }
  return levels;
};

const halved = ({ width, height, grey }: PyramidLevel): PyramidLevel => {
  const halfWidth = (width + 1) >> 1;
  const halfHeight = (height + 1) >> 1;
  const half = new Float32Array(halfWidth * halfHeight);
  // Two pixels repeated on each side, so that the inner loop asks nothing.
  const row = new Float32Array(width + 4);
  for (let y = 0; y < halfHeight; y++) {
    const at = (dy: number) => width * Math.min(height - 1, Math.max(0, 2 * y + dy));
    const [a, b, c, d, e] = [at(-2), at(-1), at(0), at(1), at(2)];
    for (let x = 0; x < width; x++) {
      row[x + 2] = grey[a + x]! + grey[e + x]! + 4 * (grey[b + x]! + grey[d + x]!) + 6 * grey[c + x]!;
    }
    row[0] = row[2]!;
    row[1] = row[2]!;
    row[width + 2] = row[width + 1]!;
    row[width + 3] = row[width + 1]!;
    for (let x = 0, i = 0; x < halfWidth; x++, i += 2) {
      half[y * halfWidth + x] =
        (row[i]! + row[i + 4]! + 4 * (row[i + 1]! + row[i + 3]!) + 6 * row[i + 2]!) / 256;
    }
  }
  return { width: halfWidth, height: halfHeight, grey: half };
};
