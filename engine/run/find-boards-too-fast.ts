import { BOARDS_ROOM_M, BOARDS_TOLERANCE_RATIO, BOARDS_ZONE_M } from '../drill/drill-rows.ts';
import { boardsDistanceAt, speedIntoBoards } from '../drill/in-boards.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import type { Boards } from '../rink/boards.ts';
import type { Level } from '../skater/level.ts';
import { INTO_BOARDS_FROM } from './finding-rows.ts';
import type { Finding, Track } from './run-result.ts';

/**
 * Each time a skater within the last 3 m is too fast towards the boards to stop half a metre before them:
 * v > √(2·stop·(d − 0.5)), v the speed towards the boards, d the metres left. Value: metres left where it is worst; threshold:
 * metres needed, v²/(2·stop) + 0.5. Skating along the boards is no finding. `stopMps2` > 0, m/s². Metres, frame of the rink. Empty when there
 * is none. Source: the stopping law; the last 3 m and the half metre are estimates of `drill-rows.ts`.
 */
export const findBoardsTooFast = (
  track: Track,
  boards: Boards,
  stopMps2: number,
  level: Level,
): readonly Finding[] => {
  const findings: Finding[] = [];
  const zoneM = BOARDS_ZONE_M.value;
  const roomM = BOARDS_ROOM_M.value;
  let worstAt = -1;
  let worstLackM = 0;
  const close = (): void => {
    if (worstAt >= 0) findings.push(findingAt(track, boards, worstAt, stopMps2, level));
    worstAt = -1;
    worstLackM = 0;
  };
  for (let i = 0; i < track.xM.length; i++) {
    const x = track.xM[i]!;
    const y = track.yM[i]!;
    const leftM = boardsDistanceAt(boards, x, y);
    if (leftM > zoneM) {
      if (worstAt >= 0) close();
      i += Math.max(0, Math.floor((leftM - zoneM) / MOST_STEP_M) - 1);
      continue;
    }
    const intoMps = speedIntoBoards(boards, x, y, track.xMps[i]!, track.yMps[i]!);
    const needM = (intoMps * intoMps) / (2 * stopMps2) + roomM;
    if (intoMps <= MOVES_IN_MPS || needM - roomM <= BOARDS_TOLERANCE_RATIO.value * Math.max(0, leftM - roomM))
      continue;
    if (needM - leftM > worstLackM) {
      worstAt = i;
      worstLackM = needM - leftM;
    }
  }
  close();
  return findings;
};

/** Farther on in one sample nobody comes, at 14 m/s: samples before somebody could be in the last 3 m are left out. */
const MOST_STEP_M = 14 / STEP_HZ;

/** Slower towards the boards than this nobody is hurt; well under the 1.8 m/s at which a fall head first is held dangerous. */
const MOVES_IN_MPS = INTO_BOARDS_FROM.value;

const findingAt = (track: Track, boards: Boards, i: number, stopMps2: number, level: Level): Finding => {
  const atM = { xM: track.xM[i]!, yM: track.yM[i]! };
  const speedMps = speedIntoBoards(boards, atM.xM, atM.yM, track.xMps[i]!, track.yMps[i]!);
  const actIndex = track.actIndex[i]!;
  const act = track.acts[actIndex];
  return {
    kind: 'tooFastIntoBoards',
    weight: 'look',
    timeS: i / STEP_HZ,
    atM,
    spots: [track.spot],
    ...(act === undefined ? {} : { act }),
    value: boardsDistanceAt(boards, atM.xM, atM.yM),
    threshold: (speedMps * speedMps) / (2 * stopMps2) + BOARDS_ROOM_M.value,
    speedMps,
    unit: 'm',
    status: level.rows.stopDecelMps2.status,
    source: level.rows.stopDecelMps2.source,
  };
};
