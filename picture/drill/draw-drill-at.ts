import type { DrillPlan, Lengths, Rink, Run } from '@icewright/engine';
import { rinkViewBox } from '../ice/rink.ts';
import type { Pen } from '../pen/pen.ts';
import { type DrillSetting, drawDrill } from './draw-drill.ts';

/** Numbers of waiting skaters may stand over the boards, short of what stands above. */
const OVER_BOARDS_M = 1.2;
const THIN_FLOOR_M = 0.12;

/** A drill that is drawn as a part of something larger: on paper, in a picture with a title. */
export interface DrillDrawn {
  readonly plan: DrillPlan;
  readonly rink: Rink;
  readonly run?: Run;
  readonly lengths?: Lengths;
}

/** The drill with its sheet's upper left corner at a place, so many drawing units a metre. */
export const drawDrillAt = (
  pen: Pen,
  drawn: DrillDrawn,
  at: { readonly left: number; readonly top: number; readonly scale: number; readonly k: number },
  setting: DrillSetting = {},
): void => {
  const { plan, rink, run, lengths } = drawn;
  const [x, y, width, length] = rinkViewBox(rink);
  pen.place(
    {
      x: at.left - x * at.scale,
      y: at.top - y * at.scale,
      scale: at.scale,
      k: at.k,
      thinFloor: THIN_FLOOR_M,
    },
    () =>
      pen.clip(
        sink => sink.rect(x - 1, y - OVER_BOARDS_M, width + 2, length + 2 * OVER_BOARDS_M),
        () =>
          drawDrill(pen, plan, rink, {
            ...setting,
            ...(run === undefined ? {} : { run }),
            ...(lengths === undefined ? {} : { lengths }),
          }),
      ),
  );
};
