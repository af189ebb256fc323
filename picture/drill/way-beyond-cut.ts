import { type IcePoint, puckAt, puckModelOf, puckPath, type Rink, type Run } from '@icewright/engine';
import { type PlayedPass, placeOnTrack, trackOf } from './run-reading.ts';

const PUCK = puckModelOf();
const EVERY_S = 0.02;
/** A way that is farther than this from the puck where it was cut is not the one it was on. */
const SAME_WAY_M = 0.6;

/** After a shorter way than this its direction is that of the blade and not yet that of the pass, metres. */
const TELLS_M = 0.5;

/**
 * Where a pass would have gone on that somebody cut: from the cut, straight or over its bounces, to where it comes nearest to
 * whom it was for, metres on the ice. Null for one that was not cut, and where the puck had come so little far that
 * its way cannot be told. Each inner point is a bounce; of a rim, which follows the boards, it is a point of the way.
 */
export const wayBeyondCut = (
  run: Run,
  rink: Rink,
  pass: PlayedPass,
  way: 'direct' | 'saucer' | 'bank' | 'rim',
): readonly IcePoint[] | null => {
  const { event, takenS, wayM } = pass;
  const [from, next] = wayM;
  const cutM = wayM[wayM.length - 1];
  const receiver = trackOf(run, event.to);
  if (!pass.isCut || !from || !next || !cutM || !receiver) return null;
  if (apartM(from, next) < TELLS_M) return null;
  const launchRad = Math.atan2(next.yM - from.yM, next.xM - from.xM);
  const path = puckPath(rink.boards, PUCK, from, launchRad, event.speedMps);
  const cutS = takenS - event.timeS;
  if (path.legs.length === 0 || apartM(puckAt(path, cutS).atM, cutM) > SAME_WAY_M) return null;
  const times: number[] = [];
  const isStraight = way === 'direct' || way === 'saucer';
  // One that goes straight has missed when it is at the boards.
  const lastS = isStraight ? Math.min(path.endTimeS, path.bounces[0]?.timeS ?? path.endTimeS) : path.endTimeS;
  for (let timeS = cutS; timeS <= lastS; timeS += EVERY_S) times.push(timeS);
  const missM = (timeS: number) =>
    apartM(puckAt(path, timeS).atM, placeOnTrack(run, receiver, event.timeS + timeS));
  const endS = times.reduce((best, timeS) => (missM(timeS) < missM(best) ? timeS : best), cutS);
  if (isStraight) return [cutM, puckAt(path, endS).atM];
  const between =
    way === 'bank'
      ? path.bounces.filter(({ timeS }) => timeS > cutS && timeS < endS).map(({ centreM }) => centreM)
      : times.filter((timeS, index) => index % 5 === 4 && timeS < endS).map(timeS => puckAt(path, timeS).atM);
  return [cutM, ...between, puckAt(path, endS).atM];
};

const apartM = (one: IcePoint, other: IcePoint): number => Math.hypot(one.xM - other.xM, one.yM - other.yM);
