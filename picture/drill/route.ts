import {
  type Act,
  type IcePoint,
  type LevelId,
  levelOf,
  profileRoute,
  routeCurveOf,
} from '@icewright/engine';

/** The route of a skating act: its curve, and where she is after each whole second when her level is known. */
export interface DrawnRoute {
  readonly points: readonly IcePoint[];
  readonly ticksM: readonly IcePoint[];
  readonly endHeadingRad: number;
  readonly endSpeedMps: number;
}

export interface RouteBefore {
  /** Direction and speed with which she comes, when she comes moving. */
  readonly headingRad?: number;
  readonly speedMps: number;
}

/** The same curve that the engine skates. Routes are drawn every 0.3 m, finer than a printer shows. */
const DRAWN_STEP_M = 0.3;

export const routeOf = (
  fromM: IcePoint,
  act: Extract<Act, { kind: 'skate' | 'carry' }>,
  before: RouteBefore,
  level: LevelId | undefined,
): DrawnRoute => {
  const curve = routeCurveOf([fromM, ...act.throughM], {
    stepM: DRAWN_STEP_M,
    ...(before.headingRad === undefined ? {} : { startHeadingRad: before.headingRad }),
  });
  const points = Array.from(curve.xM, (xM, index) => ({ xM, yM: curve.yM[index] ?? 0 }));
  const endHeadingRad = curve.headingRad[curve.headingRad.length - 1] ?? 0;
  const still = { points, ticksM: [], endHeadingRad, endSpeedMps: 0 };
  if (!level || curve.lengthM === 0) return still;
  const profile = profileRoute(curve, levelOf(level).model, {
    startSpeedMps: before.speedMps,
    facing: act.facing,
    withPuck: act.kind === 'carry',
    effortRatio: act.effortRatio,
    stops: act.stops,
  });
  if ('kind' in profile) return still;
  const ticksM: IcePoint[] = [];
  for (let timeS = 1; timeS < profile.durationS - 0.05; timeS += 1) ticksM.push(profile.stateAt(timeS).atM);
  return { ...still, ticksM, endSpeedMps: profile.speedMps[profile.speedMps.length - 1] ?? 0 };
};
