import {
  boardsSpeedsAfter,
  bounceOff,
  type PuckModel,
  puckAt,
  puckPath,
  rimAtTime,
  rimOf,
  rimTimeAtDistance,
  slideSpeedAtDistance,
  slideStopDistance,
  slideStopTime,
  slideTimeAtDistance,
} from '@icewright/engine';
import type { Compare } from '../compare.ts';
import type { Fields } from '../fields.ts';
import type { Kind, KindCase } from '../kind.ts';
import { boardsOfCase, icePointOf, pairOf } from './ice-values.ts';

/** `puck.json`: slides, bounces, paths and rims. Paths there follow the bounce law alone, so rims are off. */
export const PUCK_KINDS: readonly Kind[] = [
  { name: 'slide', run: (check, compare) => runSlide(check, compare) },
  { name: 'bounceAngle', run: (check, compare) => runBounceAngle(check, compare) },
  { name: 'bounceVector', run: (check, compare) => runBounceVector(check, compare) },
  { name: 'path', run: (check, compare) => runPath(check, compare) },
  { name: 'rim', run: (check, compare) => runRim(check, compare) },
];

/** The puck's constants as a case gives them; a case may leave out what its law does not need. */
export const puckModelOfCase = (input: Fields): PuckModel => ({
  frictionRatio: input.numberOr('frictionRatio', 0),
  dragPerM: input.numberOr('dragPerM', 0),
  gravityMps2: input.numberOr('gravityMps2', 9.80665),
  restitutionRatio: input.numberOr('restitutionRatio', 1),
  boardFrictionRatio: input.numberOr('boardFrictionRatio', 0),
  puckRadiusM: input.numberOr('puckRadiusM', 0),
});

const slowingOfCase = (input: Fields) => {
  const { frictionRatio, gravityMps2, dragPerM } = puckModelOfCase(input);
  return { constantMps2: frictionRatio * gravityMps2, dragPerM };
};

const orNone = (value: number): number | null => (Number.isFinite(value) ? value : null);

const runSlide = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const slowing = slowingOfCase(input);
  const start = input.number('startSpeedMps');
  const distances = input.numbers('distancesM');
  compare.numbers(
    'speedMps',
    distances.map(distance => orNone(slideSpeedAtDistance(slowing, start, distance))),
    expected.numbersOrNulls('speedMps'),
    tolerance.numberOr('slideSpeedMps', 1e-6),
    'm/s',
  );
  compare.numbers(
    'timeS',
    distances.map(distance => orNone(slideTimeAtDistance(slowing, start, distance))),
    expected.numbersOrNulls('timeS'),
    tolerance.numberOr('slideTimeS', 1e-6),
    's',
  );
  const stopM = orNone(slideStopDistance(slowing, start));
  const stopS = orNone(slideStopTime(slowing, start));
  if (expected.has('stopDistanceM')) {
    const allowed = tolerance.numberOr('stopDistanceM', 1e-5);
    compare.number('stopDistanceM', stopM, expected.numberOrNull('stopDistanceM'), allowed, 'm');
  }
  if (expected.has('stopTimeS')) {
    const allowed = tolerance.numberOr('slideTimeS', 1e-6);
    compare.number('stopTimeS', stopS, expected.numberOrNull('stopTimeS'), allowed, 's');
  }
};

const runBounceAngle = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const model = puckModelOfCase(input);
  const speed = input.number('speedMps');
  const angleRad = input.number('angleInFromBoardsRad');
  const after = boardsSpeedsAfter(
    {
      normalMps: speed * Math.sin(angleRad),
      alongMps: speed * Math.cos(angleRad),
      edgeMps: model.puckRadiusM * input.number('spinRadps'),
    },
    model,
  );
  const allowed = tolerance.numberOr('bounce', 1e-8);
  const outRad = Math.atan2(after.normalMps, after.alongMps);
  compare.angle('angleOutFromBoardsRad', outRad, expected.number('angleOutFromBoardsRad'), allowed);
  const kept = Math.hypot(after.normalMps, after.alongMps) / speed;
  compare.number('speedKeptRatio', kept, expected.number('speedKeptRatio'), allowed, '');
  compare.number('normalSpeedMps', after.normalMps, expected.number('normalSpeedMps'), allowed, 'm/s');
  compare.number('alongSpeedMps', after.alongMps, expected.number('alongSpeedMps'), allowed, 'm/s');
  compareSpin(after.edgeMps, model.puckRadiusM, expected, allowed, compare);
};

/** Compared as the speed of the edge: a spin is the same figure divided by a few centimetres. */
const compareSpin = (
  edgeMps: number,
  radiusM: number,
  expected: Fields,
  allowed: number,
  compare: Compare,
): void => {
  if (!expected.has('spinRadps') || radiusM === 0) return;
  compare.number('edge speed', edgeMps, expected.number('spinRadps') * radiusM, allowed, 'm/s');
};

const runBounceVector = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const model = puckModelOfCase(input);
  const [xMps, yMps] = input.pair('velocityMps');
  const after = bounceOff(
    { xMps, yMps, spinRadps: input.number('spinRadps') },
    icePointOf(input.pair('inwardNormal')),
    model,
  );
  const allowed = tolerance.numberOr('bounce', 1e-8);
  compare.pair('velocityMps', [after.xMps, after.yMps], expected.pair('velocityMps'), allowed, 'm/s');
  compareSpin(after.spinRadps * model.puckRadiusM, model.puckRadiusM, expected, allowed, compare);
};

const runPath = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const model = puckModelOfCase(input);
  const times = input.numbers('timesS');
  const path = puckPath(
    boardsOfCase(input),
    model,
    icePointOf(input.pair('startM')),
    input.number('directionRad'),
    input.number('speedMps'),
    { spinRadps: input.numberOr('spinRadps', 0), maxTimeS: Math.max(...times), rims: false },
  );
  const positionM = tolerance.numberOr('pathPositionM', 1e-5);
  const timeS = tolerance.numberOr('pathTimeS', 1e-6);
  const speedMps = tolerance.numberOr('pathSpeedMps', 1e-5);
  compare.pairs(
    'positionsM',
    times.map(time => pairOf(puckAt(path, time).atM)),
    expected.pairs('positionsM'),
    positionM,
    'm',
  );
  const bounces = expected.fieldsList('bounces');
  compare.same('count of bounces', path.bounces.length, bounces.length);
  for (const [index, wanted] of bounces.entries()) {
    const bounce = path.bounces[index];
    if (!bounce) return;
    const what = `bounces[${index}]`;
    compare.number(`${what}.timeS`, bounce.timeS, wanted.number('timeS'), timeS, 's');
    compare.pair(`${what}.centreM`, pairOf(bounce.centreM), wanted.pair('centreM'), positionM, 'm');
    compare.pair(
      `${what}.boardsPointM`,
      pairOf(bounce.boardsPointM),
      wanted.pair('boardsPointM'),
      positionM,
      'm',
    );
    for (const name of ['speedBeforeMps', 'speedAfterMps'] as const)
      compare.number(`${what}.${name}`, bounce[name], wanted.number(name), speedMps, 'm/s');
    if (model.puckRadiusM > 0) {
      const edge = wanted.number('spinAfterRadps') * model.puckRadiusM;
      compare.number(`${what} edge speed`, bounce.spinAfterRadps * model.puckRadiusM, edge, speedMps, 'm/s');
    }
    if (wanted.has('part') && !wanted.isNull('part'))
      compare.same(`${what}.part`, bounce.part, wanted.text('part'));
  }
};

const runRim = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const { boardFrictionRatio, puckRadiusM } = puckModelOfCase(input);
  const radiusM = input.number('cornerRadiusM') - puckRadiusM;
  const speed = input.number('speedMps');
  const rim = rimOf(slowingOfCase(input), boardFrictionRatio, radiusM, {
    speedMps: speed,
    edgeMps: puckRadiusM * input.number('spinRadps'),
  });
  const timeS = rimTimeAtDistance(rim, radiusM * input.number('cornerTurnRad'));
  const allowed = tolerance.numberOr('rimSpeedMps', 1e-5);
  const allowedS = tolerance.numberOr('pathTimeS', 1e-6);
  compare.number('timeS', orNone(timeS), expected.numberOrNull('timeS'), allowedS, 's');
  if (Number.isNaN(timeS)) return;
  const end = rimAtTime(rim, timeS);
  compare.number('speedMps', end.speedMps, expected.number('speedMps'), allowed, 'm/s');
  compare.number('keptRatio', end.speedMps / speed, expected.number('keptRatio'), allowed, '');
  compareSpin(end.edgeMps, puckRadiusM, expected, allowed, compare);
};
