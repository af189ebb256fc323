import type { ReelProgress } from './make-reel.ts';

/** What is left of the work, by how it went so far; nothing until a second of it has been seen. */
export const leftWords = ({ atS, byteCount }: ReelProgress, lengthS: number, passedS: number): string => {
  if (passedS < 1 || atS <= 0) return '';
  const leftS = (passedS / atS) * (lengthS - atS);
  return `about ${spanWords(leftS)} more, ${sizeWords((byteCount / atS) * lengthS)} in all`;
};

export const spanWords = (seconds: number): string =>
  seconds < 90 ? `${Math.max(1, Math.round(seconds))} s` : `${Math.round(seconds / 60)} min`;

export const sizeWords = (byteCount: number): string => `${Math.max(1, Math.round(byteCount / 1e6))} MB`;
