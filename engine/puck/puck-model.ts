import { PUCK_ROWS } from './puck-rows.ts';

/**
 * The constants of one puck on one rink. Valid: frictionRatio, dragPerM, boardFrictionRatio ≥ 0, restitutionRatio in
 * [0, 1], puckRadiusM ≥ 0 (0 = a point), gravityMps2 > 0.
 */
export interface PuckModel {
  readonly frictionRatio: number;
  readonly dragPerM: number;
  readonly gravityMps2: number;
  readonly restitutionRatio: number;
  readonly boardFrictionRatio: number;
  readonly puckRadiusM: number;
}

/**
 * The defaults of `PUCK_ROWS`, with a rink's own values where there are some. Throws a RangeError on a value outside the
 * valid range of `PuckModel`: measured values are checked where they enter. Source: the rows.
 */
export const puckModelOf = (own: Partial<PuckModel> = {}): PuckModel => {
  const model: PuckModel = {
    frictionRatio: PUCK_ROWS.frictionRatio.value,
    dragPerM: PUCK_ROWS.dragPerM.value,
    gravityMps2: PUCK_ROWS.gravityMps2.value,
    restitutionRatio: PUCK_ROWS.restitutionRatio.value,
    boardFrictionRatio: PUCK_ROWS.boardFrictionRatio.value,
    puckRadiusM: PUCK_ROWS.puckRadiusM.value,
    ...own,
  };
  const { frictionRatio, dragPerM, boardFrictionRatio, puckRadiusM, restitutionRatio, gravityMps2 } = model;
  const valid =
    [frictionRatio, dragPerM, boardFrictionRatio, puckRadiusM].every(value => value >= 0) &&
    restitutionRatio >= 0 &&
    restitutionRatio <= 1 &&
    gravityMps2 > 0;
  if (!valid) throw new RangeError(`no such puck: ${JSON.stringify(model)}`);
  return model;
};
