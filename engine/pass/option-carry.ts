import { boardsDistance } from '../rink/boards.ts';
import { LOGISTIC_PER_SD } from '../skater/control-at.ts';
import { timeTo } from '../skater/reach.ts';
import { isNone } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { receiverMiddleAt } from './blade.ts';
import type { CarryOption, OptionScene, OptionSkater } from './option-parts.ts';
import { laneOpponentOf, velocityOf } from './option-people.ts';
import type { Receiver } from './pass-parts.ts';
import { PASS_ROWS } from './pass-rows.ts';

const HEADING_COUNT = 13;
const STEP_S = 0.05;
const BOARDS_ROOM_M = PASS_ROWS.carryBoardsRoomM.value;

/**
 * Skating the puck instead: of thirteen headings in the half towards the end we attack, full effort with the level's carry
 * ratio, the one with the best chance that no opponent is on the puck within the look-ahead (row `carryLookS`, less
 * where the boards come first); of equal ones the one that gains most ground.
 */
export const carryOption = (scene: OptionScene, carrier: OptionSkater): CarryOption => {
  const aheadRad = scene.attacks === 'plusX' ? 0 : Math.PI;
  const options = Array.from({ length: HEADING_COUNT }, (_, index) => {
    const turnRad = ((index - (HEADING_COUNT - 1) / 2) * Math.PI) / (HEADING_COUNT - 1);
    return headingOption(scene, carrier, aheadRad + turnRad);
  });
  const gain = (option: CarryOption): number =>
    option.chance + 1e-3 * (option.endsM.xM - scene.puckM.xM) * (scene.attacks === 'plusX' ? 1 : -1);
  return options.reduce((kept, option) => (gain(option) > gain(kept) ? option : kept));
};

const headingOption = (scene: OptionScene, carrier: OptionSkater, headingRad: number): CarryOption => {
  const { model } = carrier;
  const skating: Receiver = {
    atM: scene.puckM,
    velocityMps: velocityOf(carrier),
    bladeOffsetM: { xM: 0, yM: 0 },
    drive: {
      topSpeedMps: model.topSpeedMps * model.carryRatio,
      tauS: model.tauS,
      driveRad: headingRad,
    },
  };
  const opponents = scene.them.map(laneOpponentOf);
  const lowest = opponents.map(() => Number.POSITIVE_INFINITY);
  let freeForS: number = PASS_ROWS.carryLookS.value;
  let endsM: IcePoint = scene.puckM;
  let spaceM = 0;
  let byId: string | undefined;
  for (let timeS = 0; timeS <= PASS_ROWS.carryLookS.value + 1e-9; timeS += STEP_S) {
    const at = receiverMiddleAt(skating, timeS);
    if (timeS > 0 && boardsDistance(scene.boards, at) < BOARDS_ROOM_M) {
      freeForS = Math.min(freeForS, timeS);
      break;
    }
    if (byId === undefined) {
      spaceM += Math.hypot(at.xM - endsM.xM, at.yM - endsM.yM);
      endsM = at;
    }
    for (const [index, opponent] of opponents.entries()) {
      const arrival = timeTo(opponent.state, opponent.power, at);
      if (isNone(arrival)) continue;
      lowest[index] = Math.min(lowest[index]!, arrival - timeS);
      if (arrival <= timeS && byId === undefined) {
        byId = opponent.id;
        freeForS = timeS;
      }
    }
  }
  let chance = 1;
  for (const [index, margin] of lowest.entries()) {
    if (margin === Number.POSITIVE_INFINITY) continue;
    chance /= 1 + Math.exp((-LOGISTIC_PER_SD * margin) / opponents[index]!.spreadS);
  }
  const marginS = Math.min(Number.POSITIVE_INFINITY, ...lowest);
  // A way that ends at the boards was looked at for less long: its chance counts for the part that was skated.
  const share =
    freeForS < PASS_ROWS.carryLookS.value && byId === undefined ? freeForS / PASS_ROWS.carryLookS.value : 1;
  return {
    kind: 'carry',
    headingRad: Math.atan2(Math.sin(headingRad), Math.cos(headingRad)),
    freeForS,
    spaceM,
    endsM,
    marginS,
    chance: chance * share,
    why: [
      { term: 'lane', value: chance, unit: '' },
      { term: 'freeFor', value: freeForS, unit: 's', ...(byId === undefined ? {} : { id: byId }) },
      { term: 'spaceAhead', value: spaceM, unit: 'm' },
      ...(Number.isFinite(marginS) ? [{ term: 'margin', value: marginS, unit: 's' } as const] : []),
    ],
    ...(byId === undefined ? {} : { byId }),
  };
};
