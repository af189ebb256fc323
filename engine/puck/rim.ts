import {
  type Slowing,
  slideDistanceAtTime,
  slideSpeedAtTime,
  slideStopTime,
  slideTimeAtDistance,
} from './slide.ts';

/** What a disc kept against a corner starts with: speed along the boards > 0 (m/s) and edge speed Rω (m/s, positive = the edge that touches moves forward too). */
export interface RimStart {
  readonly speedMps: number;
  readonly edgeMps: number;
}

/** A rim: first the edge slips on the boards, then (from `slipTimeS`) the puck rolls along them. */
export interface RimMotion extends RimStart {
  readonly slipping: Slowing;
  readonly rolling: Slowing;
  /** −2 sign(slip) μ_b / r: what the edge gains per v² and second while it slips, 1/m. */
  readonly edgeGainPerM: number;
  /** Infinity when the slip never ends. */
  readonly slipTimeS: number;
  readonly slipDistanceM: number;
  readonly rollingStartMps: number;
}

/**
 * A puck that follows a corner on centre radius `radiusM`: the boards press it inwards with v²/r, so it slows by
 * μg + kv² + sign(g) μ_b v²/r while its edge slips (g = v + Rω), and by two thirds of μg + kv² once it rolls (Rω = −v).
 * Closed form in each part; the end of the slip is one root. Source: the law of checks/data/puck.json, `rim`; the
 * rolling part follows from the model (the ice does not slow the spin) and is not measured. `radiusM` > 0, speeds ≥ 0.
 */
export const rimOf = (
  slowing: Slowing,
  boardFrictionRatio: number,
  radiusM: number,
  start: RimStart,
): RimMotion => {
  const sign = Math.sign(start.speedMps + start.edgeMps);
  const perM = (sign * boardFrictionRatio) / radiusM;
  const slipping: Slowing = {
    constantMps2: slowing.constantMps2,
    dragPerM: slowing.dragPerM + perM,
  };
  const rolling: Slowing = {
    constantMps2: (2 / 3) * slowing.constantMps2,
    dragPerM: (2 / 3) * slowing.dragPerM,
  };
  const unended = { ...start, slipping, rolling, edgeGainPerM: -2 * perM };
  const slipTimeS = sign === 0 ? 0 : slipEndOf(unended, sign);
  if (slipTimeS === Number.POSITIVE_INFINITY) {
    return { ...unended, slipTimeS, slipDistanceM: Number.POSITIVE_INFINITY, rollingStartMps: 0 };
  }
  return {
    ...unended,
    slipTimeS,
    slipDistanceM: slideDistanceAtTime(slipping, start.speedMps, slipTimeS),
    rollingStartMps: slideSpeedAtTime(slipping, start.speedMps, slipTimeS),
  };
};

/** Distance along the arc (m), speed and edge speed (m/s) after `timeS` ≥ 0. Source: as `rimOf`. */
export const rimAtTime = (
  rim: RimMotion,
  timeS: number,
): { readonly distanceM: number; readonly speedMps: number; readonly edgeMps: number } => {
  if (timeS <= rim.slipTimeS) {
    return {
      distanceM: slideDistanceAtTime(rim.slipping, rim.speedMps, timeS),
      speedMps: slideSpeedAtTime(rim.slipping, rim.speedMps, timeS),
      edgeMps: slippingEdgeAt(rim, timeS),
    };
  }
  const rolledS = timeS - rim.slipTimeS;
  const speedMps = slideSpeedAtTime(rim.rolling, rim.rollingStartMps, rolledS);
  return {
    distanceM: rim.slipDistanceM + slideDistanceAtTime(rim.rolling, rim.rollingStartMps, rolledS),
    speedMps,
    edgeMps: -speedMps,
  };
};

/**
 * Time (s) to follow the arc for `distanceM`, NaN when the puck stops before. `distanceM` ≥ 0. Source: as `rimOf`.
 */
export const rimTimeAtDistance = (rim: RimMotion, distanceM: number): number =>
  distanceM <= rim.slipDistanceM
    ? slideTimeAtDistance(rim.slipping, rim.speedMps, distanceM)
    : rim.slipTimeS + slideTimeAtDistance(rim.rolling, rim.rollingStartMps, distanceM - rim.slipDistanceM);

/** Time (s) to the stop, Infinity when nothing stops it. Source: as `rimOf`. */
export const rimStopTime = (rim: RimMotion): number =>
  rim.slipTimeS === Number.POSITIVE_INFINITY
    ? slideStopTime(rim.slipping, rim.speedMps)
    : rim.slipTimeS + slideStopTime(rim.rolling, rim.rollingStartMps);

type Slipping = Pick<RimMotion, 'speedMps' | 'edgeMps' | 'slipping' | 'edgeGainPerM'>;

/** The slip is looked for in this many parts of the time to the stop, then halved in: only its first end counts. */
const SEARCH_STEPS = 200;
/** Nobody follows a rim longer; it bounds the search where nothing stops the puck. */
const LONGEST_RIM_S = 60;

const slipEndOf = (rim: Slipping, sign: number): number => {
  const slipAt = (timeS: number) =>
    sign * (slideSpeedAtTime(rim.slipping, rim.speedMps, timeS) + slippingEdgeAt(rim, timeS));
  const endS = Math.min(slideStopTime(rim.slipping, rim.speedMps), LONGEST_RIM_S);
  let lowS = 0;
  for (let step = 1; step <= SEARCH_STEPS; step++) {
    let highS = (endS * step) / SEARCH_STEPS;
    if (slipAt(highS) <= 0) {
      while (highS - lowS > 1e-13 * (1 + highS)) {
        const middleS = (lowS + highS) / 2;
        if (middleS <= lowS || middleS >= highS) break;
        if (slipAt(middleS) > 0) lowS = middleS;
        else highS = middleS;
      }
      return highS;
    }
    lowS = highS;
  }
  return Number.POSITIVE_INFINITY;
};

const slippingEdgeAt = (rim: Slipping, timeS: number): number =>
  rim.edgeMps + rim.edgeGainPerM * squaredSpeedIntegral(rim.slipping, rim.speedMps, timeS);

/** ∫v² dt (m²/s): from v0 − v = ∫(a + kv²)dt, with the difference written out so that k → 0 keeps its digits. */
const squaredSpeedIntegral = (slowing: Slowing, startMps: number, timeS: number): number => {
  const { constantMps2: a, dragPerM: k } = slowing;
  const z = a * k * timeS * timeS;
  const x = Math.sqrt(Math.abs(z));
  const near = Math.abs(z) < 1e-3;
  const tan = near
    ? 1 + z / 3 + (2 * z * z) / 15 + (17 * z ** 3) / 315
    : (z > 0 ? Math.tan(x) : Math.tanh(x)) / x;
  const tanExcess = near ? 1 / 3 + (2 * z) / 15 + (17 * z * z) / 315 + (62 * z ** 3) / 2835 : (tan - 1) / z;
  const t = timeS * tan;
  const top = a * a * timeS ** 3 * tanExcess + t * startMps * startMps - a * timeS * t * startMps;
  return top / (1 + k * startMps * t);
};
