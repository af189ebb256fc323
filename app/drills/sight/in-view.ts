import type { IcePoint, Run, SpotId } from '@icewright/engine';
import { type Eye, puckPlaceOf } from './seat.ts';

/** Somebody, or the puck, as an eye sees it: how far, how far round from straight ahead (left positive), and whether in the picture. */
export interface InView {
  readonly spot: SpotId | 'puck';
  readonly awayM: number;
  readonly roundRad: number;
  readonly isSeen: boolean;
}

/**
 * Everybody and the puck from an eye, nearest first. Seen: within half the picture's width, `halfWidthRad`, of straight ahead. Nobody
 * is taken to hide another.
 */
export function inViewOf(run: Run, sample: number, eye: Eye, halfWidthRad: number, self?: SpotId): InView[] {
  const seen = (spot: SpotId | 'puck', atM: IcePoint): InView => {
    const x = atM.xM - eye.atM.xM;
    const y = atM.yM - eye.atM.yM;
    const roundRad = Math.atan2(
      y * Math.cos(eye.turnRad) - x * Math.sin(eye.turnRad),
      x * Math.cos(eye.turnRad) + y * Math.sin(eye.turnRad),
    );
    return { spot, awayM: Math.hypot(x, y), roundRad, isSeen: Math.abs(roundRad) <= halfWidthRad };
  };
  const people = run.tracks
    .filter(track => track.spot !== self)
    .map(track => seen(track.spot, { xM: track.xM[sample] ?? 0, yM: track.yM[sample] ?? 0 }));
  const puckM = puckPlaceOf(run, sample);
  return [...people, ...(puckM === null ? [] : [seen('puck', puckM)])].sort((a, b) => a.awayM - b.awayM);
}

/** Twelve o'clock is straight ahead, three to the right: as a bench calls it. */
export function clockOf(roundRad: number): number {
  const hours = Math.round((-roundRad / (2 * Math.PI)) * 12);
  return ((hours + 11) % 12) + 1;
}
