import {
  type Carry,
  carryPins,
  ellipseOf,
  iceFromFilm,
  type LensTerm,
  lensTermOf,
  type Random,
  randomOf,
  type TrackedStretch,
} from '@icewright/engine';
import { iceInView } from './ice-in-view.ts';
import { PINS, pinsOf, startsOf } from './pins-from-truth.ts';
import type { FilmTruth, TruthFrame } from './truth-file.ts';

/** How far placed points lie from the truth, metres, over the ice in view, and how many ellipses hold it. */
export interface Accuracy {
  readonly count: number;
  readonly medianM: number;
  readonly p95M: number;
  readonly worstM: number;
  /** Share of the 95 % ellipses that hold the truth, 0 to 1. */
  readonly heldShare: number;
  /** Half the longer axis of the 95 % ellipse, median, metres. */
  readonly reachM: number;
  /** Pictures to which nothing was carried, by reason. */
  readonly lost: Readonly<Record<string, number>>;
}

export interface CarryReport {
  readonly lens: LensTerm;
  readonly keyCount: number;
  readonly losses: readonly { readonly frameIndex: number; readonly because: string }[];
  /** The picture pinned itself: 12 landmarks clicked 1 px off. */
  readonly pinned: Accuracy;
  /** Drift alone: every landmark in view pinned exactly. */
  readonly drift: readonly { readonly afterS: number; readonly accuracy: Accuracy }[];
  /** The same from 12 landmarks clicked 1 px off. */
  readonly clicked: readonly { readonly afterS: number; readonly accuracy: Accuracy }[];
  /** Midway between two pictures ten seconds apart, both pinned by 12 landmarks clicked 1 px off. */
  readonly between: Accuracy;
}

const AFTER_S = [1, 5, 10] as const;
/** Truth is written with so much rounding. */
const EXACT_PX = 0.05;

/** Pins pictures with truth, about one a second, carries them both ways and compares with the truth. */
export const measureCarry = (stretch: TrackedStretch, truth: FilmTruth, seed: number): CarryReport => {
  const lens = lensTermOf(stretch);
  const random = randomOf(seed);
  const starts = startsOf(truth);
  const pinnedWith = (frame: TruthFrame, clickPx: number, most: number): Carry =>
    carryPins(stretch, lens, [
      { frameIndex: frame.i, pins: pinsOf(truth, frame, clickPx, most, random), clickSdPx: clickPx },
    ]);
  const exact = starts.map(frame => pinnedWith(frame, EXACT_PX, 999));
  // Chance clicks need many draws before a share of held ellipses says anything.
  const enough = starts
    .filter(({ landmarks }) => Object.keys(landmarks).length >= PINS)
    .flatMap(frame => Array.from({ length: DRAWS }, () => frame));
  const clicked = enough.map(frame => pinnedWith(frame, 1, PINS));
  const over = (from: readonly TruthFrame[], carries: readonly Carry[], afterS: number): Accuracy => {
    const tally = emptyTally();
    for (const [index, frame] of from.entries()) {
      for (const way of afterS === 0 ? [0] : [-1, 1]) {
        const there = frameAt(truth, frame.ptsS + way * afterS);
        if (there) addPicture(tally, carries[index]!, truth, there);
      }
    }
    return accuracyOf(tally);
  };
  return {
    lens,
    keyCount: stretch.frames.filter(({ isKey }) => isKey).length,
    losses: stretch.frames.flatMap(({ frameIndex, lost }) => (lost ? [{ frameIndex, because: lost }] : [])),
    pinned: over(enough, clicked, 0),
    drift: AFTER_S.map(afterS => ({ afterS, accuracy: over(starts, exact, afterS) })),
    clicked: AFTER_S.map(afterS => ({ afterS, accuracy: over(enough, clicked, afterS) })),
    between: betweenOf(stretch, lens, truth, enough, random),
  };
};

const betweenOf = (
  stretch: TrackedStretch,
  lens: LensTerm,
  truth: FilmTruth,
  starts: readonly TruthFrame[],
  random: Random,
): Accuracy => {
  const tally = emptyTally();
  for (const first of starts) {
    const [middle, second] = [5, 10].map(afterS => frameAt(truth, first.ptsS + afterS));
    if (!middle || !second || Object.keys(second.landmarks).length < PINS) continue;
    const pinned = [first, second].map(frame => ({
      frameIndex: frame.i,
      pins: pinsOf(truth, frame, 1, PINS, random),
      clickSdPx: 1,
    }));
    addPicture(tally, carryPins(stretch, lens, pinned), truth, middle);
  }
  return accuracyOf(tally);
};

const DRAWS = 8;

/** The picture with truth that is shown nearest to a time, when one is within a twentieth of a second. */
const frameAt = ({ frames }: FilmTruth, timeS: number): TruthFrame | undefined => {
  let best: TruthFrame | undefined;
  for (const frame of frames) {
    const missS = Math.abs(frame.ptsS - timeS);
    if (missS <= 0.05 && (best === undefined || missS < Math.abs(best.ptsS - timeS))) best = frame;
  }
  return best;
};

interface Tally {
  readonly missesM: number[];
  readonly reachesM: number[];
  held: number;
  readonly lost: Record<string, number>;
}

const emptyTally = (): Tally => ({ missesM: [], reachesM: [], held: 0, lost: {} });

const addPicture = (tally: Tally, carry: Carry, truth: FilmTruth, frame: TruthFrame): void => {
  const carried = carry.at(frame.i);
  if (carried.kind === 'none') {
    tally.lost[carried.reason] = (tally.lost[carried.reason] ?? 0) + 1;
    return;
  }
  for (const { atM, shownPx } of iceInView(truth, frame)) {
    const placed = iceFromFilm(carried.fit, shownPx, { footSdPx: 0 });
    if (placed.kind === 'none') {
      tally.lost[placed.reason] = (tally.lost[placed.reason] ?? 0) + 1;
      continue;
    }
    const [dx, dy] = [placed.atM.xM - atM.xM, placed.atM.yM - atM.yM];
    const { xxM2, xyM2, yyM2 } = placed.covM2;
    // 5.9915: 95 % of χ² with two degrees.
    const isHeld =
      (yyM2 * dx * dx - 2 * xyM2 * dx * dy + xxM2 * dy * dy) / (xxM2 * yyM2 - xyM2 * xyM2) <= 5.9915;
    tally.missesM.push(Math.hypot(dx, dy));
    tally.reachesM.push(ellipseOf(placed.covM2).semiMajorM);
    if (isHeld) tally.held++;
  }
};

const accuracyOf = ({ missesM, reachesM, held, lost }: Tally): Accuracy => {
  const sorted = [...missesM].sort((a, b) => a - b);
  const reaches = [...reachesM].sort((a, b) => a - b);
  const at = (values: readonly number[], share: number) =>
    values[Math.min(values.length - 1, Math.floor(share * values.length))] ?? Number.NaN;
  return {
    count: sorted.length,
    medianM: at(sorted, 0.5),
    p95M: at(sorted, 0.95),
    worstM: at(sorted, 1),
    heldShare: sorted.length > 0 ? held / sorted.length : Number.NaN,
    reachM: at(reaches, 0.5),
    lost,
  };
};
