import type { Boards } from '../rink/boards.ts';
import type { Net } from '../rink/rink.ts';
import { bounceOff } from './bounce.ts';
import { type FrameHit, firstFrameHit } from './net-frame.ts';
import { NET_RESTITUTION_RATIO, POST_RESTITUTION_RATIO } from './net-rows.ts';
import { puckAt, puckPath } from './path.ts';
import type { PathBounce, PathLeg, PuckPath } from './path-parts.ts';
import type { PuckModel } from './puck-model.ts';
import { slideDistanceAtTime, slideTimeAtDistance } from './slide.ts';

/** The nets of a rink, and how thick their frames are, metres. */
export interface Nets {
  readonly nets: readonly Net[];
  readonly postDiameterM: number;
}

const MOST_HITS = 12;

/**
 * A path that was found without the nets, as it goes with them: where the puck meets a frame (`firstFrameHit`) it comes off by the law of the
 * boards, with the restitution of a post or of the mesh, and goes on over the ice from there. The mouths are open: what goes in is for
 * the caller to end. The same path when it meets no frame. Metres, seconds, frame of the rink; ends as `puckPath` does, or at rest at
 * the frame after a dozen meetings. Source: `bounceOff` with the rows of `net-rows.ts`.
 */
export const pathOffNets = (boards: Boards, model: PuckModel, path: PuckPath, on: Nets): PuckPath => {
  let whole = path;
  let fromS = 0;
  for (let hits = 0; hits < MOST_HITS; hits++) {
    const met = firstMeeting(whole, on, fromS);
    if (!met) return whole;
    whole = bouncedAt(boards, model, whole, met);
    fromS = met.timeS;
  }
  return cutAt(whole, fromS);
};

interface Meeting {
  readonly timeS: number;
  readonly hit: FrameHit;
}

const firstMeeting = (path: PuckPath, on: Nets, fromS: number): Meeting | undefined => {
  for (const leg of path.legs) {
    if (leg.kind !== 'slide' || leg.startS < fromS) continue;
    const lengthM = slideDistanceAtTime(leg.slowing, leg.startMps, leg.durationS);
    let first: FrameHit | undefined;
    for (const net of on.nets) {
      const hit = firstFrameHit(
        net,
        on.postDiameterM,
        path.puckRadiusM,
        leg.startM,
        leg.direction,
        first?.wayM ?? lengthM,
      );
      first = hit ?? first;
    }
    if (!first) continue;
    const afterS = slideTimeAtDistance(leg.slowing, leg.startMps, first.wayM);
    if (afterS <= leg.durationS) return { timeS: leg.startS + afterS, hit: first };
  }
  return undefined;
};

const bouncedAt = (boards: Boards, model: PuckModel, path: PuckPath, { timeS, hit }: Meeting): PuckPath => {
  const { atM, velocity, spinRadps } = puckAt(path, timeS);
  const { normal } = hit;
  const row = hit.isPost ? POST_RESTITUTION_RATIO : NET_RESTITUTION_RATIO;
  const after = bounceOff({ ...velocity, spinRadps }, normal, { ...model, restitutionRatio: row.value });
  const speedMps = Math.hypot(after.xMps, after.yMps);
  const speedBeforeMps = Math.hypot(velocity.xMps, velocity.yMps);
  const before = cutAt(path, timeS);
  const rest = puckPath(boards, model, atM, Math.atan2(after.yMps, after.xMps), speedMps, {
    spinRadps: after.spinRadps,
  });
  const bounce: PathBounce = {
    timeS,
    centreM: atM,
    boardsPointM: {
      xM: atM.xM - model.puckRadiusM * normal.xM,
      yM: atM.yM - model.puckRadiusM * normal.yM,
    },
    part: hit.isPost ? 'post' : 'net',
    incidenceRad: angleFrom(normal, velocity),
    angleOutRad: angleFrom(normal, after),
    speedBeforeMps,
    speedAfterMps: speedMps,
    spinAfterRadps: after.spinRadps,
    becomesRim: false,
  };
  return {
    ...rest,
    legs: [...before.legs, ...rest.legs.map(leg => ({ ...leg, startS: leg.startS + timeS }))],
    bounces: [...before.bounces, bounce, ...rest.bounces.map(one => ({ ...one, timeS: one.timeS + timeS }))],
    endTimeS: timeS + rest.endTimeS,
  };
};

/** The angle between a motion and the surface. */
const angleFrom = (
  normal: { readonly xM: number; readonly yM: number },
  motion: { readonly xMps: number; readonly yMps: number },
): number => {
  const off = motion.xMps * normal.xM + motion.yMps * normal.yM;
  const along = motion.xMps * normal.yM - motion.yMps * normal.xM;
  return Math.atan2(Math.abs(off), Math.abs(along));
};

/** The path up to a time, at rest from then on. */
const cutAt = (path: PuckPath, timeS: number): PuckPath => ({
  ...path,
  legs: path.legs.flatMap((leg): PathLeg[] =>
    leg.startS >= timeS && leg.startS > 0
      ? []
      : [{ ...leg, durationS: Math.min(leg.durationS, timeS - leg.startS) }],
  ),
  bounces: path.bounces.filter(bounce => bounce.timeS <= timeS),
  endTimeS: Math.min(path.endTimeS, timeS),
  ending: 'stopped',
});
