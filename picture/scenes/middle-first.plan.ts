import { planOf, spotId } from './plan-of.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const skate = { kind: 'skate', facing: 'forward', effortRatio: 1, stops: false } as const;

/** Our own drill: the first forward back has the middle before the puck has our line. */
export const MIDDLE_FIRST = planOf(
  [
    {
      role: 'Co',
      kind: 'coach',
      atM: at(17.8, -4.4),
      acts: [{ kind: 'pass', toSpot: spotId('X2'), way: 'direct', speedMps: 12, cue: { on: 'whistle' } }],
    },
    {
      role: 'X2',
      side: 'them',
      atM: at(13.6, 6.8),
      facingRad: Math.PI,
      waitingCount: 5,
      acts: [
        { kind: 'pass', toSpot: spotId('X1'), way: 'direct', speedMps: 14 },
        { ...skate, throughM: [at(4, 5.2), at(-8, 2.6), at(-25.4, 2.2)] },
      ],
    },
    {
      role: 'X1',
      side: 'them',
      atM: at(6.4, 10.3),
      facingRad: Math.PI,
      waitingCount: 5,
      acts: [
        {
          kind: 'carry',
          facing: 'forward',
          effortRatio: 1,
          stops: false,
          cue: { on: 'receive', spot: spotId('X1') },
          throughM: [at(-4, 10.2), at(-12, 8.6), at(-19.4, 5.6)],
        },
        { kind: 'shoot', atEnd: 'minusX', speedMps: 25 },
      ],
    },
    {
      role: 'D1',
      atM: at(0.8, 6.4),
      facingRad: 0,
      acts: [
        {
          kind: 'skate',
          facing: 'backward',
          effortRatio: 1,
          stops: false,
          cue: { on: 'receive', spot: spotId('X1') },
          throughM: [at(-6, 7.4), at(-12.8, 6.3)],
        },
        { ...skate, stops: true, throughM: [at(-17.8, 3.7)] },
      ],
    },
    {
      role: 'F3',
      atM: at(11.2, -1.4),
      facingRad: Math.PI,
      waitingCount: 5,
      acts: [
        {
          ...skate,
          stops: true,
          cue: { on: 'receive', spot: spotId('X2') },
          throughM: [at(2.8, -0.8), at(-8, -0.4), at(-18.8, 0.1)],
        },
      ],
    },
    { role: 'G', kind: 'goalie', atM: at(-26.25, 0.35), facingRad: 0 },
  ],
  [{ atM: at(19.2, -5.2), count: 20 }],
);
