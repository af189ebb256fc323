import { describe, expect, it } from 'vitest';
import { type Random, randomOf } from '../random/random.ts';
import { drawnAt } from './camera.reference.ts';
import { ellipseOf } from './ellipse.ts';
import { fitPins } from './fit-pins.ts';
import { placeOf, sceneEstimate } from './frozen-scene.ts';
import { iceFromFilm } from './ice-from-film.ts';
import { distanceBetween } from './measure.ts';
import { numbersIn } from './numbers-in.ts';
import {
  type PinnedView,
  somePinnedView,
  somePlaceInView,
  TEST_RINK,
  theFit,
} from './pinned-view.reference.ts';
import { sceneFromFreeze } from './scene-from-freeze.ts';

const freezeOf = (random: Random, view: PinnedView, count: number) => {
  const fit = theFit(fitPins(view.pins, 1));
  const feet = Array.from({ length: count }, () => drawnAt(view.filmFromIce, somePlaceInView(random, view))!);
  return {
    feet,
    freeze: {
      fit,
      rink: TEST_RINK,
      attacks: 'plusX' as const,
      skaters: feet.map((feetPx, i) => ({
        id: `s${i}`,
        side: i % 2 === 0 ? ('us' as const) : ('them' as const),
        kind: 'skater' as const,
        role: 'F1',
        feetPx,
      })),
    },
  };
};

describe('a scene from a freeze', () => {
  it('places each as alone, and each pair with the ± of its distance', () => {
    const random = randomOf(61);
    for (let i = 0; i < 20; i++) {
      const { freeze, feet } = freezeOf(random, somePinnedView(random, 10, 1), 6);
      const { scene, unplaced } = sceneFromFreeze(freeze);
      if (unplaced.length > 0) continue;
      scene.skaters.forEach((skater, index) => {
        const alone = iceFromFilm(freeze.fit, feet[index]!);
        expect(alone).toMatchObject({ kind: 'placed', atM: skater.atM, covM2: skater.covM2 });
      });
      const measured = distanceBetween(freeze.fit, feet[0]!, feet[3]!);
      if (measured.kind === 'none') throw new Error(measured.reason);
      const [a, b] = [placeOf(scene, 0), placeOf(scene, 3)];
      const [dx, dy] = [a.xM - b.xM, a.yM - b.yM];
      const d = Math.hypot(dx, dy);
      const estimate = sceneEstimate(scene, d, [
        [0, dx / d, dy / d],
        [3, -dx / d, -dy / d],
      ]);
      expect(estimate.value).toBeCloseTo(measured.lengthM.value, 10);
      expect(estimate.sd).toBeCloseTo(measured.lengthM.sd, 10);
    }
  });

  it('has a joint covariance that is symmetric and gives no combination a negative variance', () => {
    const random = randomOf(62);
    const { freeze } = freezeOf(random, somePinnedView(random, 8, 1), 5);
    const { scene } = sceneFromFreeze(freeze);
    const size = 2 * scene.skaters.length;
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        expect(scene.jointM2[size * i + j]).toBeCloseTo(scene.jointM2[size * j + i]!, 10);
      }
    }
    for (let trial = 0; trial < 200; trial++) {
      const pulls = scene.skaters.map((_, i) => [i, random.normal(), random.normal()] as const);
      expect(sceneEstimate(scene, 0, pulls).sd).toBeGreaterThan(0);
    }
  });

  it('leaves out feet that are on no ice, with the reason', () => {
    const random = randomOf(63);
    const view = somePinnedView(random, 10, 0);
    const { freeze } = freezeOf(random, view, 2);
    const onStand = drawnAt(view.filmFromIce, { xM: 0, yM: 30 })!;
    const others = [
      ...freeze.skaters,
      { ...freeze.skaters[0]!, id: 'sky', feetPx: { xPx: 600, yPx: -4000 } },
      { ...freeze.skaters[0]!, id: 'stand', feetPx: onStand },
    ];
    const { scene, unplaced } = sceneFromFreeze({
      ...freeze,
      skaters: others,
      puck: { atPx: { xPx: 0, yPx: -4000 }, carrierId: 's0' },
    });
    expect(unplaced).toEqual([
      { id: 'sky', reason: 'aboveHorizon' },
      { id: 'stand', reason: 'offTheIce' },
      { id: 'puck', reason: 'aboveHorizon' },
    ]);
    expect(scene.skaters.map(({ id }) => id)).toEqual(['s0', 's1']);
    expect(scene.puck).toBeUndefined();
    expect(scene.jointM2).toHaveLength(16);
    // Whoever was said to be placed, and is not, makes a side less than whole.
    const said = { ...freeze, isEveryonePlaced: true, allOfUsPlacedInM: [] };
    expect(sceneFromFreeze(said).scene).toMatchObject({ isEveryonePlaced: true, allOfUsPlacedInM: [] });
    for (const side of ['us', 'them'] as const) {
      const lost = { ...others.at(-2)!, side };
      const { scene: lacking } = sceneFromFreeze({ ...said, skaters: [...freeze.skaters, lost] });
      expect('isEveryonePlaced' in lacking && 'allOfUsPlacedInM' in lacking).toBe(side === 'them');
    }
  });
});

describe('numbers in an area', () => {
  it('are sure only of those whose ± does not reach over the edge', () => {
    const random = randomOf(64);
    const { freeze } = freezeOf(random, somePinnedView(random, 10, 1), 12);
    const { scene } = sceneFromFreeze(freeze);
    const first = scene.skaters[0]!;
    const { semiMajorM } = ellipseOf(first.covM2);
    const box = (halfM: number) =>
      [
        [-1, -1],
        [1, -1],
        [1, 1],
        [-1, 1],
      ].map(([x, y]) => ({ xM: first.atM.xM + halfM * x!, yM: first.atM.yM + halfM * y! }));
    expect(numbersIn(scene, box(semiMajorM * 1.1), 'us').certain).toContain('s0');
    expect(numbersIn(scene, box(semiMajorM / 20), 'us').unsure).toContain('s0');
    const all = numbersIn(scene, box(100), 'us');
    expect(all.certainCount).toBe(scene.skaters.filter(({ side }) => side === 'us').length);
    expect(all.possibleCount).toBe(all.certainCount);
    expect(numbersIn(scene, box(100), 'them').certain.every(id => !all.certain.includes(id))).toBe(true);
  });
});
