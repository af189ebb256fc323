import { BEYOND_HANDS, type FoundWays, type HandMark } from '@icewright/engine';

/** Between two hands, or beyond the first or the last: the frames in which a skater is looked for. */
export interface HandGap {
  readonly from: HandMark | null;
  readonly to: HandMark | null;
  readonly fromFrame: number;
  readonly toFrame: number;
}

/** The gaps of a skater's hands (in order of time) within the frames of a stretch; `times` tells when each frame is shown, seconds. */
export const handGaps = (
  marks: readonly HandMark[],
  stretch: { readonly fromFrame: number; readonly toFrame: number },
  timesS: ArrayLike<number>,
): HandGap[] => {
  const gaps: HandGap[] = [];
  for (let i = 0; i <= marks.length; i++) {
    const [from, to] = [marks[i - 1] ?? null, marks[i] ?? null];
    if (!from && !to) continue;
    let fromFrame = from?.frameIndex ?? to!.frameIndex;
    let toFrame = to?.frameIndex ?? from!.frameIndex;
    while (!from && fromFrame > stretch.fromFrame && to!.timeS - timesS[fromFrame - 1]! <= BEYOND_HANDS.value)
      fromFrame--;
    while (!to && toFrame < stretch.toFrame && timesS[toFrame + 1]! - from!.timeS <= BEYOND_HANDS.value)
      toFrame++;
    if (toFrame > fromFrame) gaps.push({ from, to, fromFrame, toFrame });
  }
  return gaps;
};

/** Two gaps with the same hands at their ends say the same. */
export const gapKey = ({ from, to }: Pick<FoundWays, 'from' | 'to'>): string =>
  [from, to]
    .map(mark =>
      mark ? `${mark.frameIndex}:${mark.footPx.xPx.toFixed(2)},${mark.footPx.yPx.toFixed(2)}` : '-',
    )
    .join('|');
