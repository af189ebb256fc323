import { bankPasses, bankWindows, type Receiver } from '@icewright/engine';
import type { Compare } from '../compare.ts';
import { CaseShapeError, type Fields } from '../fields.ts';
import type { Kind, KindCase } from '../kind.ts';
import { boardsOfCase, icePointOf, iceVelocityOf, pairOf } from './ice-values.ts';
import { puckModelOfCase } from './puck.ts';

/** `bank_reference.json`: every pass off the boards to a moving blade, the windows within reach, and mirror images. */
export const BANK_KINDS: readonly Kind[] = [
  { name: 'bank', run: (check, compare) => runBank(check, compare) },
  { name: 'mirror', run: (check, compare) => runBank(check, compare) },
];

const receiverOfCase = (input: Fields): Receiver => {
  const receiver = input.fields('receiver');
  const motion = receiver.text('motion');
  const steady: Receiver = {
    atM: icePointOf(receiver.pair('positionM')),
    velocityMps: iceVelocityOf(receiver.pair('velocityMps')),
    bladeOffsetM: icePointOf(input.pair('bladeOffsetM')),
  };
  if (motion === 'constant') return steady;
  if (motion !== 'skate') throw new CaseShapeError(`input.receiver.motion "${motion}" is not known`);
  return {
    ...steady,
    drive: {
      topSpeedMps: receiver.number('topSpeedMps') * receiver.numberOr('effortRatio', 1),
      tauS: receiver.number('tauS'),
      driveRad: receiver.number('driveRad'),
    },
  };
};

const bounceCountOf = (input: Fields): 1 | 2 => {
  const count = input.number('bounceCount');
  if (count !== 1 && count !== 2) throw new CaseShapeError(`input.bounceCount ${count} is not 1 or 2`);
  return count;
};

const runBank = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const boards = boardsOfCase(input);
  const model = puckModelOfCase(input);
  const passerM = icePointOf(input.pair('passerM'));
  const speed = input.number('launchSpeedMps');
  const receiver = receiverOfCase(input);
  const options = { bounceCount: bounceCountOf(input), maxTimeS: input.number('maxTimeS') };
  const passes = bankPasses(boards, model, passerM, speed, receiver, options);

  const launchRad = tolerance.numberOr('launchRad', 1e-6);
  const pointM = tolerance.numberOr('bouncePointM', 1e-4);
  const missM = tolerance.numberOr('missM', 1e-3);
  const wanted = expected.fieldsList('solutions');
  compare.same('count of solutions', passes.length, wanted.length);
  if (passes.length === wanted.length) {
    for (const [index, solution] of wanted.entries()) {
      const pass = passes[index]!;
      const what = `solutions[${index}]`;
      compare.angle(`${what}.launchRad`, pass.launchRad, solution.number('launchRad'), launchRad);
      compare.number(
        `${what}.arrivalTimeS`,
        pass.arrivalS,
        solution.number('arrivalTimeS'),
        tolerance.numberOr('arrivalTimeS', 1e-5),
        's',
      );
      compare.number(
        `${what}.arrivalSpeedMps`,
        pass.arrivalSpeedMps,
        solution.number('arrivalSpeedMps'),
        tolerance.numberOr('arrivalSpeedMps', 1e-4),
        'm/s',
      );
      if (solution.has('meetM'))
        compare.pair(`${what}.meetM`, pairOf(pass.meetM), solution.pair('meetM'), missM, 'm');
      if (solution.has('missPerRadM'))
        compare.relative(
          `${what}.missPerRadM`,
          pass.missPerRadM,
          solution.number('missPerRadM'),
          MISS_PER_RAD_RATIO,
          1e-3,
        );
      const bounces = solution.fieldsList('bounces');
      compare.same(`${what} count of bounces`, pass.bounces.length, bounces.length);
      for (const [n, bounce] of bounces.entries()) {
        const computed = pass.bounces[n];
        if (!computed) break;
        const where = `${what}.bounces[${n}]`;
        compare.pair(`${where}.centreM`, pairOf(computed.centreM), bounce.pair('centreM'), pointM, 'm');
        const boardsPoint = bounce.pair('boardsPointM');
        compare.pair(`${where}.boardsPointM`, pairOf(computed.boardsPointM), boardsPoint, pointM, 'm');
        if (bounce.has('part') && !bounce.isNull('part'))
          compare.same(`${where}.part`, computed.part, bounce.text('part'));
      }
    }
  }

  if (expected.has('reachWindowsRad')) {
    const windows = bankWindows(boards, model, passerM, speed, receiver, input.number('reachM'), options);
    const wantedWindows = expected.pairs('reachWindowsRad');
    compare.same('count of reachWindowsRad', windows.length, wantedWindows.length);
    if (windows.length === wantedWindows.length) {
      const allowed = tolerance.numberOr('windowRad', 1e-4);
      for (const [index, [from, to]] of wantedWindows.entries()) {
        compare.angle(`reachWindowsRad[${index}] from`, windows[index]![0], from, allowed);
        compare.angle(`reachWindowsRad[${index}] to`, windows[index]![1], to, allowed);
      }
    }
  }

  if (!expected.has('mirror')) return;
  for (const [index, image] of expected.fieldsList('mirror').entries()) {
    const what = `mirror[${index}]`;
    const aimRad = image.number('launchRad');
    const pass = passes.find(
      one => Math.abs(Math.atan2(Math.sin(one.launchRad - aimRad), Math.cos(one.launchRad - aimRad))) < 1e-3,
    );
    compare.same(`${what} is found`, pass !== undefined, true);
    if (!pass) continue;
    compare.angle(`${what}.launchRad`, pass.launchRad, aimRad, launchRad);
    const bounceCentre = image.pair('bounceCentreM');
    compare.pair(`${what}.bounceCentreM`, pairOf(pass.bounces[0]!.centreM), bounceCentre, pointM, 'm');
    compare.number(`${what}.pathM`, pass.arrivalS * speed, image.number('pathM'), missM, 'm');
    if (image.has('part')) compare.same(`${what}.part`, pass.bounces[0]!.part, image.text('part'));
  }
};

/** The file gives no tolerance for this rate: it is a derivative by differences on both sides. */
const MISS_PER_RAD_RATIO = 1e-4;
