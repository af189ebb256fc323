import { type Followed, followPatches } from './follow-patches.ts';
import type { PicturePoints } from './grey-picture.ts';
import { patchesOf } from './patches.ts';
import type { PyramidLevel } from './pyramid.ts';

/**
 * Follows points from one picture to another and back, pixels of the shown picture: a point counts as found only when the way
 * back ends within `returnPx` (> 0) of where it began. `guess` is where they are thought to be, by default where they were;
 * `leastStrength` (≥ 0) as `patchesOf`. Source: Kalal, Mikolajczyk & Matas 2010, Forward-Backward Error (from memory).
 */
export const followPoints = (
  from: readonly PyramidLevel[],
  to: readonly PyramidLevel[],
  points: PicturePoints,
  returnPx: number,
  leastStrength: number,
  guess: PicturePoints = points,
): Followed => {
  const there = followPatches(patchesOf(from, points, leastStrength), to, guess);
  // The way back begins as far off as the way there did.
  const backGuess = {
    xPx: there.xPx.map((x, i) => x + points.xPx[i]! - guess.xPx[i]!),
    yPx: there.yPx.map((y, i) => y + points.yPx[i]! - guess.yPx[i]!),
  };
  const back = followPatches(patchesOf(to, there, leastStrength), from, backGuess);
  const found = there.found.map((isFound, i) => {
    const missPx = Math.hypot(back.xPx[i]! - points.xPx[i]!, back.yPx[i]! - points.yPx[i]!);
    return isFound === 1 && back.found[i] === 1 && missPx <= returnPx ? 1 : 0;
  });
  return { ...there, found };
};
