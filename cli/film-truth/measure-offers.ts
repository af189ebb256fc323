import {
  iceFromFilm,
  landmarksOf,
  offerPins,
  type PinFit,
  type Rink,
  type RinkPreset,
  rinkOf,
} from '@icewright/engine';
import { iceInView } from './ice-in-view.ts';
import type { FilmTruth, TruthFrame } from './truth-file.ts';

/** How true offered pins are on some pictures of a film. */
export interface OfferAccuracy {
  readonly count: number;
  readonly offered: number;
  /** Offered, and the middle one of all places of the ice in view within half a metre of the truth. */
  readonly within: number;
  /** Offered, and farther off: confidently wrong. Their pictures. */
  readonly wrong: readonly number[];
  /** Pictures for which nothing was offered, by reason. */
  readonly refused: Readonly<Record<string, number>>;
  /** Offered ones by how the ends were told; `open` leaves it to the coach and counts as told by him. */
  readonly ends: Readonly<Record<string, number>>;
  /** Of those offered: the middle picture's middle miss, and the 95th in 100 of all misses, metres. */
  readonly medianM: number;
  readonly p95M: number;
  readonly perPictureMs: number;
}

export interface OfferMeter {
  readonly next: (frameIndex: number, rgba: Uint8Array, widthPx: number, heightPx: number) => void;
  /** Even samples were looked at while thresholds were chosen, on the films that the fixtures show; odd ones were not. */
  readonly report: () => OfferReport;
}

export interface OfferReport {
  readonly even: OfferAccuracy;
  readonly odd: OfferAccuracy;
}

/** The pictures with truth, at least `every` apart. */
export const offerSamples = ({ frames }: FilmTruth, every: number): TruthFrame[] => {
  const samples: TruthFrame[] = [];
  for (const frame of frames) {
    const last = samples[samples.length - 1];
    if (last === undefined || frame.i - last.i >= every) samples.push(frame);
  }
  return samples;
};

/** Takes the sampled pictures one by one, offers pins for each alone, and compares the fit of all of them with the truth. */
export const offerMeterOf = (truth: FilmTruth, samples: readonly TruthFrame[]): OfferMeter => {
  const rink = rinkOf({ preset: sheetOf(truth) });
  const tallies = [emptyTally(), emptyTally()] as const;
  return {
    next: (frameIndex, rgba, widthPx, heightPx) => {
      const rank = samples.findIndex(({ i }) => i === frameIndex);
      if (rank < 0) return;
      const tally = tallies[rank % 2]!;
      const beginMs = performance.now();
      const offer = offerPins({ widthPx, heightPx, rgba }, rink);
      tally.ms += performance.now() - beginMs;
      tally.count++;
      if (offer.kind === 'none') {
        tally.refused[offer.reason] = (tally.refused[offer.reason] ?? 0) + 1;
        return;
      }
      tally.ends[offer.ends] = (tally.ends[offer.ends] ?? 0) + 1;
      const asOffered = missesOf(truth, samples[rank]!, offer.fit, 1);
      const turned = missesOf(truth, samples[rank]!, offer.fit, -1);
      const misses = offer.ends === 'open' && middleOf(turned) < middleOf(asOffered) ? turned : asOffered;
      tally.misses.push(...misses);
      tally.middles.push(middleOf(misses));
      if (!(middleOf(misses) <= NEAR_M)) tally.wrong.push(frameIndex);
    },
    report: () => ({ even: accuracyOf(tallies[0]), odd: accuracyOf(tallies[1]) }),
  };
};

const NEAR_M = 0.5;

interface Tally {
  count: number;
  ms: number;
  readonly wrong: number[];
  readonly misses: number[];
  readonly middles: number[];
  readonly refused: Record<string, number>;
  readonly ends: Record<string, number>;
}

const emptyTally = (): Tally => ({
  count: 0,
  ms: 0,
  wrong: [],
  misses: [],
  middles: [],
  refused: {},
  ends: {},
});

const accuracyOf = ({ count, ms, wrong, misses, middles, refused, ends }: Tally): OfferAccuracy => ({
  count,
  offered: middles.length,
  within: middles.length - wrong.length,
  wrong,
  refused,
  ends,
  medianM: middleOf(middles),
  p95M: [...misses].sort((a, b) => a - b)[Math.floor(0.95 * misses.length)] ?? Number.NaN,
  perPictureMs: ms / Math.max(1, count),
});

/** How far every place in view is put from where it is, metres; `sign` −1 for the sheet turned by half. */
const missesOf = (truth: FilmTruth, frame: TruthFrame, fit: PinFit, sign: number): number[] =>
  iceInView(truth, frame).map(({ atM, shownPx }) => {
    const placed = iceFromFilm(fit, shownPx, { footSdPx: 0 });
    return placed.kind === 'placed'
      ? Math.hypot(sign * placed.atM.xM - atM.xM, sign * placed.atM.yM - atM.yM)
      : Number.POSITIVE_INFINITY;
  });

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** The named sheet whose landmarks lie where the truth has them. */
const sheetOf = ({ rink: { landmarksM } }: FilmTruth): RinkPreset => {
  const awayM = (rink: Rink): number =>
    Math.max(
      ...landmarksOf(rink).map(({ id, atM }) => {
        const known = landmarksM[id];
        return known === undefined ? 0 : Math.hypot(known[0] - atM.xM, known[1] - atM.yM);
      }),
    );
  const sheets = (['200x85ft', '60x30m', '60x26m', 'college200x100ft'] as const).map(preset => ({
    preset,
    byM: awayM(rinkOf({ preset })),
  }));
  return sheets.sort((a, b) => a.byM - b.byM)[0]!.preset;
};
