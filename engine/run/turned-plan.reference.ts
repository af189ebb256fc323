import type { Act, DrillPlan } from '../drill/drill.ts';
import type { IcePoint } from '../units/points.ts';

/** The same drill on the other side of the middle of the ice: y becomes −y. */
export const mirrored = (plan: DrillPlan): DrillPlan =>
  changed(
    plan,
    ({ xM, yM }) => ({ xM, yM: -yM }),
    rad => -rad,
    act => (act.kind === 'turn' ? { ...act, angleRad: -act.angleRad } : act),
  );

/** The same drill at the other end: turned half round, for drills in which neither side's own net matters. */
export const halfTurned = (plan: DrillPlan): DrillPlan =>
  changed(
    plan,
    ({ xM, yM }) => ({ xM: -xM, yM: -yM }),
    rad => rad + Math.PI,
    act => (act.kind === 'shoot' ? { ...act, atEnd: act.atEnd === 'minusX' ? 'plusX' : 'minusX' } : act),
  );

const changed = (
  plan: DrillPlan,
  point: (pointM: IcePoint) => IcePoint,
  angle: (rad: number) => number,
  deed: (act: Act) => Act,
): DrillPlan => ({
  ...plan,
  spots: mapped(plan.spots, spot => ({
    ...spot,
    atM: point(spot.atM),
    facingRad: angle(spot.facingRad),
    acts: mapped(spot.acts, act =>
      deed('throughM' in act ? { ...act, throughM: act.throughM.map(point) } : act),
    ),
  })),
  pucks: mapped(plan.pucks, puck => ({ ...puck, atM: point(puck.atM) })),
  gear: mapped(plan.gear, gear => ({ ...gear, atM: point(gear.atM), facingRad: angle(gear.facingRad) })),
});

const mapped = <Key extends string, Value>(
  list: Readonly<Record<Key, Value>>,
  change: (value: Value) => Value,
): Record<Key, Value> =>
  Object.fromEntries(
    (Object.entries(list) as [Key, Value][]).map(([key, value]) => [key, change(value)]),
  ) as Record<Key, Value>;
