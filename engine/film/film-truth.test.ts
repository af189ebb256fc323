import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Random, randomOf } from '../random/random.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import { drawnAt } from './camera.reference.ts';
import { ellipseOf } from './ellipse.ts';
import { fitPins } from './fit-pins.ts';
import { iceFromFilm } from './ice-from-film.ts';
import { distanceBetween } from './measure.ts';
import { holds, pickedOf, TEST_RINK, theFit } from './pinned-view.reference.ts';
import type { Matrix3, Pin, PinFit } from './pins.ts';

/** Drawn plays with known positions: fixtures/film-truth/README.md. */
interface Truth {
  readonly rink: { readonly landmarksM: Readonly<Record<string, readonly [number, number]>> };
  readonly frames: readonly {
    readonly i: number;
    readonly H: readonly (readonly number[])[];
    readonly landmarks: Readonly<Record<string, readonly [number, number]>>;
    readonly skaters: readonly {
      readonly id: string;
      readonly ice: readonly [number, number];
      readonly foot: readonly [number, number];
      readonly footSeen?: boolean;
      readonly see: 'clear' | 'partly' | 'hidden' | 'outside';
    }[];
  }[];
}
type Frame = Truth['frames'][number];

const truthOf = (film: 'A' | 'B'): Truth =>
  JSON.parse(readFileSync(new URL(`../../fixtures/film-truth/${film}.json`, import.meta.url), 'utf8'));

const A = truthOf('A');
const B = truthOf('B');

/** Pins on `count` landmarks of the frame, spread by chance, each clicked `noisePx` off per axis. */
const pinsOf = (truth: Truth, frame: Frame, random: Random, count: number, noisePx: number): Pin[] =>
  pickedOf(random, Object.keys(frame.landmarks), count).map(id => {
    const [xM, yM] = truth.rink.landmarksM[id]!;
    const [xPx, yPx] = frame.landmarks[id]!;
    return {
      id,
      iceM: { xM, yM },
      filmPx: { xPx: xPx + noisePx * random.normal(), yPx: yPx + noisePx * random.normal() },
    };
  });

const seen = (frame: Frame) =>
  frame.skaters.filter(({ see, footSeen }) => see !== 'outside' && footSeen === true);

/** Misses of the placed feet, metres, and in how many the truth is inside the 95 % ellipse. */
const missesOf = (truth: Truth, frames: readonly Frame[], seed: number, rounds: number, footPx: number) => {
  const random = randomOf(seed);
  const missesM: number[] = [];
  let held = 0;
  for (const frame of frames) {
    for (let round = 0; round < rounds; round++) {
      const result = fitPins(pinsOf(truth, frame, random, 12, 1), 1);
      if (result.kind === 'refused') continue;
      for (const { ice, foot } of seen(frame)) {
        const px = { xPx: foot[0] + footPx * random.normal(), yPx: foot[1] + footPx * random.normal() };
        const placed = iceFromFilm(result.fit, px, { footSdPx: footPx });
        if (placed.kind === 'none') continue;
        const [dx, dy] = [placed.atM.xM - ice[0], placed.atM.yM - ice[1]];
        missesM.push(Math.hypot(dx, dy));
        if (holds(placed.covM2, dx, dy)) held++;
      }
    }
  }
  missesM.sort((a, b) => a - b);
  const at = (share: number) => missesM[Math.floor(share * missesM.length)]!;
  return { medianM: at(0.5), p95M: at(0.95), held: held / missesM.length, count: missesM.length };
};

describe('our landmarks are those of the films', () => {
  it('each named landmark lies where the truth has it, within 1 mm', () => {
    const ours = new Map(landmarksOf(TEST_RINK).map(({ id, atM }) => [id, atM]));
    const shared = Object.entries(A.rink.landmarksM).filter(([id]) => ours.has(id));
    expect(shared.length).toBeGreaterThan(60);
    for (const [id, [xM, yM]] of shared) {
      const atM = ours.get(id)!;
      expect(Math.hypot(atM.xM - xM, atM.yM - yM), id).toBeLessThan(1e-3);
    }
  });

  it('the true matrix draws the feet where they are', () => {
    for (const { H, skaters } of B.frames) {
      for (const { ice, foot } of skaters) {
        const drawn = drawnAt(H.flat() as unknown as Matrix3, { xM: ice[0], yM: ice[1] });
        if (drawn !== null) expect(Math.hypot(drawn.xPx - foot[0], drawn.yPx - foot[1])).toBeLessThan(1);
      }
    }
  });
});

// Bar: 12 pins with 1 px click noise, median ≤ 0.10 m, p95 ≤ 0.35 m, ellipses 93–97 %.
describe('12 pins clicked 1 px off', () => {
  it('place the skaters of the fixed wide view', () => {
    const misses = missesOf(A, A.frames, 11, 40, 0);
    expect(misses.count).toBeGreaterThan(3000);
    expect(misses.medianM).toBeLessThanOrEqual(0.1);
    expect(misses.p95M).toBeLessThanOrEqual(0.35);
    expect(misses.held).toBeGreaterThan(0.93);
    expect(misses.held).toBeLessThan(0.97);
  });

  it('place those of the panning view where a frame shows 12 landmarks', () => {
    const frames = B.frames.filter(({ landmarks }) => Object.keys(landmarks).length >= 12);
    expect(frames.length).toBeGreaterThan(8);
    const misses = missesOf(B, frames, 12, 40, 0);
    expect(misses.medianM).toBeLessThanOrEqual(0.1);
    expect(misses.p95M).toBeLessThanOrEqual(0.35);
    expect(misses.held).toBeGreaterThan(0.93);
    expect(misses.held).toBeLessThan(0.97);
  });

  it('still hold the truth in their ellipses when the feet are clicked 2 px off', () => {
    const misses = missesOf(A, A.frames, 13, 40, 2);
    expect(misses.held).toBeGreaterThan(0.93);
    expect(misses.held).toBeLessThan(0.97);
  });
});

describe('ten landmarks of film A', () => {
  const spread = [
    'centreSpot',
    'neutralSpot+x+y',
    'neutralSpot-x-y',
    'endSpot+x+y',
    'endSpot-x+y',
    'endSpot+x-y',
    'blueLineInner+x.boards+y',
    'goalLine-x.boards+y',
    'goalPost+x-y',
    'centreLine.centreCircle-y',
  ];
  const fitOf = (frame: Frame): PinFit =>
    theFit(
      fitPins(
        spread.map(id => {
          const [xM, yM] = A.rink.landmarksM[id]!;
          const [xPx, yPx] = frame.landmarks[id]!;
          // A whole pixel is all that a click has.
          return { id, iceM: { xM, yM }, filmPx: { xPx: Math.round(xPx), yPx: Math.round(yPx) } };
        }),
        1,
      ),
    );

  it('place every visible skater within 0.4 m', () => {
    for (const frame of A.frames) {
      const fit = fitOf(frame);
      expect(fit.disagreement).toBeUndefined();
      for (const { id, ice, foot } of seen(frame)) {
        const placed = iceFromFilm(fit, { xPx: Math.round(foot[0]), yPx: Math.round(foot[1]) });
        if (placed.kind === 'none') throw new Error(`${id}: ${placed.reason}`);
        expect(Math.hypot(placed.atM.xM - ice[0], placed.atM.yM - ice[1]), id).toBeLessThan(0.4);
      }
    }
  });

  it('measure every gap within its ±: 95 % in at least 95 of 100', () => {
    let held = 0;
    let asked = 0;
    for (const frame of A.frames) {
      const fit = fitOf(frame);
      const feet = seen(frame);
      for (const [index, a] of feet.entries()) {
        for (const b of feet.slice(index + 1)) {
          const trueM = Math.hypot(a.ice[0] - b.ice[0], a.ice[1] - b.ice[1]);
          const round = (foot: readonly [number, number]) => ({
            xPx: Math.round(foot[0]),
            yPx: Math.round(foot[1]),
          });
          const measured = distanceBetween(fit, round(a.foot), round(b.foot));
          if (measured.kind === 'none') throw new Error(measured.reason);
          asked++;
          if (Math.abs(measured.lengthM.value - trueM) <= 1.96 * measured.lengthM.sd) held++;
        }
      }
    }
    expect(asked).toBeGreaterThan(500);
    expect(held / asked).toBeGreaterThanOrEqual(0.95);
  });
});

// Bar: with one blue line and the centre circle in view, an answer with honest ±, or a refusal; never a confident wrong one.
describe('few markings: one blue line and the centre circle', () => {
  const few = [
    'blueLineInner+x.boards+y',
    'blueLineOuter+x.boards+y',
    'centreSpot',
    'centreLine.centreCircle+y',
    'centreLine.centreCircle-y',
    'centreLine.boards+y',
    'neutralSpot+x-y',
  ];

  it('hold the truth in 93 to 97 of 100 of the ellipses they give, wide as those are', () => {
    const random = randomOf(17);
    let held = 0;
    let asked = 0;
    const reachesM: number[] = [];
    for (const frame of A.frames) {
      for (let round = 0; round < 60; round++) {
        const pins = few.map(id => {
          const [xM, yM] = A.rink.landmarksM[id]!;
          const [xPx, yPx] = frame.landmarks[id]!;
          return {
            id,
            iceM: { xM, yM },
            filmPx: { xPx: xPx + random.normal(), yPx: yPx + random.normal() },
          };
        });
        const result = fitPins(pins, 1);
        if (result.kind === 'refused') continue;
        for (const { ice, foot } of seen(frame)) {
          const placed = iceFromFilm(result.fit, { xPx: foot[0], yPx: foot[1] }, { footSdPx: 0 });
          if (placed.kind === 'none') continue;
          const [dx, dy] = [placed.atM.xM - ice[0], placed.atM.yM - ice[1]];
          asked++;
          if (holds(placed.covM2, dx, dy)) held++;
          reachesM.push(ellipseOf(placed.covM2).semiMajorM);
        }
      }
    }
    expect(asked).toBeGreaterThan(2000);
    expect(held / asked).toBeGreaterThan(0.93);
    expect(held / asked).toBeLessThan(0.97);
    // Far from the pins the answer says itself that it is worth little.
    expect(Math.max(...reachesM)).toBeGreaterThan(1);
  });
});
