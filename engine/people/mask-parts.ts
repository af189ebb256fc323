/** The parts of a mask whose pixels hang together by their sides. */
export interface MaskParts {
  /** For each pixel its part, 0 for none. */
  readonly of: Int32Array;
  /** By part, from 1 on: how many pixels it has, and the middle of the rectangle about it. */
  readonly parts: readonly MaskPart[];
}

interface MaskPart {
  readonly count: number;
  readonly middleX: number;
  readonly middleY: number;
}

/** The parts of a mask of so many pixels in which it has one value. */
export const maskPartsOf = (mask: Uint8Array, width: number, height: number, value: number): MaskParts => {
  const of = new Int32Array(width * height);
  const parts: MaskPart[] = [{ count: 0, middleX: 0, middleY: 0 }];
  const waiting = new Int32Array(width * height);
  for (let start = 0; start < mask.length; start++) {
    if (mask[start] !== value || of[start] !== 0) continue;
    const id = parts.length;
    let [count, top] = [0, 1];
    let [left, right, upper, lower] = [width, 0, height, 0];
    waiting[0] = start;
    of[start] = id;
    const add = (at: number) => {
      if (mask[at] !== value || of[at] !== 0) return;
      of[at] = id;
      waiting[top++] = at;
    };
    while (top > 0) {
      const at = waiting[--top]!;
      count++;
      const x = at % width;
      const y = (at - x) / width;
      left = Math.min(left, x);
      right = Math.max(right, x);
      upper = Math.min(upper, y);
      lower = Math.max(lower, y);
      if (x > 0) add(at - 1);
      if (x < width - 1) add(at + 1);
      if (y > 0) add(at - width);
      if (y < height - 1) add(at + width);
    }
    parts.push({ count, middleX: (left + right) / 2, middleY: (upper + lower) / 2 });
  }
  return { of, parts };
};
