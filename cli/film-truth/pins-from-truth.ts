import type { Pin, Random } from '@icewright/engine';
import type { FilmTruth, TruthFrame } from './truth-file.ts';

/** So many pins are clicked where pins are clicked. */
export const PINS = 12;

/** Frames with truth and enough of the sheet in view, about a second apart. */
export const startsOf = ({ frames }: FilmTruth): TruthFrame[] => {
  const starts: TruthFrame[] = [];
  for (const frame of frames) {
    const last = starts[starts.length - 1];
    if (Object.keys(frame.landmarks).length < 6) continue;
    if (last === undefined || frame.ptsS - last.ptsS > 0.95) starts.push(frame);
  }
  return starts;
};

/** Some of the landmarks in view, clicked with an error of so much (sd per axis). */
export const pinsOf = (
  truth: FilmTruth,
  frame: TruthFrame,
  clickPx: number,
  most: number,
  random: Random,
): Pin[] => {
  const rest = Object.keys(frame.landmarks).filter(id => truth.rink.landmarksM[id] !== undefined);
  const count = Math.min(most, rest.length);
  return Array.from({ length: count }, () => {
    const [id] = rest.splice(random.below(rest.length), 1) as [string];
    const [xM, yM] = truth.rink.landmarksM[id]!;
    const [xPx, yPx] = frame.landmarks[id]!;
    const filmPx = { xPx: xPx + clickPx * random.normal(), yPx: yPx + clickPx * random.normal() };
    return { id, iceM: { xM, yM }, filmPx };
  });
};
