const TURN_RAD = 2 * Math.PI;

/** The same direction in (−π, π]. Any finite angle in radians. */
export const wrapRad = (angleRad: number): number => {
  if (angleRad > -Math.PI && angleRad <= Math.PI) return angleRad;
  const turned = angleRad - TURN_RAD * Math.round(angleRad / TURN_RAD);
  return turned <= -Math.PI ? turned + TURN_RAD : turned;
};
