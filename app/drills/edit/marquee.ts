import type { Drill } from '@icewright/book';
import type { IcePoint } from '@icewright/engine';
import { everything, type Picked, type Selection } from './selection.ts';

/** A rectangle pulled over the ice, by two opposite corners, metres. */
export interface Marquee {
  readonly fromM: IcePoint;
  readonly toM: IcePoint;
}

/** All that stands inside. A puck on a stick goes with its skater; a game must lie in it whole. */
export const inside = (drill: Drill, marquee: Marquee): Selection =>
  everything(drill).filter(
    one => pointsOf(drill, one).every(point => holds(marquee, point)) && !isOnStick(drill, one),
  );

const holds = ({ fromM, toM }: Marquee, { xM, yM }: IcePoint): boolean =>
  Math.min(fromM.xM, toM.xM) <= xM &&
  xM <= Math.max(fromM.xM, toM.xM) &&
  Math.min(fromM.yM, toM.yM) <= yM &&
  yM <= Math.max(fromM.yM, toM.yM);

const isOnStick = (drill: Drill, one: Picked): boolean =>
  one.kind === 'puck' && drill.pucks[one.puck]?.ownerSpot !== undefined;

const pointsOf = (drill: Drill, one: Picked): readonly IcePoint[] => {
  switch (one.kind) {
    case 'spot':
    case 'act':
      return [drill.spots[one.spot]!.atM];
    case 'puck':
      return [drill.pucks[one.puck]!.atM];
    case 'gear':
      return [drill.gear[one.gear]!.atM];
    case 'game': {
      const game = drill.games[one.game]!;
      return [game.fromM, game.toM];
    }
  }
};
