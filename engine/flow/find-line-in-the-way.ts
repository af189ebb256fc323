import type { DrillPlan } from '../drill/drill.ts';
import { WAIT_APART_M } from '../run/finding-rows.ts';
import type { Finding, Run } from '../run/run-result.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { LineFlow, PlayedFlow } from './flow-result.ts';
import { LINE_ROOM_M, RETURN_MPS } from './flow-rows.ts';

/** Samples between two looks at a track. */
const LOOK_EVERY = 12;

interface Near {
  readonly apartM: number;
  readonly atM: IcePoint;
  readonly timeS: number;
  readonly spot: SpotId;
}

/**
 * Lines that wait nearer than `LINE_ROOM_M` to the way of a skater of another spot who is faster than easy skating, at both ends when both are
 * used. They stand behind the first one, away from where that one faces. One finding a line, at its nearest: value metres, at the
 * one who stands nearest. Pucks that fly past a line are the run's own finding, `shotAcrossGroup`.
 */
export const findLineInTheWay = (plan: DrillPlan, run: Run, flow: PlayedFlow): readonly Finding[] => {
  const turns = plan.flow === undefined || plan.flow.ends === 'one' ? [1] : [1, -1];
  return flow.lines.flatMap(line => {
    if (line.end !== 0 || line.skaterCount < 2) return [];
    const standing = standingOf(plan, line);
    const nearest = turns
      .flatMap(turn => skatersNear(run, line, standing, turn))
      .sort((a, b) => a.apartM - b.apartM)[0];
    if (!nearest || nearest.apartM >= LINE_ROOM_M.value) return [];
    return [
      {
        kind: 'lineInTheWay',
        weight: 'look',
        timeS: nearest.timeS,
        atM: nearest.atM,
        spots: [line.spot, nearest.spot],
        value: nearest.apartM,
        threshold: LINE_ROOM_M.value,
        unit: 'm',
        status: LINE_ROOM_M.status,
        source: LINE_ROOM_M.source,
      },
    ];
  });
};

/** Where those who wait stand, without the first. */
const standingOf = (plan: DrillPlan, line: LineFlow): readonly IcePoint[] => {
  const { atM, facingRad } = plan.spots[line.spot]!;
  return Array.from({ length: line.skaterCount - 1 }, (_, index) => ({
    xM: atM.xM - Math.cos(facingRad) * WAIT_APART_M.value * (index + 1),
    yM: atM.yM - Math.sin(facingRad) * WAIT_APART_M.value * (index + 1),
  }));
};

const skatersNear = (
  run: Run,
  line: LineFlow,
  standing: readonly IcePoint[],
  turn: number,
): readonly Near[] =>
  run.tracks.flatMap(track => {
    if (track.distanceM === 0 || (track.spot === line.spot && turn === 1)) return [];
    let nearest: Near | undefined;
    for (let i = 0; i < track.xM.length; i += LOOK_EVERY) {
      const fast2 = track.xMps[i]! ** 2 + track.yMps[i]! ** 2;
      if (fast2 < RETURN_MPS.value ** 2) continue;
      nearest = nearerOf(
        nearest,
        standing,
        turn * track.xM[i]!,
        turn * track.yM[i]!,
        i / run.stepHz,
        track.spot,
      );
    }
    return nearest ? [nearest] : [];
  });

/** The one who stands nearest to this place, when that is nearer than before and too near. */
const nearerOf = (
  before: Near | undefined,
  standing: readonly IcePoint[],
  xM: number,
  yM: number,
  timeS: number,
  spot: SpotId,
): Near | undefined => {
  let best = before;
  for (const atM of standing) {
    const dx = xM - atM.xM;
    const dy = yM - atM.yM;
    const leastM = best?.apartM ?? LINE_ROOM_M.value;
    if (dx * dx + dy * dy < leastM * leastM)
      best = { apartM: Math.sqrt(dx * dx + dy * dy), atM, timeS, spot };
  }
  return best;
};
