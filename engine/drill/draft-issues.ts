import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { Act, Cue, DrillPlan, Flow, SmallGame, Spot } from './drill.ts';

export type DraftIssueCode =
  | 'notANumber'
  | 'outOfRange'
  | 'noSuchSpot'
  | 'noSuchGear'
  | 'aimsAtItself'
  | 'noPoints'
  | 'tooMany';

/** One thing that keeps a draft from being run: what, where in the plan, what stands there and what may. */
export interface DraftIssue {
  readonly code: DraftIssueCode;
  /** Keys from the plan down, such as `['spots', 'ab12', 'acts', 'cd34', 'toSpot']`. */
  readonly path: readonly string[];
  readonly value: unknown;
  readonly allowed: string;
}

const MOST_SPOTS = 60;
const MOST_ACTS = 40;
const MOST_POINTS = 64;
const FAR_M = 100;
const MOST_IN_GAME = 6;

/** Everything in the draft that has no meaning, in the order of the plan; empty when it can be run. */
export const draftIssuesOf = (plan: DrillPlan): readonly DraftIssue[] => {
  const issues: DraftIssue[] = [];
  const spots = Object.entries(plan.spots) as [SpotId, Spot][];
  if (spots.length > MOST_SPOTS) issues.push(tooMany(['spots'], spots.length, MOST_SPOTS));
  for (const [id, spot] of spots) issues.push(...spotIssues(plan, id, spot));
  for (const [id, puck] of Object.entries(plan.pucks)) {
    issues.push(...pointIssues(['pucks', id, 'atM'], puck.atM));
    if (puck.ownerSpot !== undefined) {
      issues.push(...nameIssues(plan, ['pucks', id, 'ownerSpot'], puck.ownerSpot));
    }
  }
  for (const [id, gear] of Object.entries(plan.gear)) {
    issues.push(...pointIssues(['gear', id, 'atM'], gear.atM));
  }
  for (const [id, game] of Object.entries(plan.games ?? {})) {
    issues.push(...gameIssues(plan, ['games', id], game));
  }
  return plan.flow ? [...issues, ...flowIssues(plan, plan.flow)] : issues;
};

const gameIssues = (plan: DrillPlan, path: readonly string[], game: SmallGame): DraftIssue[] => [
  ...pointIssues([...path, 'fromM'], game.fromM),
  ...pointIssues([...path, 'toM'], game.toM),
  ...rangeIssues([...path, 'usCount'], game.usCount, 0, MOST_IN_GAME),
  ...rangeIssues([...path, 'themCount'], game.themCount, 0, MOST_IN_GAME),
  ...rangeIssues([...path, 'shiftS'], game.shiftS, 5, 600),
  ...game.nets
    .filter(net => !Object.hasOwn(plan.gear, net))
    .map(net => ({
      code: 'noSuchGear' as const,
      path: [...path, 'nets'],
      value: net,
      allowed: 'gear of this drill',
    })),
];

const flowIssues = (plan: DrillPlan, flow: Flow): DraftIssue[] => [
  ...(flow.next.on === 'every' ? rangeIssues(['flow', 'next', 'seconds'], flow.next.seconds, 1, 600) : []),
  ...rangeIssues(['flow', 'pauseS'], flow.pauseS, 0, 120),
  ...Object.entries(flow.goesTo).flatMap(([spot, to]) => [
    ...nameIssues(plan, ['flow', 'goesTo', spot], spot as SpotId),
    ...nameIssues(plan, ['flow', 'goesTo', spot], to),
  ]),
];

const spotIssues = (plan: DrillPlan, id: SpotId, spot: Spot): DraftIssue[] => {
  const path = ['spots', id];
  const acts = Object.entries(spot.acts);
  const issues = [
    ...pointIssues([...path, 'atM'], spot.atM),
    ...rangeIssues([...path, 'facingRad'], spot.facingRad, -1e3, 1e3),
    ...rangeIssues([...path, 'rank'], spot.rank, -Infinity, Infinity),
  ];
  if (acts.length > MOST_ACTS) issues.push(tooMany([...path, 'acts'], acts.length, MOST_ACTS));
  for (const [actId, act] of acts) issues.push(...actIssues(plan, id, [...path, 'acts', actId], act));
  return issues;
};

const actIssues = (plan: DrillPlan, spot: SpotId, path: readonly string[], act: Act): DraftIssue[] => {
  const issues = act.cue ? cueIssues(plan, [...path, 'cue'], act.cue) : [];
  switch (act.kind) {
    case 'skate':
    case 'carry':
      if (act.throughM.length === 0 || act.throughM.length > MOST_POINTS) {
        issues.push({
          code: act.throughM.length === 0 ? 'noPoints' : 'tooMany',
          path: [...path, 'throughM'],
          value: act.throughM.length,
          allowed: `1 to ${MOST_POINTS} points`,
        });
      }
      act.throughM.forEach((point, i) => {
        issues.push(...pointIssues([...path, 'throughM', String(i)], point));
      });
      issues.push(...rangeIssues([...path, 'effortRatio'], act.effortRatio, 0, 1));
      break;
    case 'pass':
      issues.push(...otherIssues(plan, spot, [...path, 'toSpot'], act.toSpot));
      issues.push(...rangeIssues([...path, 'speedMps'], act.speedMps, act.way === 'drop' ? 0 : 1, 50));
      break;
    case 'shoot':
      issues.push(...rangeIssues([...path, 'speedMps'], act.speedMps, 1, 50));
      break;
    case 'hold':
      issues.push(...rangeIssues([...path, 'seconds'], act.seconds, 0, 120));
      break;
    case 'chase':
    case 'steal':
      issues.push(...otherIssues(plan, spot, [...path, 'whom'], act.whom));
      issues.push(...rangeIssues([...path, 'effortRatio'], act.effortRatio, 0, 1));
      break;
    case 'gap':
      issues.push(...otherIssues(plan, spot, [...path, 'whom'], act.whom));
      issues.push(...rangeIssues([...path, 'distanceM'], act.distanceM, 0, 30));
      break;
    case 'screen':
      issues.push(...otherIssues(plan, spot, [...path, 'from'], act.from));
      if (act.to !== undefined) issues.push(...otherIssues(plan, spot, [...path, 'to'], act.to));
      issues.push(...rangeIssues([...path, 'alongRatio'], act.alongRatio, 0, 1));
      break;
    case 'pickUp':
      issues.push(...rangeIssues([...path, 'effortRatio'], act.effortRatio, 0, 1));
      break;
    case 'turn':
      issues.push(...rangeIssues([...path, 'angleRad'], act.angleRad, -2 * Math.PI, 2 * Math.PI));
      issues.push(...rangeIssues([...path, 'effortRatio'], act.effortRatio, 0, 1));
      break;
    case 'face':
      if (act.whom !== undefined) issues.push(...otherIssues(plan, spot, [...path, 'whom'], act.whom));
      break;
    case 'leave':
    case 'stop':
    case 'pivot':
      break;
  }
  return issues;
};

const cueIssues = (plan: DrillPlan, path: readonly string[], cue: Cue): DraftIssue[] => {
  switch (cue.on) {
    case 'after':
      return rangeIssues([...path, 'seconds'], cue.seconds, 0, 120);
    case 'receive':
    case 'shot':
    case 'losesPuck':
    case 'caught':
    case 'spotCrosses':
      return nameIssues(plan, [...path, 'spot'], cue.spot);
    case 'reaches':
      return [
        ...nameIssues(plan, [...path, 'spot'], cue.spot),
        ...pointIssues([...path, 'atM'], cue.atM),
        ...rangeIssues([...path, 'withinM'], cue.withinM, 0.1, 30),
      ];
    default:
      return [];
  }
};

const otherIssues = (plan: DrillPlan, self: SpotId, path: readonly string[], spot: SpotId): DraftIssue[] =>
  spot === self
    ? [{ code: 'aimsAtItself', path, value: spot, allowed: 'another spot' }]
    : nameIssues(plan, path, spot);

const nameIssues = (plan: DrillPlan, path: readonly string[], spot: SpotId): DraftIssue[] =>
  Object.hasOwn(plan.spots, spot)
    ? []
    : [{ code: 'noSuchSpot', path, value: spot, allowed: 'a spot of this drill' }];

const pointIssues = (path: readonly string[], pointM: IcePoint): DraftIssue[] => [
  ...rangeIssues([...path, 'xM'], pointM.xM, -FAR_M, FAR_M),
  ...rangeIssues([...path, 'yM'], pointM.yM, -FAR_M, FAR_M),
];

const rangeIssues = (path: readonly string[], value: number, low: number, high: number): DraftIssue[] => {
  if (Number.isFinite(value) && value >= low && value <= high) return [];
  const code = Number.isFinite(value) ? 'outOfRange' : 'notANumber';
  return [{ code, path, value, allowed: `${low} to ${high}` }];
};

const tooMany = (path: readonly string[], value: number, most: number): DraftIssue => ({
  code: 'tooMany',
  path,
  value,
  allowed: `at most ${most}`,
});
