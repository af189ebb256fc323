import { CARRIES_ON_MPS, KEEP_APART_M } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import { PIVOT_LOSS_RATIO, TURNS_AGAIN_S, TURNS_BACK_RATIO } from '../motion/body-rows.ts';
import type { SkaterModel } from '../skater/model.ts';
import type { IcePoint } from '../units/points.ts';
import { moved, pushToPoint, type ReferenceSkater, type ReferenceTrack, walk } from './run.reference.ts';

/** The keeper of a gap who stands at first, and how fast whom he keeps off can come. */
export interface ReferenceKeeper extends ReferenceSkater {
  readonly power: SkaterModel;
  readonly whomTopMps: number;
}

/**
 * The plain way to keep a gap facing whom it is kept to: Euler steps as `walk` makes them, what a turn costs by walking it, the speed at which a
 * way closes by halving. No boards, nobody else.
 */
export const referenceGap = (
  keeper: ReferenceKeeper,
  whomAt: (timeS: number) => Body,
  netM: IcePoint,
  distanceM: number,
  untilS: number,
): ReferenceTrack & { readonly turnsS: readonly number[] } => {
  const { power } = keeper;
  let isTurned = false;
  let changesUntilS = Number.NEGATIVE_INFINITY;
  let slows = { x: 0, y: 0 };
  let stepCount = 0;
  const turnsS: number[] = [];
  const pointOf = (whom: Body): IcePoint => {
    const toNetM = Math.hypot(netM.xM - whom.xM, netM.yM - whom.yM);
    const share = Math.min(1, distanceM / toNetM);
    return { xM: whom.xM + share * (netM.xM - whom.xM), yM: whom.yM + share * (netM.yM - whom.yM) };
  };
  const track = walk(
    keeper,
    whomAt,
    untilS,
    (body, whom, timeS) => {
      const goal = movingPoint(pointOf(whom), pointOf(moved(whom)));
      const facingRad = Math.atan2(whom.yM - body.yM, whom.xM - body.xM);
      const whomMps = Math.hypot(whom.xMps, whom.yMps);
      const times = whomMps < CARRIES_ON_MPS.value ? 1 : Math.max(1, keeper.whomTopMps / whomMps);
      const view = { power, body, goal, facingRad, times };
      // As often as the run looks: every 1/120 s.
      if (
        stepCount++ % 10 === 0 &&
        timeS >= changesUntilS + TURNS_AGAIN_S.value &&
        hasTime(view, whom) &&
        changes(view, isTurned)
      ) {
        const comesMps = along(body.xMps, body.yMps, facingRad);
        const bodyMps = Math.hypot(body.xMps, body.yMps);
        const isFree = comesMps > CARRIES_ON_MPS.value;
        const leavesMps = bodyMps * (1 - PIVOT_LOSS_RATIO.value);
        if (isFree || !isTurned || leavesMps <= power.backwardRatio * power.topSpeedMps) {
          isTurned = !isTurned;
          if (!isFree) {
            turnsS.push(timeS);
            changesUntilS = timeS + power.transitionS;
            slows = {
              x: (PIVOT_LOSS_RATIO.value * body.xMps) / power.transitionS,
              y: (PIVOT_LOSS_RATIO.value * body.yMps) / power.transitionS,
            };
          }
        }
      }
      if (timeS < changesUntilS) {
        return {
          x: (body.xMps - power.tauS * slows.x) / power.topSpeedMps,
          y: (body.yMps - power.tauS * slows.y) / power.topSpeedMps,
        };
      }
      const topMps = (x: number, y: number): number =>
        isTurned ? power.topSpeedMps : facingTopMps(power, Math.atan2(y, x) - facingRad);
      const stance = {
        times,
        topMps,
        turnS: power.transitionS,
        turnShare: 1,
        dares: false,
        frontM: Math.hypot(whom.xM - body.xM, whom.yM - body.yM) < distanceM ? distanceM : 0,
      };
      const push = pushToPoint(power, body, pointOf(whom), pointOf(moved(whom)), stance);
      const size = Math.hypot(push.x, push.y);
      const most = size > 0 ? topMps(push.x, push.y) / power.topSpeedMps : 1;
      const scale = size > most ? most / size : 1;
      return { x: scale * push.x, y: scale * push.y };
    },
    0,
  );
  return { ...track, turnsS };
};

interface View {
  readonly power: SkaterModel;
  readonly body: Body;
  readonly goal: Body;
  readonly facingRad: number;
  readonly times: number;
}

const A_LITTLE_S = 1e-4;

const movingPoint = (now: IcePoint, later: IcePoint): Body => ({
  ...now,
  xMps: (later.xM - now.xM) / A_LITTLE_S,
  yMps: (later.yM - now.yM) / A_LITTLE_S,
});

/** Where both are after the time a turn takes, straight on, they are still apart on the line between them now. */
const hasTime = ({ power, body, facingRad }: View, whom: Body): boolean =>
  along(
    whom.xM - body.xM + (whom.xMps - body.xMps) * power.transitionS,
    whom.yM - body.yM + (whom.yMps - body.yMps) * power.transitionS,
    facingRad,
  ) > KEEP_APART_M.value;

const along = (x: number, y: number, rad: number): number => x * Math.cos(rad) + y * Math.sin(rad);

/** The backward part of the speed is the level's at most. */
const facingTopMps = (power: SkaterModel, fromFacingRad: number): number => {
  const backward = -Math.cos(fromFacingRad);
  const forwardMps = power.topSpeedMps;
  return backward > 0 ? Math.min(forwardMps, (power.backwardRatio * forwardMps) / backward) : forwardMps;
};

const changes = (view: View, isTurned: boolean): boolean => {
  const { power, body, goal, facingRad, times } = view;
  const { topSpeedMps, transitionS, backwardRatio } = power;
  const goalMps = Math.hypot(goal.xMps, goal.yMps);
  const headingRad = Math.atan2(goal.yMps, goal.xMps);
  const isMps = along(body.xMps, body.yMps, headingRad);
  const savedS = savedByTurningS(view);
  if (isTurned)
    return goalMps < TURNS_BACK_RATIO.value * backwardRatio * topSpeedMps && savedS < transitionS / 2;
  if (savedS > 2 * transitionS) return true;
  if (goalMps === 0) return false;
  const afterMps = isMps - PIVOT_LOSS_RATIO.value * Math.max(0, isMps);
  const turningM = (goalMps - (isMps + afterMps) / 2) * transitionS;
  const turnM = (comesToMps: number): number =>
    turningM + gainedM(goalMps - afterMps, topSpeedMps - comesToMps, power.tauS);
  const stayM = gainedM(goalMps - isMps, facingTopMps(power, headingRad - facingRad) - goalMps, power.tauS);
  if (stayM === 0 || stayM <= turnM(goalMps)) return false;
  const aheadM = along(body.xM - goal.xM, body.yM - goal.yM, headingRad);
  return aheadM <= turnM(times * goalMps);
};

/** What a point gains on somebody slower until he is as fast, added up: the lack falls as ċ = −(spare + c)/τ. */
const gainedM = (lackMps: number, spareMps: number, tauS: number): number => {
  if (lackMps <= 0) return 0;
  if (spareMps <= 0) return Number.POSITIVE_INFINITY;
  const h = 1e-3;
  let wayM = 0;
  let c = lackMps;
  while (c > 0) {
    const next = c - ((spareMps + c) / tauS) * h;
    wayM += ((c + Math.max(0, next)) / 2) * h;
    c = next;
  }
  return wayM;
};

const savedByTurningS = ({ power, body, goal, facingRad }: View): number => {
  const x = goal.xM - body.xM;
  const y = goal.yM - body.yM;
  const farM = Math.hypot(x, y);
  const towardRad = Math.atan2(y, x);
  const forwardMps = closesAtMps(goal, towardRad, power.topSpeedMps);
  if (farM === 0 || forwardMps <= 0) return 0;
  const wayRad = Math.atan2(
    goal.yMps + forwardMps * Math.sin(towardRad),
    goal.xMps + forwardMps * Math.cos(towardRad),
  );
  const facingMps = closesAtMps(goal, towardRad, facingTopMps(power, wayRad - facingRad));
  return facingMps > 0 ? farM / facingMps - farM / forwardMps : Number.POSITIVE_INFINITY;
};

/** How fast a way can close, by halving on the speed over the ice that it takes; 0 when it cannot. */
const closesAtMps = (goal: Body, towardRad: number, topMps: number): number => {
  const takesMps = (s: number): number =>
    Math.hypot(goal.xMps + s * Math.cos(towardRad), goal.yMps + s * Math.sin(towardRad));
  let low = Math.max(0, -along(goal.xMps, goal.yMps, towardRad));
  if (takesMps(low) > topMps) return 0;
  let high = 100;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (takesMps(middle) > topMps) high = middle;
    else low = middle;
  }
  return low;
};
