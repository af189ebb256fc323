import type { PlayableAct, PlayableSpot } from '../drill/playable-parts.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { MendCandidate, MendCase, MendWhere, MendWrite } from './mend.ts';

/** A route act with its place in the list of the spot. */
export type RouteAct = PlayableAct & { readonly kind: 'skate' | 'carry' };

export const isRouteAct = (act: PlayableAct | undefined): act is RouteAct =>
  act?.kind === 'skate' || act?.kind === 'carry';

export const spotOf = (of: MendCase, id: SpotId | undefined): PlayableSpot | undefined =>
  of.playable.spots.find(spot => spot.id === id);

/** The act named by the finding when it is of this spot, else the one under way then, or the last that was; undefined when there was none. */
export const actThen = (of: MendCase, spot: PlayableSpot): PlayableAct | undefined => {
  const named = spot.acts.find(({ id }) => id === of.finding.act);
  if (named) return named;
  const track = of.run.tracks.find(one => one.spot === spot.id);
  if (!track) return undefined;
  let i = Math.min(Math.round(of.finding.timeS * of.run.stepHz), track.actIndex.length - 1);
  while (i >= 0 && track.actIndex[i]! < 0) i--;
  return i < 0 ? spot.acts[0] : spot.acts[track.actIndex[i]!];
};

/** Where the route of this act begins as drawn: the end of the route before it, or the spot. */
export const startOfRoute = (spot: PlayableSpot, act: RouteAct): IcePoint => {
  const before = spot.acts.slice(0, spot.acts.indexOf(act)).filter(isRouteAct).at(-1);
  return before?.throughM.at(-1) ?? spot.atM;
};

interface Way {
  readonly xM: number;
  readonly yM: number;
  readonly where: MendWhere;
}

/** Four ways to move something at a place, in the words of the ice. */
export const waysFrom = ({ yM }: IcePoint): readonly Way[] => [
  { xM: -1, yM: 0, where: 'ourEnd' },
  { xM: 1, yM: 0, where: 'theirEnd' },
  { xM: 0, yM: yM > 0 ? -1 : 1, where: 'middle' },
  { xM: 0, yM: yM > 0 ? 1 : -1, where: 'boards' },
];

export const movedBy = (pointM: IcePoint, way: Way, byM: number): IcePoint => ({
  xM: rounded(pointM.xM + way.xM * byM),
  yM: rounded(pointM.yM + way.yM * byM),
});

/** To the centimetre: what a mend writes is read by people. */
export const rounded = (value: number): number => Math.round(value * 100) / 100;

/** Somebody can stand there and have the room to leave. */
export const isRoomy = (rink: Rink, pointM: IcePoint): boolean => boardsDistance(rink.boards, pointM) >= 1;

const START_STEPS_M = [0.5, 1, 1.5, 2, 3, 4];

/** The start of a spot moved one of four ways; a puck on its stick comes along. Empty for a spot that is not there. */
export const startsMoved = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  if (!spot || spot.kind === 'goalie') return [];
  return waysFrom(spot.atM).flatMap(way =>
    START_STEPS_M.map(byM => ({ byM, toM: movedBy(spot.atM, way, byM) }))
      .filter(({ toM }) => isRoomy(of.rink, toM))
      .map(({ byM, toM }) => ({
        says: { verb: 'moveStart', spot: spot.id, number: byM, unit: 'm', where: way.where } as const,
        writes: startWrites(of, spot, toM),
        size: byM,
      })),
  );
};

const startWrites = (of: MendCase, spot: PlayableSpot, toM: IcePoint): readonly MendWrite[] => [
  { path: ['spots', spot.id, 'atM'], value: toM },
  ...Object.entries(of.plan.pucks)
    .filter(([, puck]) => puck.ownerSpot === spot.id)
    .map(([id, puck]) => ({
      path: ['pucks', id, 'atM'],
      value: {
        xM: rounded(puck.atM.xM + toM.xM - spot.atM.xM),
        yM: rounded(puck.atM.yM + toM.yM - spot.atM.yM),
      },
    })),
];
