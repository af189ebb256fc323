import type { Drill } from '@icewright/book';
import {
  attackedEndOf,
  levelOf,
  otherEnd,
  playableOf,
  type Run,
  rinkOf,
  runDrill,
  type SpotId,
} from '@icewright/engine';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { afterWrites } from '../write.ts';
import { at, drillWith } from './drill-of-tests.reference.ts';
import { halfTurned, mirrored, moved } from './laid-elsewhere.ts';
import { anyDrill } from './random-drill.reference.ts';
import { everything, pickedSpot } from './selection.ts';

const half = (drill: Drill): Drill => afterWrites(drill, halfTurned(drill, everything(drill)));
const over = (drill: Drill, way: 'along' | 'across'): Drill =>
  afterWrites(drill, mirrored(drill, everything(drill), way));

describe('a part of a drill laid elsewhere', () => {
  it('mirrored twice is what it was, over either axis', () => {
    fc.assert(
      fc.property(anyDrill(), fc.constantFrom('along', 'across'), (drill, way) => {
        expectClose(over(over(drill, way), way), drill);
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('half turned twice is what it was', () => {
    fc.assert(
      fc.property(anyDrill(), drill => expectClose(half(half(drill)), drill)),
      { numRuns: 300, seed: 2 },
    );
  });

  it('mirrored over both axes is half turned', () => {
    fc.assert(
      fc.property(anyDrill(), drill => expectClose(over(over(drill, 'along'), 'across'), half(drill))),
      { numRuns: 200, seed: 3 },
    );
  });

  it('there and back by so much is what it was', () => {
    fc.assert(
      fc.property(anyDrill(), fc.integer({ min: -500, max: 500 }), (drill, cm) => {
        const there = afterWrites(drill, moved(drill, everything(drill), at(cm / 100, -cm / 100)));
        expectClose(afterWrites(there, moved(there, everything(there), at(-cm / 100, cm / 100))), drill);
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  it('one spot alone leaves its route; two keep their shape', () => {
    const drill = drillWith({ spots: ['f1', 'f2'] });
    const f1 = pickedSpot('f1' as SpotId);
    const f2 = pickedSpot('f2' as SpotId);
    const act = {
      rank: 0,
      kind: 'skate',
      throughM: [at(9, 3)],
      facing: 'forward',
      effortRatio: 1,
      stops: false,
    };
    const going = afterWrites(drill, [{ path: ['spots', 'f1', 'acts', 'go'], value: act }]);
    const routeOf = (plan: Drill) => plan.spots['f1' as SpotId]?.acts['go' as never];
    expect(routeOf(afterWrites(going, moved(going, [f1], at(1, 1))))).toMatchObject({ throughM: [at(9, 3)] });
    expect(routeOf(afterWrites(going, moved(going, [f1, f2], at(1, 1))))).toMatchObject({
      throughM: [at(10, 4)],
    });
  });

  it('at the other end ours stay ours and theirs theirs, and play towards the other net; goalies alone go with the net', () => {
    fc.assert(
      fc.property(
        anyDrill(),
        fc.constantFrom(half, (drill: Drill) => over(drill, 'across')),
        (drill, lay) => {
          const spots = Object.values(drill.spots);
          const laid = Object.values(lay(drill).spots);
          const areGoalies = spots.every(({ kind }) => kind === 'goalie');
          spots.forEach((spot, i) => {
            const there = laid[i]!;
            expect(there.side === spot.side).toBe(!areGoalies);
            expect(attackedEndOf(there)).toBe(otherEnd(attackedEndOf(spot)));
          });
        },
      ),
      { numRuns: 200, seed: 6 },
    );
  });

  it('half turned, the whole drill runs as before, turned by half, to 1e-9', { timeout: 120_000 }, () => {
    let ran = 0;
    fc.assert(
      fc.property(anyDrill(), drill => {
        fc.pre(!startsOnALine(drill));
        const [before, after] = [runOf(drill), runOf(half(drill))];
        if (before === null || after === null) return expect(after).toBe(before);
        ran += 1;
        expectHalfTurned(before, after);
      }),
      { numRuns: 150, seed: 5 },
    );
    expect(ran).toBeGreaterThan(100);
  });
});

const rink = rinkOf({ preset: '200x85ft' });

/** Who starts exactly on a line has crossed it or not by which end that is, and so has the half turn: no play to compare. */
const startsOnALine = (drill: Drill): boolean =>
  [...Object.values(drill.spots), ...Object.values(drill.pucks)].some(({ atM }) =>
    Object.values(rink.lines).some(line => Math.abs(line.centreXM - atM.xM) < 1e-6),
  );

const runOf = (drill: Drill): Run | null => {
  const playable = playableOf(drill, rink, levelOf(drill.level));
  return playable.kind === 'playable' ? runDrill(playable) : null;
};

const expectHalfTurned = (before: Run, after: Run): void => {
  expect(after.sampleCount).toBe(before.sampleCount);
  let farM = 0;
  before.tracks.forEach((track, i) => {
    const turned = after.tracks[i]!;
    for (let sample = 0; sample < before.sampleCount; sample += 1)
      farM = Math.max(
        farM,
        Math.hypot(track.xM[sample]! + turned.xM[sample]!, track.yM[sample]! + turned.yM[sample]!),
      );
  });
  expect(farM).toBeLessThan(1e-9);
  expect(after.events.map(event => event.kind)).toEqual(before.events.map(event => event.kind));
  before.events.forEach((event, i) => {
    expect(Math.abs(event.timeS - after.events[i]!.timeS)).toBeLessThan(1e-9);
  });
};

/** The same to rounding: an angle that was turned and turned back has lost its last bit. */
const expectClose = (found: unknown, wanted: unknown): void => {
  expect(rounded(found)).toEqual(rounded(wanted));
};

const rounded = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value), (_, each) =>
    typeof each === 'number' ? Math.round(each * 1e9) / 1e9 + 0 : each,
  );
