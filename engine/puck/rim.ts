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

/** A part of a rim: the edge slips on the boards, or the puck rolls along them. */
export interface RimPart extends RimStart {
  readonly startS: number;
  readonly startM: number;
  /** Infinity when only the stop ends it. */
  readonly endS: number;
  readonly slowing: Slowing;
  /** −2 sign(slip) μ_b / r: what the edge gains per v² and second while it slips, 1/m. Absent: the puck rolls. */
  readonly edgeGainPerM?: number;
}

/** A rim: the edge slips, then the puck rolls for as long as the boards press it hard enough, then the edge slips the other way. */
export interface RimMotion {
  readonly parts: readonly [RimPart, ...RimPart[]];
}

/**
 * A puck that follows a corner on centre radius `radiusM`: the boards press it inwards with v²/r, so it slows by
 * μg + kv² + sign(g) μ_b v²/r while its edge slips (g = v + Rω), and by two thirds of μg + kv² while it rolls (Rω = −v). To roll it needs a
 * third of that from the boards, no more than μ_b v²/r: below that speed the edge, which nothing else slows, slips again (g < 0) to the stop.
 * Closed form in each part; the end of the first slip is one root. Source: the law of checks/data/puck.json, `rim`; the
 * parts after it follow from the model (the ice does not slow the spin) and are not measured. `radiusM` > 0, speeds ≥ 0.
 */
export const rimOf = (
  slowing: Slowing,
  boardFrictionRatio: number,
  radiusM: number,
  start: RimStart,
): RimMotion => {
  const gripPerM = boardFrictionRatio / radiusM;
  const sign = Math.sign(start.speedMps + start.edgeMps);
  const first = { ...start, startS: 0, startM: 0 };
  if (sign === 0) return { parts: afterSlip(slowing, gripPerM, first) };
  const slip = slipOf(slowing, gripPerM, sign, first);
  const endS = slipEndOf(slip, sign);
  if (endS === Number.POSITIVE_INFINITY) return { parts: [slip] };
  const ended = { ...slip, endS };
  const speedMps = slideSpeedAtTime(slip.slowing, slip.speedMps, endS);
  const startM = slideDistanceAtTime(slip.slowing, slip.speedMps, endS);
  return {
    parts: [ended, ...afterSlip(slowing, gripPerM, { startS: endS, startM, speedMps, edgeMps: -speedMps })],
  };
};

type PartStart = Pick<RimPart, 'startS' | 'startM' | 'speedMps' | 'edgeMps'>;

const slipOf = (slowing: Slowing, gripPerM: number, sign: number, start: PartStart) => ({
  ...start,
  endS: Number.POSITIVE_INFINITY,
  slowing: { constantMps2: slowing.constantMps2, dragPerM: slowing.dragPerM + sign * gripPerM },
  edgeGainPerM: -2 * sign * gripPerM,
});

/** From where the edge does not slip: rolling down to the speed at which the boards cannot hold it so, and slipping from there. */
const afterSlip = (slowing: Slowing, gripPerM: number, start: PartStart): [RimPart, ...RimPart[]] => {
  const { constantMps2, dragPerM } = slowing;
  const sparePerM = gripPerM - dragPerM / 3;
  const holdMps = sparePerM > 0 ? Math.sqrt(constantMps2 / 3 / sparePerM) : Number.POSITIVE_INFINITY;
  if (!(start.speedMps > holdMps)) return [slipOf(slowing, gripPerM, -1, start)];
  const rolling: Slowing = { constantMps2: (2 / 3) * constantMps2, dragPerM: (2 / 3) * dragPerM };
  const roll = { ...start, endS: Number.POSITIVE_INFINITY, slowing: rolling };
  if (holdMps === 0) return [roll];
  const rolledS = slideStopTime(rolling, start.speedMps) - slideStopTime(rolling, holdMps);
  const endS = start.startS + rolledS;
  const startM = start.startM + slideDistanceAtTime(rolling, start.speedMps, rolledS);
  const trailing = { startS: endS, startM, speedMps: holdMps, edgeMps: -holdMps };
  return [{ ...roll, endS }, slipOf(slowing, gripPerM, -1, trailing)];
};

/** Distance along the arc (m), speed and edge speed (m/s) after `timeS` ≥ 0. Source: as `rimOf`. */
export const rimAtTime = (
  { parts }: RimMotion,
  timeS: number,
): { readonly distanceM: number; readonly speedMps: number; readonly edgeMps: number } => {
  const part = parts.find(({ endS }) => timeS <= endS) ?? parts[parts.length - 1]!;
  const intoS = timeS - part.startS;
  const speedMps = slideSpeedAtTime(part.slowing, part.speedMps, intoS);
  return {
    distanceM: part.startM + slideDistanceAtTime(part.slowing, part.speedMps, intoS),
    speedMps,
    edgeMps: part.edgeGainPerM === undefined ? -speedMps : slippingEdgeAt(part, intoS),
  };
};

/**
 * Time (s) to follow the arc for `distanceM`, NaN when the puck stops before. `distanceM` ≥ 0. Source: as `rimOf`.
 */
export const rimTimeAtDistance = ({ parts }: RimMotion, distanceM: number): number => {
  const part = parts.findLast(({ startM }) => distanceM >= startM) ?? parts[0];
  return part.startS + slideTimeAtDistance(part.slowing, part.speedMps, distanceM - part.startM);
};

/** Time (s) to the stop, Infinity when nothing stops it. Source: as `rimOf`. */
export const rimStopTime = ({ parts }: RimMotion): number => {
  const last = parts[parts.length - 1]!;
  return last.startS + slideStopTime(last.slowing, last.speedMps);
};

type Slipping = Pick<RimPart, 'speedMps' | 'edgeMps' | 'slowing' | 'edgeGainPerM'>;

/** The end of the slip is looked for in steps of no more than one of so many parts of the time to the stop, then halved in: only the first end counts. */
const SEARCH_STEPS = 200;
/** The first step is shorter than the slip could last at its first rate; each is so much longer than the one before. */
const [FIRST_STEP_RATIO, STEP_GROWS] = [0.25, 1.25];
/** Nobody follows a rim longer; it bounds the search where nothing stops the puck. */
const LONGEST_RIM_S = 60;

const slipEndOf = (rim: Slipping, sign: number): number => {
  const slipAt = (timeS: number) =>
    sign * (slideSpeedAtTime(rim.slowing, rim.speedMps, timeS) + slippingEdgeAt(rim, timeS));
  const endS = Math.min(slideStopTime(rim.slowing, rim.speedMps), LONGEST_RIM_S);
  const { constantMps2, dragPerM } = rim.slowing;
  const slipMps2 = constantMps2 + (dragPerM - (rim.edgeGainPerM ?? 0)) * rim.speedMps ** 2;
  const longestS = endS / SEARCH_STEPS;
  let stepS = Math.min(longestS, FIRST_STEP_RATIO * Math.abs((rim.speedMps + rim.edgeMps) / slipMps2));
  let lowS = 0;
  while (lowS < endS) {
    let highS = Math.min(endS, lowS + Math.max(stepS, SHORTEST_STEP_S));
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
    stepS = Math.min(longestS, STEP_GROWS * stepS);
  }
  return Number.POSITIVE_INFINITY;
};
/** No slip that counts ends sooner. */
const SHORTEST_STEP_S = 1e-9;

const slippingEdgeAt = (rim: Slipping, timeS: number): number =>
  rim.edgeMps + (rim.edgeGainPerM ?? 0) * squaredSpeedIntegral(rim.slowing, rim.speedMps, timeS);

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
