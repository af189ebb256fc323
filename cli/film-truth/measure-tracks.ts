import {
  carriedFitsOf,
  type FoundWays,
  followedWay,
  type GreyPicture,
  type HandMark,
  lensTermOf,
  lookStrideCount,
  type PinFit,
  passingAt,
  randomOf,
  type SkaterFollower,
  skatePowerOf,
  skaterFollowerOf,
  type TrackedStretch,
} from '@icewright/engine';
import { PINS, pinsOf, startsOf } from './pins-from-truth.ts';
import type { FilmTruth, TruthSkater } from './truth-file.ts';

/** How true followed skaters are, with hands so far apart. */
export interface TrackAccuracy {
  readonly everyS: number;
  readonly skaterCount: number;
  readonly handCount: number;
  /** Frames with truth between hands, without those of the hands themselves. */
  readonly count: number;
  /** Share of them in which something is told. */
  readonly toldShare: number;
  readonly placeRmseM: number;
  readonly placeMedianM: number;
  readonly placeP95M: number;
  readonly speedRmseMps: number;
  /** Share of those told whose ± (95 %) holds the truth. */
  readonly placeHeldShare: number;
  readonly speedHeldShare: number;
}

/** Follows the skaters of a film with truth; pictures are handed on in order, then it reports. */
export interface TrackMeter {
  next(frameIndex: number, picture: GreyPicture): void;
  report(): readonly TrackAccuracy[];
}

/** Frames with pins lie about so far apart. */
const PINNED_EVERY_S = 5;
/** Clicks of pins and of feet miss by so much. */
const CLICK_PX = 1;

/**
 * Hands set each skater's feet every so many seconds where he is seen, a pixel off; the camera is tied by 12 pins a pixel off every five seconds, carried to
 * all frames. `only`: these skaters alone.
 */
export const trackMeterOf = (
  stretch: TrackedStretch,
  truth: FilmTruth,
  everyS: readonly number[],
  seed: number,
  only: readonly string[],
): TrackMeter => {
  const timeAt = timesOf(truth);
  const fitAt = fitsOf(stretch, truth, seed);
  const stride = lookStrideCount(1 / (timeAt(1) - timeAt(0)));
  const ids = [...new Set(truth.frames.flatMap(({ skaters = [] }) => skaters.map(({ id }) => id)))].filter(
    id => only.length === 0 || only.includes(id),
  );
  const followed = everyS.map(gapS => ({
    gapS,
    people: ids.flatMap(id => {
      const marks = handsOf(truth, id, gapS, seed, frame => fitAt(frame) !== null);
      return marks.length > 1 ? [{ id, marks, follower: skaterFollowerOf(marks, fitAt, POWER) }] : [];
    }),
  }));
  const hands = new Set(
    followed.flatMap(({ people }) =>
      people.flatMap(({ marks }) => marks.map(({ frameIndex }) => frameIndex)),
    ),
  );
  const looked: number[] = [];
  return {
    next: (frameIndex, picture) => {
      if (frameIndex % stride !== 0 && !hands.has(frameIndex)) return;
      looked.push(frameIndex);
      for (const { people } of followed) {
        for (const { follower } of people) follower.next(frameIndex, timeAt(frameIndex), picture);
      }
    },
    report: () =>
      followed.map(({ gapS, people }) => {
        const tally = emptyTally();
        const frames = looked.map(frameIndex => ({ frameIndex, timeS: timeAt(frameIndex) }));
        for (const person of people) addPerson(tally, person, truth, fitAt, frames);
        return accuracyOf(gapS, people, tally);
      }),
  };
};

/** Nothing is known of the level of a film's skaters. */
const POWER = skatePowerOf('collegeMen');

interface Person {
  readonly id: string;
  readonly marks: readonly HandMark[];
  readonly follower: SkaterFollower;
}

interface Tally {
  readonly missesM: number[];
  readonly speedMissesMps: number[];
  count: number;
  placeHeld: number;
  speedHeld: number;
}

const emptyTally = (): Tally => ({ missesM: [], speedMissesMps: [], count: 0, placeHeld: 0, speedHeld: 0 });

const addPerson = (
  tally: Tally,
  { id, marks, follower }: Person,
  { frames }: FilmTruth,
  fitAt: (frameIndex: number) => PinFit | null,
  looked: readonly { readonly frameIndex: number; readonly timeS: number }[],
): void => {
  const ways: readonly FoundWays[] = follower.end();
  const way = followedWay(ways, marks, fitAt, looked, POWER);
  const byHand = new Set(marks.map(({ frameIndex }) => frameIndex));
  const [fromS, toS] = [marks[0]!.timeS, marks[marks.length - 1]!.timeS];
  for (const { i, ptsS, skaters = [] } of frames) {
    const truth = skaters.find(one => one.id === id);
    if (!truth || truth.see === 'outside' || byHand.has(i) || ptsS < fromS || ptsS > toS) continue;
    tally.count++;
    const told = passingAt(way, ptsS);
    if (!told) continue;
    const missM = Math.hypot(told.atM.xM - truth.ice[0], told.atM.yM - truth.ice[1]);
    const missMps = Math.hypot(told.vxMps, told.vyMps) - Math.hypot(...truth.vel);
    tally.missesM.push(missM);
    tally.speedMissesMps.push(missMps);
    // 2.4477² = 5.9915: 95 % of χ² with two degrees.
    if (missM <= 2.4477 * told.sdM) tally.placeHeld++;
    if (Math.abs(missMps) <= 1.96 * told.sdMps) tally.speedHeld++;
  }
};

const accuracyOf = (everyS: number, people: readonly Person[], tally: Tally): TrackAccuracy => {
  const { missesM, speedMissesMps, count } = tally;
  const sorted = [...missesM].sort((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  const told = missesM.length;
  return {
    everyS,
    skaterCount: people.length,
    handCount: people.reduce((sum, { marks }) => sum + marks.length, 0),
    count,
    toldShare: told / count,
    placeRmseM: rms(missesM),
    placeMedianM: at(0.5),
    placeP95M: at(0.95),
    speedRmseMps: rms(speedMissesMps),
    placeHeldShare: tally.placeHeld / told,
    speedHeldShare: tally.speedHeld / told,
  };
};

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

const handsOf = (
  { frames }: FilmTruth,
  id: string,
  everyS: number,
  seed: number,
  isTied: (frameIndex: number) => boolean,
): HandMark[] => {
  // The same clicks whoever else is followed.
  const random = randomOf(seed + [...id].reduce((sum, letter) => 31 * sum + letter.charCodeAt(0), 0));
  const marks: HandMark[] = [];
  for (const { i, ptsS, skaters = [] } of frames) {
    const truth = skaters.find(one => one.id === id);
    const last = marks[marks.length - 1];
    if (!truth || !canBePlaced(truth) || !isTied(i)) continue;
    if (last && ptsS - last.timeS < everyS - 0.01) continue;
    const [xPx, yPx] = truth.foot;
    const footPx = { xPx: xPx + CLICK_PX * random.normal(), yPx: yPx + CLICK_PX * random.normal() };
    marks.push({ frameIndex: i, timeS: ptsS, footPx });
  }
  return marks;
};

const canBePlaced = ({ see, footSeen }: TruthSkater): boolean =>
  footSeen === true && (see === 'clear' || see === 'partly');

const fitsOf = (
  stretch: TrackedStretch,
  truth: FilmTruth,
  seed: number,
): ((frameIndex: number) => PinFit | null) => {
  const random = randomOf(seed);
  const pinned: Parameters<typeof carriedFitsOf>[2][number][] = [];
  let lastS = Number.NEGATIVE_INFINITY;
  for (const frame of startsOf(truth)) {
    if (frame.ptsS - lastS < PINNED_EVERY_S || Object.keys(frame.landmarks).length < PINS) continue;
    lastS = frame.ptsS;
    const pins = pinsOf(truth, frame, CLICK_PX, PINS, random);
    pinned.push({ frameIndex: frame.i, pins, clickSdPx: CLICK_PX });
  }
  return carriedFitsOf(stretch, lensTermOf(stretch), pinned);
};

/** When each frame is shown: between frames with truth by even steps. */
const timesOf = ({ frames }: FilmTruth): ((frameIndex: number) => number) => {
  return frameIndex => {
    const next = Math.max(
      1,
      frames.findIndex(({ i }) => i >= frameIndex),
    );
    const after = frames[next] ?? frames[frames.length - 1]!;
    const before = frames[(frames[next] ? next : frames.length - 1) - 1] ?? after;
    if (after.i === before.i) return after.ptsS;
    return before.ptsS + ((frameIndex - before.i) * (after.ptsS - before.ptsS)) / (after.i - before.i);
  };
};
