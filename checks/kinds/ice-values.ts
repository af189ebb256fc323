import { type Boards, boardsOf, type IcePoint, type IceVelocity } from '@icewright/engine';
import type { Fields } from '../fields.ts';

/** `[x, y]` in metres as an ice point. */
export const icePointOf = ([xM, yM]: readonly [number, number]): IcePoint => ({ xM, yM });

export const iceVelocityOf = ([xMps, yMps]: readonly [number, number]): IceVelocity => ({ xMps, yMps });

/** An ice point as the files write it. */
export const pairOf = ({ xM, yM }: IcePoint): readonly [number, number] => [xM, yM];

/** Boards of a case's `rink`. */
export const boardsOfCase = (input: Fields): Boards => {
  const rink = input.fields('rink');
  return boardsOf(rink.number('lengthM'), rink.number('widthM'), rink.number('cornerRadiusM'));
};
