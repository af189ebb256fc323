import { type DrillPlan, rinkOf } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { rinkViewBox } from '../ice/rink.ts';
import type { Scene } from './scene.ts';

const rink = rinkOf({ preset: '60x26m' });
const at = (xM: number, yM: number) => ({ xM, yM });
const game = { rank: 0, resets: 'coach', shiftS: 40, nets: ['one', 'two'] } as const;

/** Two small games: one across the end, where the rounded boards are its edge, and one between the blue lines. */
const PLAN: DrillPlan = {
  spots: {},
  pucks: { heap: { atM: at(-9, -12), count: 12 } },
  gear: {
    one: { kind: 'smallNet', atM: at(-19, 10.5), facingRad: -Math.PI / 2 },
    two: { kind: 'smallNet', atM: at(-19, -10.5), facingRad: Math.PI / 2 },
  },
  games: {
    end: { ...game, fromM: at(-30, -13), toM: at(-8, 13), usCount: 3, themCount: 2 },
    middle: {
      ...game,
      rank: 1,
      nets: [],
      fromM: at(-6, -9),
      toM: at(6, 9),
      usCount: 1,
      themCount: 1,
      resets: 'whoWasScoredOn',
    },
  },
};

export default {
  title: 'Small games: a dotted edge, the numbers, and who brings the puck',
  viewBox: rinkViewBox(rink),
  draw: pen => drawDrill(pen, PLAN, rink),
} satisfies Scene;
