import type { Drill, DrillAct } from '@icewright/book';
import { type ActId, type Cue, type IcePoint, LINE_IDS, type SpotId } from '@icewright/engine';
import * as fc from 'fast-check';
import { bareDrill } from './drill-of-tests.reference.ts';

/** Any drill that a hand could have made: every kind of act and cue, pucks on sticks and lying, gear, a game, a flow. */
export const anyDrill = (): fc.Arbitrary<Drill> =>
  fc.integer({ min: 1, max: 6 }).chain(count => {
    const names = Array.from({ length: count }, (_, i) => `s${i}` as SpotId);
    return fc
      .record({
        spots: fc.tuple(...names.map(name => anySpot(name, names))),
        pucks: fc.array(anyPuck(names), { maxLength: 3 }),
        gear: fc.array(anyGear, { maxLength: 3 }),
        goes: fc.dictionary(fc.constantFrom(...names), fc.constantFrom(...names)),
        corners: fc.option(fc.tuple(anyPoint, anyPoint), { nil: undefined }),
      })
      .map(
        ({ spots, pucks, gear, goes, corners }) =>
          ({
            ...bareDrill(),
            spots: listed('s', spots),
            pucks: listed('p', pucks),
            gear: listed('g', gear),
            games:
              corners === undefined
                ? {}
                : listed('m', [
                    {
                      rank: 0,
                      fromM: corners[0],
                      toM: corners[1],
                      usCount: 3,
                      themCount: 3,
                      nets: gear.map((_, i) => `g${i}`),
                      resets: 'coach',
                      shiftS: 40,
                    },
                  ]),
            flow: { next: { on: 'end' }, ends: 'one', pauseS: 3, goesTo: goes },
          }) as unknown as Drill,
      );
  });

const listed = (letter: string, parts: readonly object[]) =>
  Object.fromEntries(parts.map((part, i) => [`${letter}${i}`, part]));

const between = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map(hundredths => hundredths / 100);
const anyPoint: fc.Arbitrary<IcePoint> = fc.record({ xM: between(-28, 28), yM: between(-12, 12) });
const anyAngle = between(-3, 3);
const anyGear = fc.record({
  kind: fc.constantFrom('pylon', 'net', 'smallNet', 'divider'),
  atM: anyPoint,
  facingRad: anyAngle,
});

const anyPuck = (names: readonly SpotId[]) =>
  fc.record(
    { atM: anyPoint, count: fc.integer({ min: 1, max: 9 }), ownerSpot: fc.constantFrom(...names) },
    { requiredKeys: ['atM', 'count'] },
  );

const anySpot = (name: SpotId, names: readonly SpotId[]) =>
  fc.record({
    rank: fc.constant(Number(name.slice(1))),
    side: fc.constantFrom('us', 'them'),
    kind: fc.constantFrom('skater', 'skater', 'skater', 'goalie', 'coach'),
    role: fc.constant(`F${Number(name.slice(1)) + 1}`),
    atM: anyPoint,
    facingRad: anyAngle,
    waitingCount: fc.integer({ min: 0, max: 4 }),
    acts: fc
      .array(anyAct(name, names), { maxLength: 4 })
      .map(acts => Object.fromEntries(acts.map((act, i) => [`${name}.${i}` as ActId, { ...act, rank: i }]))),
  });

const anyAct = (name: SpotId, names: readonly SpotId[]): fc.Arbitrary<DrillAct> => {
  const others = names.filter(one => one !== name);
  const other = fc.constantFrom(...(others.length > 0 ? others : names));
  const effortRatio = between(0.3, 1);
  const alone = [
    fc.record({
      kind: fc.constantFrom('skate', 'carry'),
      throughM: fc.array(anyPoint, { minLength: 1, maxLength: 4 }),
      facing: fc.constantFrom('forward', 'backward'),
      effortRatio,
      stops: fc.boolean(),
    }),
    fc.record({
      kind: fc.constant('shoot'),
      atEnd: fc.constantFrom('minusX', 'plusX'),
      speedMps: between(5, 30),
    }),
    fc.record({ kind: fc.constant('hold'), seconds: between(0, 4) }),
    fc.record({ kind: fc.constant('turn'), angleRad: anyAngle, effortRatio }),
    fc.record({ kind: fc.constantFrom('stop', 'leave', 'pivot', 'face') }),
    fc.record({ kind: fc.constant('pickUp'), effortRatio }),
  ];
  const together = [
    fc.record({
      kind: fc.constant('pass'),
      toSpot: other,
      way: fc.constantFrom('direct', 'saucer'),
      speedMps: between(5, 25),
    }),
    fc.record({ kind: fc.constantFrom('chase', 'steal'), whom: other, effortRatio }),
    fc.record({ kind: fc.constant('gap'), whom: other, distanceM: between(1, 8) }),
    fc.record({ kind: fc.constant('screen'), from: other, alongRatio: between(0, 1) }),
  ];
  const deed = fc.oneof(...(others.length > 0 ? [...alone, ...together] : alone)) as fc.Arbitrary<object>;
  return fc
    .tuple(deed, fc.option(anyCue(names), { nil: undefined }))
    .map(([act, cue]) => ({ ...act, rank: 0, ...(cue === undefined ? {} : { cue }) }) as DrillAct);
};

const anyCue = (names: readonly SpotId[]): fc.Arbitrary<Cue> => {
  const spot = fc.constantFrom(...names);
  const line = fc.constantFrom(...LINE_IDS);
  return fc.oneof(
    fc.record({ on: fc.constant('whistle') }),
    fc.record({ on: fc.constant('after'), seconds: between(0, 5) }),
    fc.record({ on: fc.constantFrom('receive', 'shot', 'losesPuck', 'caught'), spot }),
    fc.record({ on: fc.constant('spotCrosses'), spot, line }),
    fc.record({ on: fc.constant('reaches'), spot, atM: anyPoint, withinM: between(0.5, 3) }),
    fc.record({ on: fc.constant('puckCrosses'), line }),
  ) as fc.Arbitrary<Cue>;
};
