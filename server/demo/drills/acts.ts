import { type At, type DemoAct, pointOf, spotIdOf } from './drill-of.ts';

type More = Record<string, unknown>;

/** Skating or carrying along a line through these points. */
export const along = (kind: 'skate' | 'carry', through: readonly At[], more: More = {}): DemoAct => ({
  kind,
  throughM: through.map(pointOf),
  facing: 'forward',
  effortRatio: 1,
  stops: false,
  ...more,
});

export const pass = (toRole: string, speedMps: number, more: More = {}): DemoAct => ({
  kind: 'pass',
  toSpot: spotIdOf(toRole),
  way: 'direct',
  speedMps,
  ...more,
});

export const shoot = (atEnd: 'minusX' | 'plusX', speedMps = 22): DemoAct => ({
  kind: 'shoot',
  atEnd,
  speedMps,
});
export const gap = (role: string, distanceM: number, more: More = {}): DemoAct => ({
  kind: 'gap',
  whom: spotIdOf(role),
  distanceM,
  ...more,
});
export const chase = (role: string, more: More = {}): DemoAct => ({
  kind: 'chase',
  whom: spotIdOf(role),
  effortRatio: 1,
  ...more,
});
export const steal = (role: string, more: More = {}): DemoAct => ({
  kind: 'steal',
  whom: spotIdOf(role),
  effortRatio: 1,
  ...more,
});
export const pickUp = (more: More = {}): DemoAct => ({ kind: 'pickUp', effortRatio: 1, ...more });
export const screen = (fromRole: string, toRole: string, alongRatio: number, more: More = {}): DemoAct => ({
  kind: 'screen',
  from: spotIdOf(fromRole),
  to: spotIdOf(toRole),
  alongRatio,
  ...more,
});
/** Anticlockwise positive; little effort brakes first and turns tight. */
export const turn = (angleRad: number, effortRatio = 0.3, more: More = {}): DemoAct => ({
  kind: 'turn',
  angleRad,
  effortRatio,
  ...more,
});
export const face = (role?: string, more: More = {}): DemoAct => ({
  kind: 'face',
  ...(role ? { whom: spotIdOf(role) } : {}),
  ...more,
});
export const plain = (kind: 'leave' | 'stop' | 'pivot', more: More = {}): DemoAct => ({ kind, ...more });
