import * as fc from 'fast-check';
import {
  type Act,
  type ActDeed,
  type Cue,
  type DrillPlan,
  PASS_WAYS,
  type PuckPlace,
  type Spot,
} from '../drill/drill.ts';
import type { RinkChoice } from '../rink/choice.ts';
import { LINE_IDS } from '../rink/lines.ts';
import { LEVEL_IDS } from '../skater/model.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';

const RINKS: readonly RinkChoice[] = [
  { preset: '200x85ft' },
  { preset: '60x26m' },
  { preset: 'halfIce' },
  { preset: 'crossIce' },
  { preset: 'own', lengthM: 30, widthM: 20, cornerRadiusM: 0 },
];

/** Any draft that the document allows and that names only spots it has: also silly ones, and ones drawn off the ice. */
const randomPlan = (): fc.Arbitrary<DrillPlan> =>
  fc.integer({ min: 1, max: 7 }).chain(count => {
    const names = Array.from({ length: count }, (_, i) => `s${i}` as SpotId);
    return fc
      .tuple(
        fc.tuple(...names.map(name => randomSpot(name, names))),
        fc.dictionary(fc.constantFrom('p0', 'p1'), randomPuck(names)),
      )
      .map(([spots, pucks]) => ({
        spots: Object.fromEntries(names.map((name, i) => [name, spots[i]!])),
        pucks,
        gear: {},
      }));
  });

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point: fc.Arbitrary<IcePoint> = fc.record({ xM: number(-34, 34), yM: number(-17, 17) });

const randomPuck = (names: readonly SpotId[]): fc.Arbitrary<PuckPlace> =>
  fc.record(
    { atM: point, count: fc.integer({ min: 0, max: 9 }), ownerSpot: fc.constantFrom(...names) },
    { requiredKeys: ['atM', 'count'] },
  );

const randomSpot = (name: SpotId, names: readonly SpotId[]): fc.Arbitrary<Spot> =>
  fc.record({
    rank: fc.integer({ min: 0, max: 5 }),
    side: fc.constantFrom('us', 'them'),
    kind: fc.constantFrom('skater', 'skater', 'skater', 'goalie', 'coach'),
    role: fc.constant(name as string),
    atM: point,
    facingRad: number(-7, 7),
    waitingCount: fc.constant(0),
    acts: fc
      .array(randomAct(name, names), { maxLength: 4 })
      .map(acts => Object.fromEntries(acts.map((act, i) => [`${name}.${i}` as ActId, { ...act, rank: i }]))),
  });

const randomAct = (name: SpotId, names: readonly SpotId[]): fc.Arbitrary<Act> => {
  const others = names.filter(one => one !== name);
  const deeds: fc.Arbitrary<ActDeed>[] = [
    fc.record({
      kind: fc.constantFrom('skate', 'carry'),
      throughM: fc.array(point, { minLength: 1, maxLength: 4 }),
      facing: fc.constantFrom('forward', 'backward'),
      effortRatio: number(0, 1),
      stops: fc.boolean(),
    }),
    fc.record({
      kind: fc.constant('shoot'),
      atEnd: fc.constantFrom('minusX', 'plusX'),
      speedMps: number(1, 45),
    }),
    fc.record({ kind: fc.constant('hold'), seconds: number(0, 6) }),
    fc.record({ kind: fc.constantFrom('stop', 'pivot', 'face', 'leave') }),
    fc.record({ kind: fc.constant('pickUp'), effortRatio: number(0, 1) }),
    fc.record({
      kind: fc.constant('turn'),
      angleRad: number(-2 * Math.PI, 2 * Math.PI),
      effortRatio: number(0, 1),
    }),
  ];
  if (others.length > 0) {
    const other = fc.constantFrom(...others);
    deeds.push(
      fc.record({
        kind: fc.constant('pass'),
        toSpot: other,
        way: fc.constantFrom(...PASS_WAYS),
        speedMps: number(1, 30),
      }),
      fc.record({
        kind: fc.constant('pass'),
        toSpot: other,
        way: fc.constant('drop'),
        speedMps: number(0, 1),
      }),
      fc.record({ kind: fc.constantFrom('chase', 'steal'), whom: other, effortRatio: number(0, 1) }),
      fc.record({ kind: fc.constant('gap'), whom: other, distanceM: number(0, 30) }),
      fc.record({ kind: fc.constant('face'), whom: other }),
      fc.record(
        { kind: fc.constant('screen'), from: other, to: other, alongRatio: number(0, 1) },
        { requiredKeys: ['kind', 'from', 'alongRatio'] },
      ),
    );
  }
  return fc
    .tuple(fc.oneof(...deeds), fc.option(randomCue(names), { nil: undefined }))
    .map(([deed, cue]) => (cue ? { ...deed, rank: 0, cue } : { ...deed, rank: 0 }));
};

const randomCue = (names: readonly SpotId[]): fc.Arbitrary<Cue> => {
  const spot = fc.constantFrom(...names);
  const line = fc.constantFrom(...LINE_IDS);
  return fc.oneof(
    fc.record({ on: fc.constant('whistle') }),
    fc.record({ on: fc.constant('after'), seconds: number(0, 8) }),
    fc.record({ on: fc.constantFrom('receive', 'shot', 'caught', 'losesPuck'), spot }),
    fc.record({ on: fc.constant('reaches'), spot, atM: point, withinM: number(0.1, 30) }),
    fc.record({ on: fc.constant('spotCrosses'), spot, line }),
    fc.record({ on: fc.constant('puckCrosses'), line }),
  );
};

/** A draft, a level and a rink. */
export const anyRun = fc.tuple(randomPlan(), fc.constantFrom(...LEVEL_IDS), fc.constantFrom(...RINKS));
