import type { Body } from '../drill/in-boards.ts';
import type { Playable } from '../drill/playable.ts';
import type { IcePoint } from '../units/points.ts';
import type { Actor } from './actor.ts';

/** A place and how near to it counts, metres. */
export interface Near {
  readonly atM: IcePoint;
  readonly withinM: number;
}

/** A place that somebody's cue waits for a skater to come near to. Changed in place. */
export interface NearWatch {
  readonly actor: Actor;
  readonly near: Near;
  /** The skater is near now; only coming near counts, not being there. */
  isNear: boolean;
}

/** One watch for every skater and place that a cue of the drill names, whoever waits for it. */
export const nearWatchesOf = (playable: Playable, actors: readonly Actor[]): readonly NearWatch[] => {
  const watches: NearWatch[] = [];
  for (const { acts } of playable.spots) {
    for (const { cue } of acts) {
      if (cue?.on !== 'reaches') continue;
      const actor = actors.find(one => one.spot.id === cue.spot);
      if (!actor || watches.some(one => one.actor === actor && isSameNear(one.near, cue))) continue;
      const near = { atM: cue.atM, withinM: cue.withinM };
      watches.push({ actor, near, isNear: isNear(near, actor) });
    }
  }
  return watches;
};

export const isSameNear = (a: Near, b: Near): boolean =>
  a.atM.xM === b.atM.xM && a.atM.yM === b.atM.yM && a.withinM === b.withinM;

export const isNear = ({ atM, withinM }: Near, body: Body): boolean => {
  const x = body.xM - atM.xM;
  const y = body.yM - atM.yM;
  return x * x + y * y <= withinM * withinM;
};

/**
 * Whether the skater of the watch comes near on the way from where it is to where it has tried to be, taken as straight: one who
 * only cuts the edge of the circle inside the step has come near too.
 */
export const comesNear = ({ actor, near }: NearWatch): boolean => {
  const { atM, withinM } = near;
  const fromX = actor.xM - atM.xM;
  const fromY = actor.yM - atM.yM;
  const alongX = actor.next.xM - actor.xM;
  const alongY = actor.next.yM - actor.yM;
  const along2 = alongX * alongX + alongY * alongY;
  const share = along2 > 0 ? Math.min(1, Math.max(0, -(fromX * alongX + fromY * alongY) / along2)) : 0;
  const x = fromX + share * alongX;
  const y = fromY + share * alongY;
  return x * x + y * y <= withinM * withinM;
};
