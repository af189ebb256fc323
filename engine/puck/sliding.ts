const QUARTER_TURN_SQ = (Math.PI / 2) ** 2;

/**
 * The closed forms of slide.ts for an inner loop: one exponential gives speed and time over a distance, one tangent gives
 * speed and distance after a time; answers stand in fields, nothing is allocated. Valid for μg ≥ 0 and k ≥ 0.
 * Proven against slide.ts.
 */
export class Sliding {
  speedMps = 0;
  timeS = 0;
  distanceM = 0;

  constructor(
    private readonly constantMps2: number,
    private readonly dragPerM: number,
  ) {}

  /** Sets speed and time after `distanceM`; false when the puck stops before. */
  over(startMps: number, distanceM: number): boolean {
    const a = this.constantMps2;
    const k = this.dragPerM;
    const x = 2 * k * distanceM;
    const lost = x === 0 ? 0 : -Math.expm1(-x);
    const mean = x === 0 ? 1 : lost / x;
    const squared = startMps * startMps;
    const left = squared - squared * lost - 2 * a * distanceM * mean;
    if (!(left >= 0)) return false;
    const speed = Math.sqrt(left);
    this.speedMps = speed;
    const both = a + k * startMps * speed;
    if (both === 0) {
      this.timeS = startMps > 0 ? distanceM / startMps : 0;
      return startMps > 0 || distanceM === 0;
    }
    const y = (2 * distanceM * mean * (k * squared + a)) / ((startMps + speed) * both);
    const z = a * k * y * y;
    this.timeS = y * (z < 0.02 ? nearAtan(z) : Math.atan(Math.sqrt(z)) / Math.sqrt(z));
    return true;
  }

  /** Sets speed and distance after `timeS` ≥ 0: 0 and the stopping distance once it has stopped. */
  after(startMps: number, timeS: number): void {
    const a = this.constantMps2;
    const k = this.dragPerM;
    const z = a * k * timeS * timeS;
    let speed = -1;
    let t = 0;
    if (z < QUARTER_TURN_SQ) {
      t = timeS * (z < 0.02 ? nearTan(z) : Math.tan(Math.sqrt(z)) / Math.sqrt(z));
      speed = (startMps - a * t) / (1 + k * startMps * t);
    }
    if (speed <= 0) {
      this.speedMps = 0;
      const ratio = (k * startMps * startMps) / a;
      this.distanceM =
        startMps === 0
          ? 0
          : ((startMps * startMps) / (2 * a)) * (ratio === 0 ? 1 : Math.log1p(ratio) / ratio);
      return;
    }
    this.speedMps = speed;
    const rest = a + k * speed * speed;
    if (rest === 0) {
      this.distanceM = startMps * timeS;
      return;
    }
    const gained = ((startMps + speed) * t * (a + k * startMps * startMps)) / (1 + k * startMps * t);
    const ratio = (k * gained) / rest;
    this.distanceM = (gained / (2 * rest)) * (ratio === 0 ? 1 : Math.log1p(ratio) / ratio);
  }

  /** How quickly it slows at that speed, m/s². */
  slowingMps2(speedMps: number): number {
    return this.constantMps2 + this.dragPerM * speedMps * speedMps;
  }

  stopTime(startMps: number): number {
    const a = this.constantMps2;
    if (a === 0) return Number.POSITIVE_INFINITY;
    const y = startMps / a;
    const z = a * this.dragPerM * y * y;
    return y * (z < 0.02 ? nearAtan(z) : Math.atan(Math.sqrt(z)) / Math.sqrt(z));
  }
}

/** tan(√z)/√z by its series: below 0.02 the first term left out is under 1e-16. */
const nearTan = (z: number): number =>
  1 +
  z *
    (1 / 3 +
      z *
        (2 / 15 +
          z *
            (17 / 315 +
              z * (62 / 2835 + z * (1382 / 155925 + z * (21844 / 6081075 + (z * 929569) / 638512875))))));

/** atan(√z)/√z by its series, as above. */
const nearAtan = (z: number): number =>
  1 -
  z *
    (1 / 3 -
      z * (1 / 5 - z * (1 / 7 - z * (1 / 9 - z * (1 / 11 - z * (1 / 13 - z * (1 / 15 - z * (1 / 17))))))));
