import { describe, expect, it } from 'vitest';
import { randomOf } from '../random/random.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import { drawnAt } from './camera.reference.ts';
import { fitPins } from './fit-pins.ts';
import { filmFromIce, iceFromFilm } from './ice-from-film.ts';
import { pickedOf, somePinnedView, somePlaceInView, TEST_RINK, theFit } from './pinned-view.reference.ts';
import type { Pin } from './pins.ts';

const pinsOf = (points: readonly (readonly [number, number, number, number])[]): Pin[] =>
  points.map(([xM, yM, xPx, yPx], index) => ({ id: `p${index}`, iceM: { xM, yM }, filmPx: { xPx, yPx } }));

/** A view from straight above, 10 px a metre. */
const fromAbove = (points: readonly (readonly [number, number])[]): Pin[] =>
  pinsOf(points.map(([xM, yM]) => [xM, yM, 640 + 10 * xM, 360 - 10 * yM]));

describe('a picture tied to the ice', () => {
  it('finds a camera again from exact pins, on 200 random views', () => {
    const random = randomOf(1);
    let largestM = 0;
    for (let view = 0; view < 200; view++) {
      const pinned = somePinnedView(random, 4 + random.below(9), 0);
      const result = fitPins(pinned.pins, 0.01);
      if (result.kind === 'refused') continue;
      const atM = somePlaceInView(random, pinned);
      const placed = iceFromFilm(result.fit, drawnAt(pinned.filmFromIce, atM)!);
      if (placed.kind === 'none') continue;
      const sdM = Math.sqrt(placed.covM2.xxM2 + placed.covM2.yyM2);
      if (sdM > 1) continue;
      largestM = Math.max(largestM, Math.hypot(placed.atM.xM - atM.xM, placed.atM.yM - atM.yM));
      expect(result.fit.disagreement).toBeUndefined();
    }
    expect(largestM).toBeLessThan(1e-6);
  });

  it('goes to the picture and back', () => {
    const random = randomOf(2);
    for (let view = 0; view < 50; view++) {
      const pinned = somePinnedView(random, 10, 1);
      const fit = theFit(fitPins(pinned.pins, 1));
      const atM = somePlaceInView(random, pinned);
      const back = iceFromFilm(fit, filmFromIce(fit, atM)!);
      if (back.kind === 'none') throw new Error(back.reason);
      expect(Math.hypot(back.atM.xM - atM.xM, back.atM.yM - atM.yM)).toBeLessThan(1e-8);
    }
  });

  it('says the same of a sheet turned half round, and of a picture twice as large', () => {
    const random = randomOf(3);
    for (let view = 0; view < 30; view++) {
      const pinned = somePinnedView(random, 9, 1);
      const fit = theFit(fitPins(pinned.pins, 1));
      const px = drawnAt(pinned.filmFromIce, somePlaceInView(random, pinned))!;
      const placed = iceFromFilm(fit, px);
      const turned = pinned.pins.map(pin => ({ ...pin, iceM: { xM: -pin.iceM.xM, yM: -pin.iceM.yM } }));
      const turnedAt = iceFromFilm(theFit(fitPins(turned, 1)), px);
      const larger = pinned.pins.map(pin => ({
        ...pin,
        filmPx: { xPx: 2 * pin.filmPx.xPx, yPx: 2 * pin.filmPx.yPx },
      }));
      const largerAt = iceFromFilm(
        theFit(fitPins(larger, 2)),
        { xPx: 2 * px.xPx, yPx: 2 * px.yPx },
        { footSdPx: 4 },
      );
      if (placed.kind === 'none' || turnedAt.kind === 'none' || largerAt.kind === 'none') {
        throw new Error('a point in view has a place');
      }
      expect(turnedAt.atM.xM).toBeCloseTo(-placed.atM.xM, 7);
      expect(turnedAt.atM.yM).toBeCloseTo(-placed.atM.yM, 7);
      expect(turnedAt.covM2.xyM2).toBeCloseTo(placed.covM2.xyM2, 7);
      expect(largerAt.atM.xM).toBeCloseTo(placed.atM.xM, 7);
      expect(largerAt.covM2.xxM2).toBeCloseTo(placed.covM2.xxM2, 7);
    }
  });

  it('has no place for a point of the sky, and none for ice behind the camera', () => {
    const pinned = somePinnedView(randomOf(4), 10, 0);
    const fit = theFit(fitPins(pinned.pins, 1));
    expect(iceFromFilm(fit, { xPx: 640, yPx: -3000 })).toEqual({ kind: 'none', reason: 'aboveHorizon' });
    expect(filmFromIce(fit, { xM: 0, yM: -400 })).toBeNull();
    // Down from the horizon the first places are too uncertain to be given.
    const m = fit.iceFromFilm;
    const horizonPx = -(m[6] * 640 + m[8]) / m[7];
    expect(iceFromFilm(fit, { xPx: 640, yPx: horizonPx + 0.01 })).toEqual({
      kind: 'none',
      reason: 'nearHorizon',
    });
  });
});

describe('pins that cannot tie a picture', () => {
  const corners = [
    [-10, -5],
    [10, -5],
    [10, 5],
    [-10, 5],
  ] as const;

  it.each([
    ['tooFew', fromAbove(corners.slice(0, 3)), ['p0', 'p1', 'p2']],
    ['tooFew', [], []],
    ['samePlace', fromAbove([corners[0], corners[1], corners[2], corners[2]]), ['p3']],
    ['onOneLine', fromAbove([...corners.slice(0, 2), [0, -5], [5, 8]]), ['p0', 'p1', 'p2']],
    [
      'mirrored',
      pinsOf(corners.map(([x, y]) => [x, y, 640 + 10 * x, 360 + 10 * y])),
      ['p0', 'p1', 'p2', 'p3'],
    ],
  ])('%s', (reason, pins, named) => {
    expect(fitPins(pins, 1)).toMatchObject({ kind: 'refused', reason, pins: named, neededCount: 4 });
  });

  it('refuses pins in one small corner for a loose click, and takes them for an exact one', () => {
    const close = fromAbove([
      [0, 0],
      [0.6, 0.1],
      [0.5, 0.7],
      [-0.1, 0.5],
    ]);
    expect(fitPins(close, 1)).toMatchObject({ kind: 'refused', reason: 'tinySpread' });
    expect(fitPins(close, 0.01).kind).toBe('fit');
  });

  it('refuses pins that are nearly on one line', () => {
    const nearly = fromAbove([
      [-20, 0],
      [-7, 0.15],
      [7, -0.15],
      [20, 0],
      [13, 0.1],
    ]);
    expect(fitPins(nearly, 1)).toMatchObject({ kind: 'refused', reason: 'tinySpread' });
  });

  it('refuses corners given crosswise: no camera sees them so', () => {
    const crosswise = pinsOf([
      [-10, -5, 540, 410],
      [10, -5, 740, 410],
      [10, 5, 540, 310],
      [-10, 5, 740, 310],
    ]);
    expect(fitPins(crosswise, 1)).toMatchObject({ kind: 'refused', reason: 'noSuchView' });
  });

  it('never gives a confident wrong answer on few pins: within its ± or refused', () => {
    const random = randomOf(5);
    let wrong = 0;
    let answered = 0;
    for (let view = 0; view < 600; view++) {
      const pinned = somePinnedView(random, 4, 1);
      const result = fitPins(pinned.pins, 1);
      if (result.kind === 'refused') continue;
      const atM = somePlaceInView(random, pinned);
      const placed = iceFromFilm(result.fit, drawnAt(pinned.filmFromIce, atM)!, { footSdPx: 0 });
      if (placed.kind === 'none') continue;
      answered++;
      const { xxM2, xyM2, yyM2 } = placed.covM2;
      const [dx, dy] = [placed.atM.xM - atM.xM, placed.atM.yM - atM.yM];
      const square = (yyM2 * dx * dx - 2 * xyM2 * dx * dy + xxM2 * dy * dy) / (xxM2 * yyM2 - xyM2 * xyM2);
      // χ² of 2 at 99.9 %.
      if (square > 13.8) wrong++;
    }
    expect(answered).toBeGreaterThan(200);
    expect(wrong / answered).toBeLessThan(0.02);
  });

  it('throws on a click without a standard deviation', () => {
    expect(() => fitPins(fromAbove(corners), 0)).toThrow();
  });
});

describe('the pin that disagrees', () => {
  it('is named in at least 98 of 100 views when it sits on the wrong landmark, and counted with its distance', () => {
    const random = randomOf(6);
    const landmarks = landmarksOf(TEST_RINK);
    let named = 0;
    let asked = 0;
    while (asked < 100) {
      const pinned = somePinnedView(random, 10, 1);
      const index = random.below(10);
      const other = pickedOf(random, landmarks, 1)[0]!;
      const pin = pinned.pins[index]!;
      const wrongBy = drawnAt(pinned.filmFromIce, other.atM);
      if (wrongBy === null) continue;
      const missPx = Math.hypot(wrongBy.xPx - pin.filmPx.xPx, wrongBy.yPx - pin.filmPx.yPx);
      if (missPx < 30 || missPx > 1500) continue;
      asked++;
      const pins = pinned.pins.map((each, i) => (i === index ? { ...each, iceM: other.atM } : each));
      const result = fitPins(pins, 1);
      // A pin so far off may also make the view impossible; then it is refused, not believed.
      const disagreement = result.kind === 'fit' ? result.fit.disagreement : undefined;
      if (result.kind === 'refused') named++;
      if (disagreement?.kind === 'onePin' && disagreement.pin === pin.id) {
        named++;
        expect(Math.abs(disagreement.byPx / missPx - 1)).toBeLessThan(0.6);
      }
    }
    expect(named).toBeGreaterThanOrEqual(98);
  });

  it('is seldom named when all are right: about 1 in 100', () => {
    const random = randomOf(7);
    let alarms = 0;
    for (let view = 0; view < 1500; view++) {
      const { pins } = somePinnedView(random, 6 + random.below(7), 1);
      const result = fitPins(pins, 1);
      if (result.kind === 'fit' && result.fit.disagreement !== undefined) alarms++;
    }
    expect(alarms / 1500).toBeLessThan(0.03);
    expect(alarms).toBeGreaterThan(0);
  });

  it('cannot be told among five', () => {
    const pins = fromAbove([
      [-10, -5],
      [10, -5],
      [10, 5],
      [-10, 5],
      [0, 2],
    ]).map((pin, i) => (i === 4 ? { ...pin, filmPx: { xPx: 700, yPx: 300 } } : pin));
    const fit = theFit(fitPins(pins, 1));
    expect(fit.disagreement).toEqual({ kind: 'oneOf', pins: ['p0', 'p1', 'p2', 'p3', 'p4'] });
    expect(fit.sdRaised).toBe(true);
    expect(fit.pinSdPx).toBeGreaterThan(10);
  });

  it('raises the ± when clicks were looser than said', () => {
    const random = randomOf(8);
    const raised = Array.from({ length: 200 }, () => {
      const fit = theFit(fitPins(somePinnedView(random, 12, 3).pins, 1));
      return fit.sdRaised ? fit.pinSdPx : Number.NaN;
    });
    const known = raised.filter(sd => !Number.isNaN(sd));
    expect(known.length).toBeGreaterThan(190);
    expect(known.reduce((sum, sd) => sum + sd, 0) / known.length).toBeCloseTo(3, 0);
  });
});
