import type { IcePoint } from '@icewright/engine';
import type { Pen } from '../pen/pen.ts';

/** What a net needs to be drawn: middle of its opening, the way it is open, its size. */
export interface NetPicture {
  readonly atM: IcePoint;
  readonly facingRad: number;
  readonly openingM: number;
  readonly depthM: number;
}

/** Half the opening and the depth of the outline below, ice metres. */
const OUTLINE_HALF_OPENING_M = 0.915;
const OUTLINE_DEPTH_M = 1.016;

/** A net from above. The open side is open. */
export const drawNet = (pen: Pen, net: NetPicture, mark: 'net' | 'netMoved'): void => {
  const across = net.openingM / 2 / OUTLINE_HALF_OPENING_M;
  const deep = net.depthM / OUTLINE_DEPTH_M;
  pen.place({ x: net.atM.xM, y: -net.atM.yM, turnRad: Math.PI - net.facingRad }, () =>
    pen.path(mark, sink => {
      sink.moveTo(0, -0.915 * across);
      sink.bezierCurveTo(
        0.35 * deep,
        -0.935 * across,
        0.5 * deep,
        -1.1 * across,
        0.508 * deep,
        -1.1 * across,
      );
      sink.quadraticCurveTo(1.016 * deep, -1.1 * across, 1.016 * deep, -0.592 * across);
      sink.lineTo(1.016 * deep, 0.592 * across);
      sink.quadraticCurveTo(1.016 * deep, 1.1 * across, 0.508 * deep, 1.1 * across);
      sink.bezierCurveTo(0.5 * deep, 1.1 * across, 0.35 * deep, 0.935 * across, 0, 0.915 * across);
    }),
  );
};
