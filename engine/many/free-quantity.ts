import type { Act, DrillPlan, Spot } from '../drill/drill.ts';
import type { MendWrite } from '../mends/mend.ts';
import { planAfter } from '../mends/plan-after.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { TUNE_DELAY, TUNE_EFFORT, TUNE_GAP, TUNE_HARDEST, TUNE_MOVES, TUNE_SOFTEST } from './many-rows.ts';

/** What may move so that the wanted comes out, and between which values. SI units: metres, seconds, m/s; an effort is a ratio. */
export type FreeQuantity = {
  readonly spot: SpotId;
  readonly low: number;
  readonly high: number;
  /** As the plan has it. */
  readonly now: number;
} & (
  | {
      readonly kind: 'spotAlong';
      /** The value is metres from here, in this direction. */
      readonly fromM: IcePoint;
      readonly direction: { readonly x: number; readonly y: number };
      readonly way: 'lengthwise' | 'crosswise';
    }
  | { readonly kind: 'delay' | 'gap' | 'passSpeed' | 'effort'; readonly act: ActId }
);

/** How far a spot may be moved for a tuned answer, metres each way: beyond it is another drill. */
const MOVES_M = TUNE_MOVES.value;
const MOST_DELAY_S = TUNE_DELAY.value;
const MOST_GAP_M = TUNE_GAP.value;
const PASS_MPS = [TUNE_SOFTEST.value, TUNE_HARDEST.value] as const;
const LEAST_EFFORT = TUNE_EFFORT.value;

/**
 * What may move of this spot: where it starts, lengthwise and crosswise; delays of its cues, its gaps, the speed of its passes, its
 * efforts. In the order in which a coach would try. Empty for a spot that the plan does not have.
 */
export const freeQuantitiesOf = (plan: DrillPlan, spotId: SpotId): readonly FreeQuantity[] => {
  const spot = plan.spots[spotId];
  if (!spot) return [];
  const acts = (Object.entries(spot.acts) as [ActId, Act][]).sort(([, a], [, b]) => a.rank - b.rank);
  return [...startsOf(spotId, spot), ...acts.flatMap(([id, act]) => ofAct(spotId, id, act))];
};

const startsOf = (spotId: SpotId, { atM }: Spot): readonly FreeQuantity[] => [
  {
    kind: 'spotAlong',
    way: 'lengthwise',
    spot: spotId,
    fromM: { xM: 0, yM: atM.yM },
    direction: { x: 1, y: 0 },
    low: atM.xM - MOVES_M,
    high: atM.xM + MOVES_M,
    now: atM.xM,
  },
  {
    kind: 'spotAlong',
    way: 'crosswise',
    spot: spotId,
    fromM: { xM: atM.xM, yM: 0 },
    direction: { x: 0, y: 1 },
    low: atM.yM - MOVES_M,
    high: atM.yM + MOVES_M,
    now: atM.yM,
  },
];

const ofAct = (spot: SpotId, id: ActId, act: Act): readonly FreeQuantity[] => {
  const found: FreeQuantity[] = [];
  const add = (kind: 'delay' | 'gap' | 'passSpeed' | 'effort', low: number, high: number, now: number) =>
    found.push({ kind, spot, act: id, low, high, now });
  if (act.cue?.on === 'after') add('delay', 0, Math.max(MOST_DELAY_S, act.cue.seconds), act.cue.seconds);
  if (act.kind === 'gap') add('gap', 1, MOST_GAP_M, act.distanceM);
  if (act.kind === 'pass') add('passSpeed', ...PASS_MPS, act.speedMps);
  if ('effortRatio' in act) add('effort', LEAST_EFFORT, 1, act.effortRatio);
  return found;
};

/**
 * What has to be set in the plan for this value: any finite number in the quantity's unit, for a good plan between its `low` and
 * `high`. A puck that starts on the spot's stick comes along. Empty when the plan does not have the spot.
 */
export const changesFor = (plan: DrillPlan, free: FreeQuantity, value: number): readonly MendWrite[] => {
  const spot = plan.spots[free.spot];
  if (!spot) return [];
  if (free.kind === 'spotAlong') {
    const atM = {
      xM: free.fromM.xM + free.direction.x * value,
      yM: free.fromM.yM + free.direction.y * value,
    };
    const along = Object.entries(plan.pucks).filter(([, puck]) => puck.ownerSpot === free.spot);
    return [
      { path: ['spots', free.spot, 'atM'], value: atM },
      ...along.map(([id, puck]) => ({
        path: ['pucks', id, 'atM'],
        value: {
          xM: puck.atM.xM + atM.xM - spot.atM.xM,
          yM: puck.atM.yM + atM.yM - spot.atM.yM,
        },
      })),
    ];
  }
  const field = {
    delay: ['cue', 'seconds'],
    gap: ['distanceM'],
    passSpeed: ['speedMps'],
    effort: ['effortRatio'],
  }[free.kind];
  return [{ path: ['spots', free.spot, 'acts', free.act, ...field], value }];
};

/**
 * The plan with this value (any finite number in the quantity's unit, as in `changesFor`). The plan itself is not changed, and every
 * part that stays is the same object.
 */
export const planWith = (plan: DrillPlan, free: FreeQuantity, value: number): DrillPlan =>
  planAfter(plan, changesFor(plan, free, value));
