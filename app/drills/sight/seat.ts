import type { IcePoint, LevelId, Rink, Run, SpotId } from '@icewright/engine';
import { BENCH_BEHIND_M, BENCH_EYES_M, eyeHeightM, STAND_BEHIND_M, STAND_EYES_M } from './body-rows.ts';

/** From where a moment of the run is looked at. */
export type Seat =
  | { readonly from: 'skater'; readonly spot: SpotId; readonly looks: 'ahead' | 'puck' }
  | { readonly from: 'bench' }
  | { readonly from: 'stand' };

/** An eye: metres in the frame of the rink, z up; angles in radians, `turnRad` 0 along +x anticlockwise, `downRad` below level. */
export interface Eye {
  readonly atM: IcePoint;
  readonly zM: number;
  readonly turnRad: number;
  readonly downRad: number;
}

/** From the side the puck stands above the middle of the picture, so that the ice fills it: our choice. */
const LOWER_RAD = 0.11;

/** How far before the eyes the ice is that a skater looks at, when she looks where she goes: our choice. */
const AHEAD_M = 14;

/** The eye of a seat at a sample of the run. From a bench or the stand it follows the puck; without one, the middle of all. */
export function eyeOf(seat: Seat, rink: Rink, run: Run, sample: number, level: LevelId): Eye {
  const puckM = puckPlaceOf(run, sample);
  if (seat.from === 'skater') {
    const track = run.tracks.find(each => each.spot === seat.spot);
    if (track === undefined) return eyeOf({ from: 'stand' }, rink, run, sample, level);
    const atM = { xM: track.xM[sample] ?? 0, yM: track.yM[sample] ?? 0 };
    const zM = eyeHeightM(level);
    const facingRad = track.facingRad[sample] ?? 0;
    if (seat.looks === 'ahead' || puckM === null || isOwn(run, seat.spot, sample))
      return { atM, zM, turnRad: facingRad, downRad: Math.atan2(zM, AHEAD_M) };
    return { atM, zM, ...towards(atM, zM, puckM) };
  }
  const middleM = puckM ?? middleOf(run, sample);
  const side = rink.boards.widthM / 2;
  if (seat.from === 'stand') {
    const atM = { xM: 0, yM: -side - STAND_BEHIND_M.value };
    return lowered({ atM, zM: STAND_EYES_M.value, ...towards(atM, STAND_EYES_M.value, middleM) });
  }
  const bench = rink.benches.find(each => each.kind === 'team');
  const xM = bench === undefined ? 0 : (bench.fromXM + bench.toXM) / 2;
  const atM = { xM, yM: Math.sign(bench?.yM ?? 1) * (side + BENCH_BEHIND_M.value) };
  return lowered({ atM, zM: BENCH_EYES_M.value, ...towards(atM, BENCH_EYES_M.value, middleM) });
}

const lowered = (eye: Eye): Eye => ({ ...eye, downRad: eye.downRad + LOWER_RAD });

/** The puck that is played: one on a stick first, else one that slides, else the first; null when the rep has none. */
export function puckPlaceOf(run: Run, sample: number): IcePoint | null {
  const puck =
    run.pucks.find(each => (each.owner[sample] ?? -2) >= 0) ??
    run.pucks.find(each => hasMoved(each.xM, each.yM, sample)) ??
    run.pucks[0];
  return puck === undefined || puck.owner[sample] === -2
    ? null
    : { xM: puck.xM[sample] ?? 0, yM: puck.yM[sample] ?? 0 };
}

const hasMoved = (xM: Float64Array, yM: Float64Array, sample: number): boolean =>
  sample > 0 && (xM[sample] !== xM[sample - 1] || yM[sample] !== yM[sample - 1]);

const isOwn = (run: Run, spot: SpotId, sample: number): boolean =>
  run.pucks.some(puck => run.tracks[puck.owner[sample] ?? -1]?.spot === spot);

const towards = (fromM: IcePoint, zM: number, toM: IcePoint): Pick<Eye, 'turnRad' | 'downRad'> => ({
  turnRad: Math.atan2(toM.yM - fromM.yM, toM.xM - fromM.xM),
  downRad: Math.atan2(zM, Math.hypot(toM.xM - fromM.xM, toM.yM - fromM.yM)),
});

const middleOf = (run: Run, sample: number): IcePoint => {
  const count = Math.max(1, run.tracks.length);
  return {
    xM: run.tracks.reduce((sum, track) => sum + (track.xM[sample] ?? 0), 0) / count,
    yM: run.tracks.reduce((sum, track) => sum + (track.yM[sample] ?? 0), 0) / count,
  };
};
