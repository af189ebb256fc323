import type { End, IcePoint, Rink } from '@icewright/engine';

/** The net at that end, or on small ice the one that lies farther that way; without any net the place itself. */
export const netOf = (rink: Rink, from: IcePoint, end: End): IcePoint => {
  const nets = [...rink.nets].sort((one, other) => one.atM.xM - other.atM.xM || one.atM.yM - other.atM.yM);
  return (end === 'plusX' ? nets[nets.length - 1] : nets[0])?.atM ?? from;
};
