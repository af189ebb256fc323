/** A puck's motion: velocity of its centre along the axes (m/s) and spin (rad/s, anticlockwise positive). */
export interface PuckMotion {
  readonly xMps: number;
  readonly yMps: number;
  readonly spinRadps: number;
}

export interface BounceLaw {
  readonly restitutionRatio: number;
  readonly boardFrictionRatio: number;
  readonly puckRadiusM: number;
}

/** Speeds at a bounce: into (before) or out of (after) the boards, along them, and of the edge by spin; m/s. */
export interface BoardsSpeeds {
  readonly normalMps: number;
  readonly alongMps: number;
  readonly edgeMps: number;
}

/**
 * Impact of a rigid disc (I = ½mR²) on the boards, restitution e and Coulomb friction μ_b, in the frame of the boards:
 * into-boards speed ≥ 0 in, out-of-boards speed out. "Along" is the direction (n_y, −n_x) of the inward normal n, and
 * `edgeMps` = Rω. The touching edge slips with along + edge; friction ends when the slip does (the |slip|/3 case).
 * Never adds energy for 0 ≤ e ≤ 1. Source: Routh's impact with friction, as in Partridge & Spong 2000.
 */
export const boardsSpeedsAfter = (before: BoardsSpeeds, law: BounceLaw): BoardsSpeeds => {
  const slip = before.alongMps + before.edgeMps;
  const grip = law.boardFrictionRatio * (1 + law.restitutionRatio) * before.normalMps;
  const push = Math.sign(slip) * Math.min(grip, Math.abs(slip) / 3);
  return {
    normalMps: law.restitutionRatio * before.normalMps,
    alongMps: before.alongMps - push,
    edgeMps: before.edgeMps - 2 * push,
  };
};

/**
 * The same on the ice: motion after a bounce at a place with this inward unit normal. A puck of radius 0 has no edge
 * and keeps its spin. A motion that leads away from the boards comes back unchanged. Source: rigid disc with Coulomb
 * friction (Routh), as in checks/data/puck.json.
 */
export const bounceOff = (
  motion: PuckMotion,
  normal: { readonly xM: number; readonly yM: number },
  law: BounceLaw,
): PuckMotion => {
  const into = -(motion.xMps * normal.xM + motion.yMps * normal.yM);
  if (into <= 0) return motion;
  const after = boardsSpeedsAfter(
    {
      normalMps: into,
      alongMps: motion.xMps * normal.yM - motion.yMps * normal.xM,
      edgeMps: law.puckRadiusM * motion.spinRadps,
    },
    law,
  );
  return {
    xMps: after.normalMps * normal.xM + after.alongMps * normal.yM,
    yMps: after.normalMps * normal.yM - after.alongMps * normal.xM,
    spinRadps: law.puckRadiusM > 0 ? after.edgeMps / law.puckRadiusM : motion.spinRadps,
  };
};
