import { puckAt, puckPath } from '../puck/path.ts';
import type { PuckModel } from '../puck/puck-model.ts';
import type { Boards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import type { BankPass } from './pass-parts.ts';
import { PASS_ROWS } from './pass-rows.ts';

/** What is uncertain about a bank pass, one standard deviation each. */
export interface BankSpread {
  readonly restitutionSd: number;
  readonly boardFrictionSd: number;
  readonly aimSdRad: number;
}

/**
 * How wide a bank pass fans out, one standard deviation. `directionSdRad`: of the way out of the last bounce;
 * `atMeetSdM`: of where the puck is at the meeting time, square to its way, `alongSdM` along it. `parts`: the share of
 * each cause in `atMeetSdM`, same unit.
 */
export interface BankCone {
  readonly directionSdRad: number;
  readonly atMeetSdM: number;
  readonly alongSdM: number;
  readonly parts: { readonly restitutionM: number; readonly boardFrictionM: number; readonly aimM: number };
}

/** The spreads of the rows, with a skater's own spread of aim. `aimSdRad` ≥ 0, radians. Source: the rows. */
export const bankSpreadOf = (aimSdRad: number): BankSpread => ({
  restitutionSd: PASS_ROWS.restitutionSd.value,
  boardFrictionSd: PASS_ROWS.boardFrictionSd.value,
  aimSdRad,
});

/**
 * The cone of a bank pass. Computed by shooting the pass again with the restitution, the boards' friction and the aim each
 * moved one standard deviation up and down (kept inside the valid range), alone; half the difference is the effect,
 * and independent effects add as squares. First order: for the wide fans of flat bounces it is a measure, not an edge.
 * Source: first-order propagation by central differences.
 */
export const bankCone = (
  boards: Boards,
  model: PuckModel,
  passerM: IcePoint,
  pass: Pick<BankPass, 'launchRad' | 'launchSpeedMps' | 'arrivalS'> & {
    readonly bounces: readonly unknown[];
  },
  spread: BankSpread,
): BankCone => {
  const end = (changed: PuckModel, aimRad: number): { xM: number; yM: number; rad: number } => {
    const path = puckPath(boards, changed, passerM, pass.launchRad + aimRad, pass.launchSpeedMps, {
      rims: false,
      maxTimeS: pass.arrivalS + 1e-9,
      maxBounces: pass.bounces.length,
    });
    const { atM, velocity } = puckAt(path, pass.arrivalS);
    return { ...atM, rad: Math.atan2(velocity.yMps, velocity.xMps) };
  };
  const middle = end(model, 0);
  const acrossX = -Math.sin(middle.rad);
  const acrossY = Math.cos(middle.rad);
  const effect = (low: ReturnType<typeof end>, high: ReturnType<typeof end>) => {
    const dx = (high.xM - low.xM) / 2;
    const dy = (high.yM - low.yM) / 2;
    const turn = Math.atan2(Math.sin(high.rad - low.rad), Math.cos(high.rad - low.rad)) / 2;
    return { across: dx * acrossX + dy * acrossY, along: dx * acrossY - dy * acrossX, turn };
  };
  const e = model.restitutionRatio;
  const friction = model.boardFrictionRatio;
  const byRestitution = effect(
    end({ ...model, restitutionRatio: Math.max(0, e - spread.restitutionSd) }, 0),
    end({ ...model, restitutionRatio: Math.min(1, e + spread.restitutionSd) }, 0),
  );
  const byFriction = effect(
    end({ ...model, boardFrictionRatio: Math.max(0, friction - spread.boardFrictionSd) }, 0),
    end({ ...model, boardFrictionRatio: friction + spread.boardFrictionSd }, 0),
  );
  const byAim = effect(end(model, -spread.aimSdRad), end(model, spread.aimSdRad));
  return {
    directionSdRad: Math.hypot(byRestitution.turn, byFriction.turn, byAim.turn),
    atMeetSdM: Math.hypot(byRestitution.across, byFriction.across, byAim.across),
    alongSdM: Math.hypot(byRestitution.along, byFriction.along, byAim.along),
    parts: {
      restitutionM: Math.abs(byRestitution.across),
      boardFrictionM: Math.abs(byFriction.across),
      aimM: Math.abs(byAim.across),
    },
  };
};
