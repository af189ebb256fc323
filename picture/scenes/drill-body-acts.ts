import { rinkOf } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { planOf, spotId } from './plan-of.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '60x30m' });
const at = (xM: number, yM: number) => ({ xM, yM });
const skate = { kind: 'skate', facing: 'forward', effortRatio: 1, stops: false } as const;
const carry = { ...skate, kind: 'carry' } as const;

/** What skaters do with their bodies, and every cue: stop and start, tight turns, pivots, facing, places to come to. */
export const BODY_ACTS = planOf(
  [
    {
      role: 'F1',
      atM: at(-24, 10),
      waitingCount: 4,
      acts: [
        { ...skate, throughM: [at(-10, 10)], cue: { on: 'whistle' } },
        { kind: 'stop' },
        { ...skate, throughM: [at(-8, 6), at(-20, 5)] },
      ],
    },
    {
      role: 'F2',
      atM: at(-24, -2),
      acts: [
        {
          ...carry,
          throughM: [at(-20.6, -2)],
          cue: { on: 'reaches', spot: spotId('F1'), atM: at(-14, 10), withinM: 1.5 },
        },
        { kind: 'turn', angleRad: -Math.PI, effortRatio: 1 },
        { ...carry, throughM: [at(-24, -7)] },
      ],
    },
    {
      role: 'D1',
      atM: at(2, 9),
      facingRad: Math.PI,
      acts: [
        {
          ...skate,
          throughM: [at(10, 9)],
          cue: { on: 'spotCrosses', spot: spotId('F1'), line: 'blueLineMinusX' },
        },
        { kind: 'pivot' },
        { ...skate, facing: 'backward', throughM: [at(20, 8)], stops: true },
      ],
    },
    {
      role: 'X1',
      side: 'them',
      atM: at(4, -1),
      facingRad: Math.PI,
      acts: [
        { kind: 'face', whom: spotId('D1'), cue: { on: 'whistle' } },
        { ...skate, throughM: [at(12, 1), at(22, -1)], cue: { on: 'puckCrosses', line: 'centreLine' } },
      ],
    },
    {
      role: 'X2',
      side: 'them',
      atM: at(0, -8),
      facingRad: Math.PI,
      acts: [
        { kind: 'hold', seconds: 1, cue: { on: 'losesPuck', spot: spotId('F2') } },
        { kind: 'gap', whom: spotId('F3'), distanceM: 2.5 },
      ],
    },
    {
      role: 'F3',
      atM: at(10, -8),
      acts: [
        { kind: 'chase', whom: spotId('X1'), effortRatio: 1, cue: { on: 'caught', spot: spotId('X1') } },
      ],
    },
  ],
  [{ atM: at(-23, -2.6), ownerSpot: spotId('F2'), count: 1 }],
  [
    { kind: 'pylon', atM: at(-20, -5.2), facingRad: 0 },
    { kind: 'smallNet', atM: at(24, 10), facingRad: Math.PI },
    { kind: 'net', atM: at(14, -12), facingRad: Math.PI / 2 },
    { kind: 'divider', atM: at(-27, 0), facingRad: 0 },
  ],
);

export default {
  title: 'What skaters do with their bodies, and every cue',
  viewBox: rinkViewBox(rink),
  draw: pen => drawDrill(pen, BODY_ACTS, rink, { level: 'collegeWomen' }),
} satisfies Scene;
