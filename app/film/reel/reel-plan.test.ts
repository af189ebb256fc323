import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ReelStep, reelPlanOf, usualFrameS, writesOf } from './reel-plan.ts';

/** A film at a varying rate, as phones make them. */
const someIndex = fc
  .array(fc.integer({ min: 10, max: 60 }), { minLength: 30, maxLength: 80 })
  .map(lengths => {
    const timesS = Float64Array.from({ length: lengths.length }, (_, i) =>
      lengths.slice(0, i).reduce((sum, one) => sum + one / 1000, 0.5),
    );
    const last = lengths[lengths.length - 1]! / 1000;
    return { timesS, endS: timesS[timesS.length - 1]! + last, frameCount: lengths.length };
  });

const someStretches = (frameCount: number) =>
  fc.array(
    fc
      .tuple(
        fc.nat(frameCount - 1),
        fc.nat(frameCount - 1),
        fc.constantFrom<readonly number[]>([1], [0.5], [0.25], [1, 0.5]),
      )
      .map(([a, b, rates]) => ({
        film: 'one',
        fromFrame: Math.min(a, b),
        toFrame: Math.max(a, b),
        rates,
        words: [],
      })),
    { minLength: 1, maxLength: 4 },
  );

describe('the plan of a reel', () => {
  it('shows exactly the frames of the stretches, one after the other without a gap', () => {
    fc.assert(
      fc.property(
        someIndex.chain(index => fc.tuple(fc.constant(index), someStretches(index.frameCount))),
        fc.array(fc.tuple(fc.nat(79), fc.integer({ min: 1, max: 5 })), { maxLength: 3 }),
        fc.constantFrom(0, 2),
        ([index, stretches], held, cardS) => {
          const items = stretches.map(one => ({ ...one, holds: new Map(held) }));
          const { steps, lengthS } = reelPlanOf(items, () => index, cardS);
          const pictures = steps.flatMap(step => (step.kind === 'picture' ? [step.frameIndex] : []));
          const wanted = items.flatMap(({ fromFrame, toFrame, rates }) =>
            rates.flatMap(() => Array.from({ length: toFrame - fromFrame + 1 }, (_, i) => fromFrame + i)),
          );
          expect(pictures).toEqual(wanted);
          expect(steps.filter(({ kind }) => kind === 'card')).toHaveLength(cardS > 0 ? items.length : 0);
          let atS = 0;
          for (const step of steps) {
            expect(step.atS).toBeCloseTo(atS, 9);
            atS += step.lengthS;
          }
          expect(lengthS).toBeCloseTo(atS, 9);
          // What is written lasts as long as what was planned.
          const writtenS = steps
            .flatMap(step => writesOf(step, 0.033))
            .reduce((sum, one) => sum + one.lengthS, 0);
          expect(writtenS).toBeCloseTo(lengthS, 6);
        },
      ),
    );
  });

  it('lasts as long as its stretches, its holds and its cards', () => {
    const index = { timesS: Float64Array.from({ length: 90 }, (_, i) => i / 30), endS: 3, frameCount: 90 };
    const holds = new Map([[10, 3]]);
    const items = [
      { film: 'one', fromFrame: 0, toFrame: 29, holds, rates: [1], words: [] },
      { film: 'one', fromFrame: 60, toFrame: 89, holds, rates: [1], words: [] },
    ];
    const { lengthS, steps } = reelPlanOf(items, () => index, 2);
    expect(lengthS).toBeCloseTo(2 * 1 + 3 + 2 * 2, 9);
    const held = steps.find(step => step.kind === 'picture' && step.frameIndex === 10)!;
    expect(held.lengthS).toBeCloseTo(3 + 1 / 30, 9);
    expect(writesOf(held, usualFrameS(index))).toHaveLength(91);
    expect(writesOf(steps[1]!, usualFrameS(index))).toHaveLength(1);
  });

  it('runs once at full speed without standing, then again slowly, silent, and stands there', () => {
    const index = { timesS: Float64Array.from({ length: 90 }, (_, i) => i / 30), endS: 3, frameCount: 90 };
    const holds = new Map([[10, 3]]);
    const item = { film: 'one', fromFrame: 0, toFrame: 29, holds, rates: [1, 0.5], words: [] };
    const { lengthS, steps, sounds } = reelPlanOf([item], () => index, 0);
    expect(lengthS).toBeCloseTo(1 + 2 + 3, 9);
    expect(steps[10]!.lengthS).toBeCloseTo(1 / 30, 9);
    expect(steps[40]!.lengthS).toBeCloseTo(3 + 2 / 30, 9);
    expect(sounds).toEqual([{ film: 'one', fromS: 0, toS: 1, atS: 0 }]);
    // A slowed picture is written twice, so that the file keeps the film's rate.
    expect(writesOf(steps[35]!, 1 / 30)).toHaveLength(2);
  });

  it('lets the sound of each picture be heard with it, and is silent while one stands', () => {
    fc.assert(
      fc.property(
        someIndex.chain(index => fc.tuple(fc.constant(index), someStretches(index.frameCount))),
        fc.array(fc.tuple(fc.nat(79), fc.integer({ min: 1, max: 5 })), { maxLength: 3 }),
        ([index, stretches], held) => {
          const holds = new Map(held);
          const items = stretches.map(one => ({ ...one, holds }));
          const { steps, sounds } = reelPlanOf(items, () => index, 1);
          const rateOf = (step: ReelStep) => (step.kind === 'card' ? 0 : items[step.item]!.rates[step.pass]!);
          const isLast = (step: ReelStep) =>
            step.kind === 'picture' && step.pass === items[step.item]!.rates.length - 1;
          for (const step of steps) {
            if (step.kind !== 'picture') continue;
            const startS = index.timesS[step.frameIndex]!;
            const heard = sounds.filter(
              one => one.atS <= step.atS + 1e-9 && one.atS + one.toS - one.fromS > step.atS + 1e-6,
            );
            expect(heard).toHaveLength(rateOf(step) === 1 ? 1 : 0);
            if (heard.length > 0) expect(heard[0]!.fromS + step.atS - heard[0]!.atS).toBeCloseTo(startS, 6);
          }
          const heardS = sounds.reduce((sum, one) => sum + one.toS - one.fromS, 0);
          const movedS = steps.reduce(
            (sum, step) =>
              step.kind === 'card' || rateOf(step) !== 1
                ? sum
                : sum + step.lengthS - (isLast(step) ? (holds.get(step.frameIndex) ?? 0) : 0),
            0,
          );
          expect(heardS).toBeCloseTo(movedS, 6);
        },
      ),
    );
  });
});
