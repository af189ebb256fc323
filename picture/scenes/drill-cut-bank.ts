import { levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { drawDrill } from '../drill/draw-drill.ts';
import { drawKey } from '../drill/key.ts';
import { drawnMarks } from '../drill/used-marks.ts';
import { rinkViewBox } from '../ice/rink.ts';
import { planOf, type SceneSpot, spotId } from './plan-of.ts';
import type { Scene } from './scene.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
export const CUT_BANK_RINK = rinkOf({ preset: '200x85ft' });
const FROM = at(-10, 6);

const OURS: readonly SceneSpot[] = [
  { role: 'D1', atM: FROM, acts: [{ kind: 'pass', toSpot: spotId('F1'), way: 'bank', speedMps: 12 }] },
  { role: 'F1', atM: at(8, 7) },
];
/** Towards each of the boards somebody has a stick in the way. */
const THEIRS: readonly SceneSpot[] = [40, -50].map((degrees, index) => {
  const rad = (degrees * Math.PI) / 180;
  return {
    role: `X${index + 1}`,
    side: 'them',
    atM: at(FROM.xM + 4 * Math.cos(rad), FROM.yM + 4 * Math.sin(rad)),
    facingRad: rad + Math.PI,
  };
});
const PUCK = [{ atM: FROM, ownerSpot: spotId('D1'), count: 1 }];

export const CUT_BANK = planOf([...OURS, ...THEIRS], PUCK);
/** The same with nobody in the way. */
export const FREE_BANK = planOf(OURS, PUCK);

export const runOf = (plan: typeof CUT_BANK) => {
  const playable = playableOf(plan, CUT_BANK_RINK, levelOf('collegeWomen'));
  if (playable.kind === 'unplayable') throw new Error(`${playable.issues.length} issues`);
  return runDrill(playable);
};

const [x, y, width, length] = rinkViewBox(CUT_BANK_RINK);
const run = runOf(CUT_BANK);

export default {
  title: 'A pass off the boards that is cut: the rest of it as it was meant',
  viewBox: [x, y, width, length + 4],
  computed: true,
  draw: pen => {
    drawDrill(pen, CUT_BANK, CUT_BANK_RINK, { run, findings: [] });
    drawKey(pen, drawnMarks([{ plan: CUT_BANK, run, rink: CUT_BANK_RINK }]), {
      x,
      y: y + length + 2,
      width,
      lettering: 'labelWord',
      scale: 0.7,
    });
  },
} satisfies Scene;
