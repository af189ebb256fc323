import { STEP_HZ } from '../drill/step-hz.ts';
import type { Net, RinkLayout } from '../rink/rink.ts';
import type { SpotId } from '../units/ids.ts';
import type { Actor } from './actor.ts';
import type { Finding, Track } from './run-result.ts';
import type { RunState } from './run-state.ts';

/**
 * Each time the middle of a body is inside the frame of a net, from the goal line to the net's depth behind it and between the
 * posts; or, for whoever is no goalie, inside the crease of a net where a goalie stands (`spots` then names the goalie second).
 * Value: how long, seconds; time and place: where it goes in. Only the skater's middle is looked at, and small nets have no crease.
 * Metres, frame of the rink; empty when nobody does. Source: the measures of the rink.
 */
export const findThroughNet = (run: RunState, tracks: readonly Track[]): readonly Finding[] => {
  const findings: Finding[] = [];
  for (const net of run.rink.nets) {
    const { crease } = run.rink.layout;
    const goalie = net.small ? -1 : goalieAt(net, run.actors, crease.radiusM);
    tracks.forEach((track, index) => {
      const isGoalie = run.actors[index]!.spot.kind === 'goalie';
      const frame = (x: number, y: number): boolean => isInFrame(net, x, y);
      findInside(track, net, frame, [track.spot], findings);
      if (goalie < 0 || isGoalie) return;
      const inCrease = (x: number, y: number): boolean => isInCrease(crease, x, y);
      findInside(track, net, inCrease, [track.spot, tracks[goalie]!.spot], findings);
    });
  }
  return findings;
};

/** Nobody farther than this from the middle of the goal line is in the crease or the frame, metres. */
const NEAR_M = 3.5;
/** Farther on in one sample nobody comes, at 14 m/s: samples before somebody could be near are left out. */
const MOST_STEP_M = 14 / STEP_HZ;

const findInside = (
  track: Track,
  net: Net,
  isInside: (beforeM: number, acrossM: number) => boolean,
  spots: readonly SpotId[],
  findings: Finding[],
): void => {
  const facingX = Math.cos(net.facingRad);
  const facingY = Math.sin(net.facingRad);
  let fromAt = -1;
  const close = (at: number): void => {
    if (fromAt >= 0) findings.push(findingAt(track, fromAt, at, spots));
    fromAt = -1;
  };
  for (let i = 0; i < track.xM.length; i++) {
    const x = track.xM[i]! - net.atM.xM;
    const y = track.yM[i]! - net.atM.yM;
    const farM = Math.sqrt(x * x + y * y);
    if (farM > NEAR_M) {
      close(i);
      i += Math.max(0, Math.floor((farM - NEAR_M) / MOST_STEP_M) - 1);
      continue;
    }
    if (!isInside(x * facingX + y * facingY, x * facingY - y * facingX)) close(i);
    else if (fromAt < 0) fromAt = i;
  }
  close(track.xM.length);
};

const findingAt = (track: Track, from: number, to: number, spots: readonly SpotId[]): Finding => {
  const act = track.acts[track.actIndex[from]!];
  return {
    kind: 'throughNet',
    weight: 'look',
    timeS: from / STEP_HZ,
    atM: { xM: track.xM[from]!, yM: track.yM[from]! },
    spots,
    ...(act === undefined ? {} : { act }),
    value: (to - from) / STEP_HZ,
    threshold: 0,
    unit: 's',
    status: 'derived',
    source: 'the net and the crease as they stand on this rink',
  };
};

const isInFrame = (net: Net, beforeM: number, acrossM: number): boolean =>
  beforeM <= 0 && beforeM >= -net.depthM && Math.abs(acrossM) <= net.openingM / 2;

const isInCrease = (crease: RinkLayout['crease'], beforeM: number, acrossM: number): boolean =>
  beforeM > 0 &&
  Math.abs(acrossM) <= crease.halfWidthM &&
  beforeM * beforeM + acrossM * acrossM <= crease.radiusM * crease.radiusM;

const goalieAt = (net: Net, actors: readonly Actor[], withinM: number): number =>
  actors.findIndex(
    ({ spot }) =>
      spot.kind === 'goalie' && Math.hypot(spot.atM.xM - net.atM.xM, spot.atM.yM - net.atM.yM) <= withinM,
  );
