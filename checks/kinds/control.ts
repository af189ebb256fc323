import { boardsDistance, controlAt, isNone, slideTimeAtDistance, timeTo } from '@icewright/engine';
import type { Compare } from '../compare.ts';
import { CaseShapeError, type Fields } from '../fields.ts';
import type { Kind, KindCase } from '../kind.ts';
import { boardsOfCase, icePointOf, iceVelocityOf } from './ice-values.ts';
import { puckModelOfCase } from './puck.ts';

/** `pitch_control.json`: arrival times, who is first, and the chance to get the puck, cell by cell. */
export const CONTROL_KINDS: readonly Kind[] = [
  { name: 'control', run: (check, compare) => runControl(check, compare) },
];

const runControl = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const boards = boardsOfCase(input);
  const model = puckModelOfCase(input);
  const slowing = {
    constantMps2: model.frictionRatio * model.gravityMps2,
    dragPerM: model.dragPerM,
  };
  const puckM = icePointOf(input.pair('puckM'));
  const passSpeed = input.number('passSpeedMps');
  const skaters = input.fieldsList('skaters').map(skaterOf);
  const arrivals = expected.has('arrivalS') ? expected.list('arrivalS') : undefined;
  const table = (name: string) => (expected.has(name) ? expected.table(name) : undefined);
  const puckArrivals = table('puckArrivalS');
  const controlUs = table('controlUs');
  const controlThem = table('controlThem');
  const firstSkater = table('firstSkater');
  const inside = expected.has('insideBoards') ? expected.list('insideBoards') : undefined;
  const allowedS = tolerance.numberOr('arrivalS', 1e-5);
  const allowed = tolerance.numberOr('control', 1e-5);

  for (const [row, yM] of input.numbers('yM').entries()) {
    for (const [column, xM] of input.numbers('xM').entries()) {
      const cell = `[${row}][${column}]`;
      const at = { xM, yM };
      const distance = Math.hypot(xM - puckM.xM, yM - puckM.yM);
      const puckS = slideTimeAtDistance(slowing, passSpeed, distance);
      if (puckArrivals) {
        const wanted = puckArrivals[row]![column]!;
        const allowedPuckS = tolerance.numberOr('puckArrivalS', 1e-6);
        compare.number(`puckArrivalS${cell}`, puckS, wanted, allowedPuckS, 's');
      }
      const times = skaters.map(skater => {
        const time = timeTo(skater.state, skater.power, at);
        return isNone(time) ? Number.POSITIVE_INFINITY : time;
      });
      if (arrivals)
        for (const [index, time] of times.entries()) {
          const wanted = cellOf(arrivals[index], row, column, 'expected.arrivalS');
          compare.number(`arrivalS[${index}]${cell}`, time, wanted, allowedS, 's');
        }
      if (firstSkater)
        compare.same(`firstSkater${cell}`, times.indexOf(Math.min(...times)), firstSkater[row]![column]!);
      if (inside) {
        const line = inside[row];
        if (Array.isArray(line))
          compare.same(`insideBoards${cell}`, boardsDistance(boards, at) >= 0, line[column] === true);
      }
      const control = controlAt(
        skaters.map((skater, index) => ({ ...skater, arrivalS: times[index]! })),
        puckS,
        input.number('horizonS'),
      );
      if (controlUs) compare.number(`controlUs${cell}`, control.us, controlUs[row]![column]!, allowed, '');
      if (controlThem)
        compare.number(`controlThem${cell}`, control.them, controlThem[row]![column]!, allowed, '');
    }
  }
};

const skaterOf = (skater: Fields) => {
  const team = skater.text('team');
  if (team !== 'us' && team !== 'them') throw new CaseShapeError(`team "${team}" is not us or them`);
  const side: 'us' | 'them' = team;
  return {
    side,
    state: {
      atM: icePointOf(skater.pair('positionM')),
      velocityMps: iceVelocityOf(skater.pair('velocityMps')),
    },
    power: {
      topSpeedMps: skater.number('topSpeedMps'),
      tauS: skater.number('tauS'),
      reactionS: skater.number('reactionS'),
      reachM: skater.number('reachM'),
    },
    spreadS: skater.number('spreadS'),
    controlRatePerS: skater.number('controlRatePerS'),
  };
};

const cellOf = (table: unknown, row: number, column: number, where: string): number => {
  const line: unknown = Array.isArray(table) ? table[row] : undefined;
  const value: unknown = Array.isArray(line) ? line[column] : undefined;
  if (typeof value !== 'number') throw new CaseShapeError(`${where}[…][${row}][${column}] is not a number`);
  return value;
};
