import {
  bankCone,
  bankPasses,
  bankSpreadOf,
  levelOf,
  puckModelOf,
  type Receiver,
  rinkOf,
} from '@icewright/engine';
import { drawBankPass } from '../ice/bank-pass.ts';
import { drawGoing } from '../ice/freeze-marks.ts';
import { drawRink, rinkViewBox } from '../ice/rink.ts';
import type { Scene } from './scene.ts';
import { someone } from './scene-people.ts';

const rink = rinkOf({ preset: '200x85ft' });
const model = puckModelOf();
const PASSER = { xM: -23, yM: 6 };
const LAUNCH_MPS = 16;
const RECEIVER: Receiver = {
  atM: { xM: -7, yM: 8.5 },
  velocityMps: { xMps: 5, yMps: 0.6 },
  bladeOffsetM: { xM: 1, yM: 0.6 },
};
const spread = bankSpreadOf(levelOf('collegeWomen').model.passDirectionSdRad);

export default {
  title: 'Every pass off the boards, once, to a skater on the move, each with the wedge of its ±',
  viewBox: rinkViewBox(rink),
  computed: true,
  draw: pen => {
    drawRink(pen, rink, { scaleBar: true });
    for (const pass of bankPasses(rink.boards, model, PASSER, LAUNCH_MPS, RECEIVER)) {
      const cone = bankCone(rink.boards, model, PASSER, pass, spread);
      drawBankPass(pen, { fromM: PASSER, pass, cone });
    }
    drawGoing(pen, RECEIVER.atM, RECEIVER.velocityMps);
    someone(pen, 'D1', PASSER.xM, PASSER.yM);
    someone(pen, 'F1', RECEIVER.atM.xM, RECEIVER.atM.yM);
  },
} satisfies Scene;
