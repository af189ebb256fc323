import {
  isNone,
  sprintDistanceAt,
  sprintSpeedAt,
  sprintTimeTo,
  timeTo,
  touchIntervals,
} from '@icewright/engine';
import type { Fields } from '../fields.ts';
import type { Kind } from '../kind.ts';
import { icePointOf, iceVelocityOf } from './ice-values.ts';

const powerOf = (input: Fields) => ({
  topSpeedMps: input.number('topSpeedMps'),
  tauS: input.number('tauS'),
});

/** `sprint.json`: the sprint law, and the earliest touch of a point. */
export const SPRINT_KINDS: readonly Kind[] = [
  {
    name: 'sprint',
    run: ({ input, expected, tolerance }, compare) => {
      const power = powerOf(input);
      const start = input.numberOr('startSpeedMps', 0);
      const effort = input.numberOr('effortRatio', 1);
      const times = input.numbers('timesS');
      compare.numbers(
        'positionM',
        times.map(timeS => sprintDistanceAt(power, timeS, start, effort)),
        expected.numbersOrNulls('positionM'),
        tolerance.numberOr('positionM', 1e-6),
        'm',
      );
      compare.numbers(
        'speedMps',
        times.map(timeS => sprintSpeedAt(power, timeS, start, effort)),
        expected.numbersOrNulls('speedMps'),
        tolerance.numberOr('speedMps', 1e-6),
        'm/s',
      );
      compare.numbers(
        'timeToDistanceS',
        input.numbers('distancesM').map(distanceM => {
          const time = sprintTimeTo(power, distanceM, start, effort);
          return isNone(time) ? null : time;
        }),
        expected.numbersOrNulls('timeToDistanceS'),
        tolerance.numberOr('timeS', 1e-6),
        's',
      );
    },
  },
  {
    name: 'reach',
    run: ({ input, expected, tolerance }, compare) => {
      const power = {
        ...powerOf(input),
        reactionS: input.number('reactionS'),
        reachM: input.number('reachM'),
      };
      const state = {
        atM: icePointOf(input.pair('positionM')),
        velocityMps: iceVelocityOf(input.pair('velocityMps')),
      };
      const pointM = icePointOf(input.pair('pointM'));
      const allowed = tolerance.numberOr('timeS', 1e-6);
      const first = timeTo(state, power, pointM);
      compare.number('timeToS', isNone(first) ? null : first, expected.numberOrNull('timeToS'), allowed, 's');
      if (!expected.has('touchIntervalsS')) return;
      const wanted = expected
        .list('touchIntervalsS')
        .flatMap(interval => (Array.isArray(interval) ? interval : []));
      const found = touchIntervals(state, power, pointM).flatMap(({ fromS, toS }) => [fromS, toS]);
      compare.numbers('touchIntervalsS', found, wanted, allowed, 's');
    },
  },
];
