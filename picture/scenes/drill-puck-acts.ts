import { rinkOf } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { planOf, spotId } from './plan-of.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '200x85ft' });
const at = (xM: number, yM: number) => ({ xM, yM });
const skate = { kind: 'skate', facing: 'forward', effortRatio: 1, stops: false } as const;
const carry = { ...skate, kind: 'carry' } as const;

/** Every way a puck is moved, each by its own people, so that each mark can be looked at alone. */
export const PUCK_ACTS = planOf(
  [
    {
      role: 'D1',
      atM: at(-27.4, 7),
      facingRad: 0,
      acts: [{ kind: 'pass', toSpot: spotId('F1'), way: 'rim', speedMps: 16, cue: { on: 'whistle' } }],
    },
    {
      role: 'F1',
      atM: at(-6, 11),
      acts: [
        { ...carry, throughM: [at(0, 8.5)], cue: { on: 'receive', spot: spotId('F1') } },
        { kind: 'pass', toSpot: spotId('F2'), way: 'drop', speedMps: 0 },
        { ...skate, throughM: [at(8, 11)] },
      ],
    },
    {
      role: 'F2',
      atM: at(-8, 5.2),
      acts: [
        { ...skate, throughM: [at(-1, 7.6)], cue: { on: 'losesPuck', spot: spotId('F1') } },
        { ...carry, throughM: [at(9, 5.4), at(17, 4)] },
        { kind: 'shoot', atEnd: 'plusX', speedMps: 25 },
      ],
    },
    {
      role: 'Co',
      kind: 'coach',
      atM: at(-20, -8),
      acts: [{ kind: 'pass', toSpot: spotId('F3'), way: 'saucer', speedMps: 12, cue: { on: 'whistle' } }],
    },
    { role: 'F3', atM: at(-5, -5.2), acts: [{ kind: 'leave', cue: { on: 'caught', spot: spotId('F3') } }] },
    {
      role: 'LW',
      atM: at(4, -8.6),
      acts: [
        { kind: 'pickUp', effortRatio: 1, cue: { on: 'whistle' } },
        { ...carry, throughM: [at(16, -8)], facing: 'forward' },
        { ...carry, throughM: [at(24, -3.4)], facing: 'backward' },
      ],
    },
    {
      role: 'X1',
      side: 'them',
      atM: at(21, 9.4),
      facingRad: Math.PI,
      acts: [{ kind: 'steal', whom: spotId('F2'), effortRatio: 1, cue: { on: 'after', seconds: 2 } }],
    },
    {
      role: 'X2',
      side: 'them',
      atM: at(-12, -1.6),
      facingRad: Math.PI,
      acts: [
        { kind: 'screen', from: spotId('Co'), to: spotId('F3'), alongRatio: 0.6, cue: { on: 'whistle' } },
      ],
    },
    { role: 'G', kind: 'goalie', side: 'them', atM: at(26, 0), facingRad: Math.PI },
  ],
  [
    { atM: at(-27.4, 6), ownerSpot: spotId('D1'), count: 1 },
    { atM: at(-19, -8.8), count: 12 },
    { atM: at(10, -9), count: 1 },
  ],
);

export default {
  title: 'Every way of moving the puck',
  viewBox: rinkViewBox(rink),
  draw: pen => drawDrill(pen, PUCK_ACTS, rink, { level: 'collegeWomen' }),
} satisfies Scene;
