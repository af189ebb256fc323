import {
  type ColourPicture,
  type FoundPerson,
  findPeople,
  fitPins,
  type PinFit,
  type Rink,
  randomOf,
  rinkOfSize,
  straightOf,
} from '@icewright/engine';
import { PINS, pinsOf, startsOf } from './pins-from-truth.ts';
import type { FilmTruth, TruthFrame, TruthSkater } from './truth-file.ts';

/** How well people are found in single pictures. */
export interface PeopleAccuracy {
  readonly pictureCount: number;
  readonly foundCount: number;
  /** Share of those found who are somebody, and share of those in clear view who are found. */
  readonly precision: number;
  readonly recall: number;
  readonly footMedianM: number;
  readonly footP95M: number;
  /** Share whose 95 % ellipse holds the truth. */
  readonly heldShare: number;
  /** Share of those in a group who wear what most of it wear, and share of those found whose dress told a group. */
  readonly groupedShare: number;
  readonly letteredShare: number;
}

/** Finds people in pictures of a film with truth; pictures are handed on in any order, then it reports. */
export interface PeopleMeter {
  /** The pictures that are wanted: about one a second. */
  readonly wanted: ReadonlySet<number>;
  next(frameIndex: number, picture: ColourPicture): void;
  report(): PeopleAccuracy;
}

/** Each picture is tied by 12 pins a pixel off; the lens, where there is one, is taken as known. */
export const peopleMeterOf = (truth: FilmTruth, seed: number, untilS: number): PeopleMeter => {
  const frames = startsOf(truth).filter(({ skaters, ptsS }) => skaters !== undefined && ptsS <= untilS);
  const random = randomOf(seed);
  const fits = new Map(frames.map(frame => [frame.i, fitOf(truth, frame, random)]));
  const rink = rinkOfSize(truth.rink);
  const tally = {
    found: 0,
    real: 0,
    seen: 0,
    seenFound: 0,
    held: 0,
    grouped: 0,
    lettered: 0,
    pictures: 0,
    missesM: [] as number[],
  };
  return {
    wanted: new Set(frames.map(({ i }) => i)),
    next: (frameIndex, picture) => {
      const frame = frames.find(({ i }) => i === frameIndex);
      const fit = fits.get(frameIndex);
      if (!frame || !fit) return;
      tally.pictures++;
      const found = peopleIn(picture, fit, rink);
      const pairs = pairedWith(found, frame.skaters!);
      tally.found += found.length;
      tally.real += pairs.length;
      for (const { missM, isHeld } of pairs) {
        tally.missesM.push(missM);
        if (isHeld) tally.held++;
      }
      const hit = new Set(pairs.map(({ skater }) => skater.id));
      const inView = frame.skaters!.filter(
        one => one.footSeen && (one.see === 'clear' || one.see === 'partly'),
      );
      tally.seen += inView.length;
      tally.seenFound += inView.filter(({ id }) => hit.has(id)).length;
      const lettered = pairs.filter(({ person }) => person.group !== null);
      tally.lettered += lettered.length;
      tally.grouped += groupedCount(lettered);
    },
    report: () => {
      const missesM = tally.missesM.sort((a, b) => a - b);
      const at = (share: number) =>
        missesM[Math.min(missesM.length - 1, Math.floor(share * missesM.length))] ?? Number.NaN;
      return {
        pictureCount: tally.pictures,
        foundCount: tally.found,
        precision: tally.real / tally.found,
        recall: tally.seenFound / tally.seen,
        footMedianM: at(0.5),
        footP95M: at(0.95),
        heldShare: tally.held / tally.real,
        groupedShare: tally.grouped / tally.lettered,
        letteredShare: tally.lettered / tally.real,
      };
    },
  };
};

const fitOf = (truth: FilmTruth, frame: TruthFrame, random: ReturnType<typeof randomOf>): PinFit | null => {
  const { width, height } = truth.picture;
  const lens = { k1: truth.lens.k1, widthPx: width, heightPx: height };
  const pins = pinsOf(truth, frame, CLICK_PX, PINS, random);
  const straight = pins.map(pin => ({ ...pin, filmPx: straightOf(lens, pin.filmPx) }));
  const fitted = fitPins(straight, CLICK_PX);
  if (fitted.kind !== 'fit') return null;
  return lens.k1 === 0 ? fitted.fit : { ...fitted.fit, lens };
};
const CLICK_PX = 1;

const peopleIn = (picture: ColourPicture, fit: PinFit, rink: Rink): readonly FoundPerson[] => {
  const found = findPeople(picture, fit, rink);
  return 'kind' in found ? [] : found;
};

interface Paired {
  readonly skater: TruthSkater;
  readonly person: FoundPerson;
  readonly missM: number;
  readonly isHeld: boolean;
}

/** The nearest first, each once. */
const pairedWith = (found: readonly FoundPerson[], skaters: readonly TruthSkater[]): Paired[] => {
  const all = found.flatMap(person =>
    skaters.map((skater): Paired => {
      const { atM, covM2 } = person.placement;
      const [dx, dy] = [atM.xM - skater.ice[0], atM.yM - skater.ice[1]];
      const determinant = covM2.xxM2 * covM2.yyM2 - covM2.xyM2 ** 2;
      const away = (covM2.yyM2 * dx * dx - 2 * covM2.xyM2 * dx * dy + covM2.xxM2 * dy * dy) / determinant;
      // 5.9915: 95 % of χ² with two degrees.
      return { skater, person, missM: Math.hypot(dx, dy), isHeld: away <= 5.9915 };
    }),
  );
  const taken = new Set<unknown>();
  return all
    .filter(({ missM }) => missM < SAME_M)
    .sort((a, b) => a.missM - b.missM)
    .filter(({ skater, person }) => {
      if (taken.has(skater) || taken.has(person)) return false;
      taken.add(skater).add(person);
      return true;
    });
};
/** Further off he is somebody else, or nobody. */
const SAME_M = 1.2;

/** The truth’s ids begin with the team. */
const groupedCount = (pairs: readonly Paired[]): number => {
  let sum = 0;
  for (const group of new Set(pairs.map(({ person }) => person.group))) {
    const teams = pairs.filter(({ person }) => person.group === group).map(({ skater }) => skater.id[0]);
    sum += Math.max(...[...new Set(teams)].map(team => teams.filter(one => one === team).length));
  }
  return sum;
};
