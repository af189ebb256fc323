import { type IcePoint, wrapRad } from '@icewright/engine';

/** A way to lay a part of a drill elsewhere on the sheet without changing its shape. Metres, frame of the rink. */
export interface PlaceMap {
  readonly point: (atM: IcePoint) => IcePoint;
  readonly angle: (rad: number) => number;
  /** Left becomes right: signed turns change their sign. */
  readonly mirrors: boolean;
  /** The ends change places: nets, lines, and who defends which. */
  readonly swapsEnds: boolean;
}

export const movedBy = ({ xM, yM }: IcePoint): PlaceMap => ({
  point: atM => ({ xM: cm(atM.xM + xM), yM: cm(atM.yM + yM) }),
  angle: rad => rad,
  mirrors: false,
  swapsEnds: false,
});

/** Over the long axis: from the bench side to the box side. */
export const MIRROR_ALONG: PlaceMap = {
  point: ({ xM, yM }) => ({ xM, yM: minus(yM) }),
  angle: minus,
  mirrors: true,
  swapsEnds: false,
};

/** Over the red line: from one end to the other. */
export const MIRROR_ACROSS: PlaceMap = {
  point: ({ xM, yM }) => ({ xM: minus(xM), yM }),
  angle: rad => wrapRad(Math.PI - rad),
  mirrors: true,
  swapsEnds: true,
};

/** About the centre spot. */
export const HALF_TURN: PlaceMap = {
  point: ({ xM, yM }) => ({ xM: minus(xM), yM: minus(yM) }),
  angle: rad => wrapRad(rad + Math.PI),
  mirrors: false,
  swapsEnds: true,
};

/** Never −0, which a document and a comparison would take for another value. */
function minus(value: number): number {
  return 0 - value;
}

/** Centimetres, as the hand sets them: sums of them must not grow a tail. */
const cm = (lengthM: number): number => Math.round(lengthM * 100) / 100;
