import type { Body } from '../drill/in-boards.ts';
import { PIVOT_LOSS_RATIO } from '../motion/body-rows.ts';
import type { RoutePower } from '../skater/route-profile.ts';

/**
 * The plain way to play the acts of the body: explicit Euler steps of 0.1 ms of a speed and a heading, no route, no profile.
 * Slow, and written apart from the run so that the two can be compared. No boards.
 */
export interface ReferenceEnd extends Body {
  readonly timeS: number;
  readonly wayM: number;
}

const STEP_S = 1e-4;

export const referenceStop = (from: Body, power: RoutePower): ReferenceEnd =>
  walk(from, headingOf(from), walker => {
    walker.speedMps = Math.max(0, walker.speedMps - power.stopDecelMps2 * STEP_S);
    return walker.speedMps > 0;
  });

export const referencePivot = (from: Body, power: RoutePower): ReferenceEnd => {
  const lossMps2 = (PIVOT_LOSS_RATIO.value * Math.hypot(from.xMps, from.yMps)) / power.transitionS;
  return walk(from, headingOf(from), walker => {
    walker.speedMps -= lossMps2 * STEP_S;
    return walker.timeS < power.transitionS;
  });
};

/** Brakes to the speed the effort keeps, then round the least circle for that speed with what grip is left for the push. */
export const referenceTurn = (
  from: Body,
  startHeadingRad: number,
  angleRad: number,
  effortRatio: number,
  goalMps: number,
  power: RoutePower,
): ReferenceEnd => {
  const tightestMps = Math.sqrt(power.lateralAccelMps2 * power.minTurnRadiusM);
  const keptMps = Math.max(tightestMps, effortRatio * power.topSpeedMps);
  let radiusM = Number.NaN;
  return walk(from, startHeadingRad, walker => {
    if (Number.isNaN(radiusM) && walker.speedMps > keptMps) {
      walker.speedMps -= power.stopDecelMps2 * STEP_S;
      return true;
    }
    if (Number.isNaN(radiusM)) {
      radiusM = Math.max(power.minTurnRadiusM, walker.speedMps ** 2 / power.lateralAccelMps2);
    }
    const sideways = walker.speedMps ** 2 / radiusM / power.lateralAccelMps2;
    const lackMps = goalMps - walker.speedMps;
    const grip = lackMps > 0 ? Math.sqrt(Math.max(0, 1 - sideways ** 2)) : 1;
    walker.headingRad += (Math.sign(angleRad) * walker.speedMps * STEP_S) / radiusM;
    walker.speedMps += (lackMps / power.tauS) * grip * STEP_S;
    return Math.abs(walker.headingRad - startHeadingRad) < Math.abs(angleRad);
  });
};

interface Walker {
  headingRad: number;
  speedMps: number;
  timeS: number;
}

const headingOf = (body: Body): number => Math.atan2(body.yMps, body.xMps);

const walk = (from: Body, headingRad: number, goesOn: (walker: Walker) => boolean): ReferenceEnd => {
  const walker = { headingRad, speedMps: Math.hypot(from.xMps, from.yMps), timeS: 0 };
  let { xM, yM } = from;
  let wayM = 0;
  for (;;) {
    xM += walker.speedMps * Math.cos(walker.headingRad) * STEP_S;
    yM += walker.speedMps * Math.sin(walker.headingRad) * STEP_S;
    wayM += walker.speedMps * STEP_S;
    walker.timeS += STEP_S;
    if (!goesOn(walker)) break;
  }
  return {
    xM,
    yM,
    xMps: walker.speedMps * Math.cos(walker.headingRad),
    yMps: walker.speedMps * Math.sin(walker.headingRad),
    timeS: walker.timeS,
    wayM,
  };
};
