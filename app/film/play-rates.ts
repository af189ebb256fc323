/** Times real speed at which film plays; the sign is the direction. */
const RATES = [0.25, 0.5, 1, 2, 4] as const;
const REAL = 1;

/** The same direction again is faster; the other way, and a standing film, begin at real speed. */
export const fasterRate = (now: number | undefined, direction: 1 | -1): number => {
  if (now === undefined || Math.sign(now) !== direction) return direction * REAL;
  return direction * (RATES.find(one => one > Math.abs(now)) ?? RATES[RATES.length - 1]!);
};

/** The same direction again is slower; the other way, and a standing film, begin at half speed. */
export const slowerRate = (now: number | undefined, direction: 1 | -1): number => {
  if (now === undefined || Math.sign(now) !== direction) return direction * 0.5;
  return direction * ([...RATES].reverse().find(one => one < Math.abs(now)) ?? RATES[0]);
};

export const rateWords = (rate: number): string => {
  const size = SAID[Math.abs(rate)] ?? `× ${Math.abs(rate)}`;
  return [rate < 0 ? 'backwards' : '', size].filter(Boolean).join(' ');
};
const SAID: Readonly<Record<number, string>> = { 0.25: 'quarter speed', 0.5: 'half speed', 1: '' };

/** Browsers keep the pitch from half to double speed; beyond that, and backwards, sound is noise, and is not played. */
export const isHeardAt = (rate: number): boolean => rate >= 0.5 && rate <= 2;
