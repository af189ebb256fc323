import { rinkOf } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { drawUpright, rinkViewBox } from '../ice/rink.ts';
import { planOf, spotId } from './plan-of.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '60x30m' });
const at = (xM: number, yM: number) => ({ xM, yM });
const [x, y, width, height] = rinkViewBox(rink, true);

const PLAN = planOf(
  [
    {
      role: 'D1',
      atM: at(-22, 5),
      acts: [{ kind: 'pass', toSpot: spotId('F1'), way: 'bank', speedMps: 14, cue: { on: 'whistle' } }],
    },
    {
      role: 'F1',
      atM: at(-8, 10),
      acts: [
        {
          kind: 'carry',
          facing: 'forward',
          effortRatio: 1,
          stops: true,
          throughM: [at(4, 9), at(14, 4)],
          cue: { on: 'receive', spot: spotId('F1') },
        },
      ],
    },
    {
      role: 'X1',
      side: 'them',
      atM: at(-10, -4),
      acts: [{ kind: 'chase', whom: spotId('F1'), effortRatio: 1, cue: { on: 'after', seconds: 1.5 } }],
    },
    {
      role: 'X2',
      side: 'them',
      atM: at(6, -6),
      facingRad: Math.PI,
      waitingCount: 2,
      acts: [{ kind: 'gap', whom: spotId('F1'), distanceM: 1.8 }],
    },
    { role: 'G', kind: 'goalie', atM: at(25.4, 0), facingRad: Math.PI },
  ],
  [{ atM: at(-22.6, 3.4), count: 9 }],
  [
    { kind: 'pylon', atM: at(0, 4), facingRad: 0 },
    { kind: 'net', atM: at(12, -8), facingRad: Math.PI / 2 },
    { kind: 'divider', atM: at(-14, 0), facingRad: 0 },
  ],
);

export default {
  title: 'A drill on the sheet on end: letters, flags and pylons stay upright',
  viewBox: [x, y, width, height],
  k: 1.3,
  draw: pen =>
    drawUpright(pen, () =>
      drawDrill(pen, PLAN, rink, {
        level: 'u14',
        findings: [
          {
            kind: 'pathsCrossTooFast',
            weight: 'look',
            timeS: 2,
            atM: at(8, 7.5),
            spots: [spotId('F1'), spotId('X1')],
            value: 7,
            threshold: 5,
            unit: 'm/s',
            status: 'estimate',
            source: 'a scene',
          },
        ],
      }),
    ),
} satisfies Scene;
