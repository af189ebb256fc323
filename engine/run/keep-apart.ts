import { KEEP_APART_M, KEEP_APART_S, MAKE_ROOM_S } from '../drill/drill-rows.ts';
import type { Body } from '../drill/in-boards.ts';
import { limitPush } from '../motion/reactive-step.ts';
import type { Actor } from './actor.ts';
import { ACTOR_NUMBERS, X_MPS, Y, Y_MPS } from './actor-numbers.ts';
import type { RunState } from './run-state.ts';

const FAR_M2 = 10 ** 2;
const APART_M2 = KEEP_APART_M.value ** 2;
/**
 * Who passes with so much room passes with enough until the next look too: two who turn and brake as hard as the levels can change their straight
 * ways by less than this meanwhile.
 */
const SURE_M2 = (KEEP_APART_M.value + 0.5) ** 2;
const SAME_PLACE_M = 1e-6;

/**
 * Turns the push of a steered skater aside where it would come within `KEEP_APART_M` of another body in the next
 * `KEEP_APART_S`, both at their present velocities: adds the velocity that makes up the missing room at the nearest approach, on the
 * side on which it would pass anyway. The one who is chased is no obstacle to the chaser. A skater who is overtaken is so
 * beaten to the side, not skated through. Scripted skaters turn aside for nobody. `self`: the skater's own body. Metres, seconds;
 * changes `actor.push`.
 */
export const keepApart = (actor: Actor, self: Readonly<Body>, run: RunState): void => {
  roomFor(actor, self, run);
  makeRoom(actor);
};

/** Sets what the push of a steered skater lacks for that room. */
export const roomFor = (actor: Actor, self: Readonly<Body>, { actors, numbers }: RunState): void => {
  const { at, whom } = actor;
  const chasedAt = actor.motion === 'chase' && whom ? whom.at : at;
  let mayMeet = false;
  let addX = 0;
  let addY = 0;
  for (let other = 0; other < actors.length * ACTOR_NUMBERS; other += ACTOR_NUMBERS) {
    if (other === at || other === chasedAt) continue;
    const x = self.xM - numbers[other]!;
    const y = self.yM - numbers[other + Y]!;
    const apart2 = x * x + y * y;
    if (apart2 > FAR_M2) continue;
    const xMps = self.xMps - numbers[other + X_MPS]!;
    const yMps = self.yMps - numbers[other + Y_MPS]!;
    const toward = -(x * xMps + y * yMps);
    const speed2 = xMps * xMps + yMps * yMps;
    const across = x * yMps - y * xMps;
    // Goes away, or passes on its straight way with room enough, and more than enough until the next look: most do, and need no division.
    if (apart2 >= SURE_M2 && (toward <= 0 || across * across >= SURE_M2 * speed2)) continue;
    mayMeet = true;
    if (apart2 >= APART_M2 && (toward <= 0 || across * across >= APART_M2 * speed2)) continue;
    const nearestS = speed2 > 0 ? toward / speed2 : 0;
    const inS = Math.min(KEEP_APART_S.value, Math.max(0, nearestS));
    let missX = x + inS * xMps;
    let missY = y + inS * yMps;
    let missM = Math.sqrt(missX * missX + missY * missY);
    const lackM = KEEP_APART_M.value - missM;
    if (lackM <= 0) continue;
    if (missM < SAME_PLACE_M || across * across < SAME_PLACE_M * SAME_PLACE_M * speed2) {
      // Dead ahead: to the left of the relative motion for one of two, to the right for the other.
      const side = at < other ? 1 : -1;
      missX = speed2 > 0 ? -side * yMps : side;
      missY = speed2 > 0 ? side * xMps : 0;
      missM = Math.sqrt(missX * missX + missY * missY);
    }
    const wantMps = lackM / Math.max(MAKE_ROOM_S.value, inS);
    addX += (wantMps * missX) / missM;
    addY += (wantMps * missY) / missM;
  }
  actor.mayMeet = mayMeet;
  actor.roomX = addX;
  actor.roomY = addY;
};

/** Adds to the push what `roomFor` found. */
export const makeRoom = ({ push, power, roomX, roomY, responseKeeps }: Actor): void => {
  if (roomX === 0 && roomY === 0) return;
  const reachMps = (1 - responseKeeps) * power.topSpeedMps;
  push.x += roomX / reachMps;
  push.y += roomY / reachMps;
  limitPush(push);
};
