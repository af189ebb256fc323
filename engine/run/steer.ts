import { STANDING_MPS } from '../drill/drill-rows.ts';
import { steerChase } from '../motion/steer-chase.ts';
import { steerShadow } from '../motion/steer-gap.ts';
import { steerScreen } from '../motion/steer-screen.ts';
import type { Actor } from './actor.ts';
import { copyBody } from './actor-numbers.ts';
import { steerGuard } from './guard-net.ts';
import { keepApart } from './keep-apart.ts';
import { steerKeeper } from './keep-gap.ts';
import type { RunState } from './run-state.ts';
import { steerPickUp, steerSteal } from './steer-steal.ts';

/** Sets the push of a skater for the step to come; one on a drawn route needs none. */
export const steer = (run: RunState, actor: Actor): void => {
  switch (actor.motion) {
    case 'route':
      return;
    case 'ease':
    case 'face':
      coast(actor);
      return;
    case 'cutOff':
      pushToCutOff(run, actor);
      return;
    default:
      react(run, actor);
  }
};

/** Acts that look at the others: steered anew at every step, and kept off other bodies. */
const react = (run: RunState, actor: Actor): void => {
  const { numbers, self, other } = run;
  const { whom } = actor;
  copyBody(numbers, actor.at, self);
  if (whom) copyBody(numbers, whom.at, other);
  switch (actor.motion) {
    case 'shadow':
      steerShadow(actor, self, other);
      break;
    case 'chase':
      steerChase(actor, self, other);
      break;
    case 'steal':
      steerSteal(run, actor, whom!);
      break;
    case 'pickUp':
      steerPickUp(run, actor);
      break;
    case 'guard':
      steerGuard(run, actor);
      return;
    case 'gap':
      steerKeeper(run, actor, whom!);
      return;
    case 'screen':
      steerScreen(actor, self, other, run.rink.boards);
  }
  keepApart(actor, self, run);
};

const pushToCutOff = ({ nowS }: RunState, actor: Actor): void => {
  const { push } = actor;
  if (nowS < actor.reactsAtS) {
    push.x = actor.xMps / actor.power.topSpeedMps;
    push.y = actor.yMps / actor.power.topSpeedMps;
  } else {
    push.x = actor.cutX;
    push.y = actor.cutY;
  }
};

/** Nothing to do: the speed runs out. */
const coast = (actor: Actor): void => {
  const { push } = actor;
  const { xMps, yMps } = actor;
  push.x = 0;
  push.y = 0;
  if (xMps * xMps + yMps * yMps < STANDING_MPS.value * STANDING_MPS.value) {
    actor.xMps = 0;
    actor.yMps = 0;
  }
};
