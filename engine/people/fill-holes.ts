/** A rectangle of pixels; right and bottom are the first beyond it. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Sets to 1, in place, what is 0 in a box of a mask of so many pixels a row, and shut in by 1: what the box’s edge cannot be reached from. */
export const fillHoles = (mask: Uint8Array, widthPx: number, { left, right, top, bottom }: Box): void => {
  const [across, down] = [right - left, bottom - top];
  if (across < 3 || down < 3) return;
  const isOpen = new Uint8Array(across * down);
  const waiting: number[] = [];
  const open = (x: number, y: number): void => {
    const at = y * across + x;
    if (isOpen[at] === 1 || mask[(y + top) * widthPx + x + left] === 1) return;
    isOpen[at] = 1;
    waiting.push(at);
  };
  for (let x = 0; x < across; x++) for (const y of [0, down - 1]) open(x, y);
  for (let y = 0; y < down; y++) for (const x of [0, across - 1]) open(x, y);
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    const x = at % across;
    const y = (at - x) / across;
    if (x > 0) open(x - 1, y);
    if (x < across - 1) open(x + 1, y);
    if (y > 0) open(x, y - 1);
    if (y < down - 1) open(x, y + 1);
  }
  for (let at = 0; at < isOpen.length; at++) {
    if (isOpen[at] === 1) continue;
    const x = at % across;
    mask[((at - x) / across + top) * widthPx + x + left] = 1;
  }
};
