/** Takes sound piece by piece, one array a channel, and gives what can be told of it at the other rate; `end` gives the rest. */
export interface Resampler {
  readonly put: (channels: readonly Float32Array[]) => Float32Array[];
  readonly end: () => Float32Array[];
}

/**
 * Sound of one rate at another, as if it had come in one piece: what a piece tells at its edge waits for the next one, and the places that are asked
 * for go on from there, so that nothing is heard of the pieces. Before the first sample and after the last is silence. The n-th sample given lies at n / toHz.
 * Source: band-limited interpolation with a Kaiser window, Oppenheim & Schafer, Discrete-Time Signal Processing, ch. 4 and 7 (from memory).
 */
export const resamplerOf = (fromHz: number, toHz: number, channelCount: number): Resampler => {
  const shared = commonDivisor(fromHz, toHz);
  const [step, phaseCount] = [fromHz / shared, toHz / shared];
  const filter = filterOf(phaseCount, Math.min(1, toHz / fromHz));
  const { reach, taps } = filter;
  /** Samples not yet done with; the first of them is this far into the sound. */
  let kept = Array.from({ length: channelCount }, () => new Float32Array(reach));
  let firstAt = -reach;
  let inCount = 0;
  let outCount = 0;
  const tell = (count: number): Float32Array[] => {
    const told = kept.map(() => new Float32Array(count));
    for (let i = 0; i < count; i++) {
      const place = (outCount + i) * step;
      const phase = place % phaseCount;
      const from = (place - phase) / phaseCount - reach + 1 - firstAt;
      const row = filter.rowOf(phase);
      for (const [channel, samples] of kept.entries()) {
        let sum = 0;
        for (let k = 0; k < taps; k++) sum += row[k]! * samples[from + k]!;
        told[channel]![i] = sum;
      }
    }
    outCount += count;
    const done = Math.max(0, Math.floor((outCount * step) / phaseCount) - reach + 1 - firstAt);
    kept = kept.map(samples => samples.slice(done));
    firstAt += done;
    return told;
  };
  const take = (channels: readonly Float32Array[]): void => {
    kept = kept.map((samples, channel) => {
      const more = channels[channel]!;
      const both = new Float32Array(samples.length + more.length);
      both.set(samples);
      both.set(more, samples.length);
      return both;
    });
  };
  /** How many of them need nothing beyond so many samples. */
  const countBefore = (samples: number): number => Math.max(0, Math.ceil((samples * phaseCount) / step));
  return {
    put: channels => {
      take(channels);
      inCount += channels[0]?.length ?? 0;
      return tell(Math.max(0, countBefore(inCount - reach) - outCount));
    },
    end: () => {
      take(kept.map(() => new Float32Array(reach + 1)));
      return tell(Math.max(0, Math.round((inCount * phaseCount) / step) - outCount));
    },
  };
};

/** Zero crossings of the sinc on each side, and the window’s β: what is beyond half the lower rate is some 90 dB down. */
const CROSSINGS = 24;
const BETA = 9;
/** Of the lower of the two rates; the rest is where the filter falls. */
const PASSED = 0.93;

/** Weights of the samples about a place between two of them, by the place’s phase: `reach` of them on each side. */
const filterOf = (phaseCount: number, share: number) => {
  const cut = share * PASSED;
  const reach = Math.ceil(CROSSINGS / cut);
  const taps = 2 * reach;
  const rows = new Map<number, Float32Array>();
  const rowOf = (phase: number): Float32Array => {
    const known = rows.get(phase);
    if (known) return known;
    const row = Float32Array.from({ length: taps }, (_, k) => {
      const away = k - reach + 1 - phase / phaseCount;
      return cut * sinc(cut * away) * kaiser(away / reach);
    });
    // What is steady stays exactly as loud.
    const sum = row.reduce((all, one) => all + one, 0);
    for (let k = 0; k < taps; k++) row[k]! /= sum;
    rows.set(phase, row);
    return row;
  };
  return { reach, taps, rowOf };
};

const sinc = (x: number): number => (x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x));

const kaiser = (x: number): number =>
  Math.abs(x) > 1 ? 0 : bessel0(BETA * Math.sqrt(1 - x * x)) / bessel0(BETA);

/** Modified Bessel function of the first kind and order 0, by its series. */
const bessel0 = (x: number): number => {
  let [term, sum] = [1, 1];
  for (let k = 1; term > 1e-12 * sum; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
};

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));
