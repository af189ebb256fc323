/**
 * The miss after `s` seconds of full effort: how far a point lies outside the skater's reach disc, metres (≤ 0: touched).
 * (dx, dy) = point − place at the reaction, (vx, vy) = velocity then. Source: Fujimura & Sugihara 2005.
 */
export const touchMissM = (
  s: number,
  dx: number,
  dy: number,
  vx: number,
  vy: number,
  topSpeedMps: number,
  tauS: number,
  reachM: number,
): number => {
  const eased = -tauS * Math.expm1(-s / tauS);
  const x = dx - vx * eased;
  const y = dy - vy * eased;
  return Math.sqrt(x * x + y * y) - topSpeedMps * (s - eased) - reachM;
};

/** Shortest step of the search: a touch that lasts less is at most a² s²/8 ≈ 1e-6 m deep and may be passed over. */
const FINEST_STEP_S = 1e-3;
const POLISH_STEPS = 80;

/**
 * First s ≥ `fromS` at which the miss changes to `sense` 1: touched, −1: not touched; seconds since the reaction, NaN when
 * it never does. The miss changes by at most max(|v|, V) a second, so each step goes as far as it safely can: the *first*
 * crossing is found although the touched times need not be one interval. NaN also when it surely does not before `notAfterS`: who asks for
 * the earliest of many need not know the others. Source: as `touchMissM`.
 */
export const nextTouchChangeS = (
  fromS: number,
  sense: 1 | -1,
  dx: number,
  dy: number,
  vx: number,
  vy: number,
  topSpeedMps: number,
  tauS: number,
  reachM: number,
  notAfterS = Number.POSITIVE_INFINITY,
): number => {
  const speed = Math.sqrt(vx * vx + vy * vy);
  const fastest = Math.max(speed, topSpeedMps);
  const lastS = Math.min(notAfterS, settledS(dx, dy, speed, topSpeedMps, tauS, reachM));
  let before = fromS;
  let miss = sense * touchMissM(before, dx, dy, vx, vy, topSpeedMps, tauS, reachM);
  if (fastest <= 0) return miss <= 0 ? fromS : Number.NaN;
  while (before <= lastS) {
    const after = before + Math.max(miss / fastest, FINEST_STEP_S);
    const next = sense * touchMissM(after, dx, dy, vx, vy, topSpeedMps, tauS, reachM);
    if (next <= 0)
      return crossingS(before, after, miss, next, sense, dx, dy, vx, vy, topSpeedMps, tauS, reachM);
    before = after;
    miss = next;
  }
  return Number.NaN;
};

/** From then on the disc holds the point for good: its radius outgrows any place the coasting centre can reach. */
const settledS = (
  dx: number,
  dy: number,
  speed: number,
  topSpeedMps: number,
  tauS: number,
  reachM: number,
): number => {
  if (topSpeedMps <= 0) return 20 * tauS;
  const needM = Math.max(0, Math.sqrt(dx * dx + dy * dy) + speed * tauS - reachM);
  return needM / topSpeedMps + tauS + FINEST_STEP_S;
};

/** Root between two times with these misses of opposite sign: false position (Illinois), which keeps its bracket. */
const crossingS = (
  fromS: number,
  toS: number,
  missFrom: number,
  missTo: number,
  sense: number,
  dx: number,
  dy: number,
  vx: number,
  vy: number,
  topSpeedMps: number,
  tauS: number,
  reachM: number,
): number => {
  let low = fromS;
  let high = toS;
  let missLow = missFrom;
  let missHigh = missTo;
  let lastSide = 0;
  for (let step = 0; step < POLISH_STEPS && high - low > 1e-13; step++) {
    const span = missLow - missHigh;
    const guess = span > 0 ? low + ((high - low) * missLow) / span : (low + high) / 2;
    const miss = sense * touchMissM(guess, dx, dy, vx, vy, topSpeedMps, tauS, reachM);
    if (Math.abs(miss) < 1e-14) return guess;
    if (miss > 0) {
      low = guess;
      missLow = miss;
      if (lastSide === 1) missHigh /= 2;
      lastSide = 1;
    } else {
      high = guess;
      missHigh = miss;
      if (lastSide === -1) missLow /= 2;
      lastSide = -1;
    }
  }
  return (low + high) / 2;
};
