import { GAP_OFF_S, GAP_SETTLE_S, GAP_TOLERANCE_RATIO } from '../drill/drill-rows.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import type { Actor } from './actor.ts';
import { LEAST_GAP_HELD } from './finding-rows.ts';
import type { Finding, Track } from './run-result.ts';

type GapAct = PlayableAct & { readonly kind: 'gap' };

/**
 * Gaps that are off by more than `GAP_TOLERANCE_RATIO` of the wanted distance for longer than `GAP_OFF_S` on end, judged from when
 * they are first right, at the latest `GAP_SETTLE_S` after the act has started. The wanted distance is never more than what is
 * left to our net. One finding an act, at its worst: value metres between the two, threshold metres wanted, `speedMps` of who is kept off then. Weight
 * `look` when it is under, or when the one kept off is in our end with the gap open; else `know`. What is to be looked at is worse than
 * what is not, however wide that is: a gap that opens early does not hide that it is open in our end. `ourBlueLineXM` > 0, metres from the middle. Empty when every gap is held. Our own rule, with estimates
 * of `drill-rows.ts`.
 */
export const findGapNotHeld = (
  tracks: readonly Track[],
  actors: readonly Actor[],
  ourBlueLineXM: number,
): readonly Finding[] =>
  actors.flatMap((actor, index) =>
    actor.spot.acts.flatMap((act, actIndex) => {
      if (act.kind !== 'gap') return [];
      const whom = actors.findIndex(one => one.spot.id === act.whom);
      const worst =
        whom < 0 ? undefined : worstOf(tracks[index]!, tracks[whom]!, actor, act, actIndex, ourBlueLineXM);
      return worst ? [findingAt(worst, tracks[whom]!, actor, act)] : [];
    }),
  );

interface Worst {
  readonly at: number;
  readonly apartM: number;
  readonly wantedM: number;
  readonly isToLookAt: boolean;
}

const worstOf = (
  keeper: Track,
  whom: Track,
  actor: Actor,
  act: GapAct,
  actIndex: number,
  ourBlueLineXM: number,
): Worst | undefined => {
  const { xM: netX, yM: netY } = actor.netM;
  const count = keeper.xM.length;
  let startAt = -1;
  let isSet = false;
  let offFrom = -1;
  /** Worst of the stretch that is off now, and of all that were long enough. */
  let stretchAt = -1;
  let stretchOff = 0;
  let stretchToLook = false;
  let worstAt = -1;
  let worstOff = 0;
  let worstToLook = false;
  for (let i = 0; i <= count; i++) {
    const isUnderWay = i < count && keeper.actIndex[i] === actIndex;
    if (isUnderWay) {
      if (startAt < 0) startAt = i;
      const wantedM = Math.min(act.distanceM, apartOf(whom.xM[i]! - netX, whom.yM[i]! - netY));
      const apartM = apartOf(whom.xM[i]! - keeper.xM[i]!, whom.yM[i]! - keeper.yM[i]!);
      const off = offRatio(apartM, wantedM);
      const isOff = off > GAP_TOLERANCE_RATIO.value;
      isSet ||= !isOff || i - startAt > GAP_SETTLE_S.value * STEP_HZ;
      if (isSet && isOff) {
        if (offFrom < 0) offFrom = i;
        const isInOurEnd = netX < 0 ? whom.xM[i]! < -ourBlueLineXM : whom.xM[i]! > ourBlueLineXM;
        const isToLook = apartM < wantedM || isInOurEnd;
        if (stretchAt < 0 || isWorse(isToLook, off, stretchToLook, stretchOff)) {
          stretchAt = i;
          stretchOff = off;
          stretchToLook = isToLook;
        }
      }
      if (!isSet || isOff) continue;
    }
    const isLong = offFrom >= 0 && i - offFrom > GAP_OFF_S.value * STEP_HZ;
    if (isLong && (worstAt < 0 || isWorse(stretchToLook, stretchOff, worstToLook, worstOff))) {
      worstAt = stretchAt;
      worstOff = stretchOff;
      worstToLook = stretchToLook;
    }
    offFrom = -1;
    stretchAt = -1;
  }
  if (worstAt < 0) return undefined;
  const x = whom.xM[worstAt]!;
  const y = whom.yM[worstAt]!;
  return {
    at: worstAt,
    apartM: apartOf(x - keeper.xM[worstAt]!, y - keeper.yM[worstAt]!),
    wantedM: Math.min(act.distanceM, apartOf(x - netX, y - netY)),
    isToLookAt: worstToLook,
  };
};

const isWorse = (isToLook: boolean, off: number, wasToLook: boolean, offBefore: number): boolean =>
  isToLook === wasToLook ? off > offBefore : isToLook;

/** A gap of nothing is off by no part of it. */
const offRatio = (apartM: number, wantedM: number): number =>
  wantedM > LEAST_GAP_M ? Math.abs(apartM - wantedM) / wantedM : 0;

const apartOf = (x: number, y: number): number => Math.sqrt(x * x + y * y);

/** A wanted gap smaller than this is body to body: there is nothing to hold. */
const LEAST_GAP_M = LEAST_GAP_HELD.value;

const findingAt = (worst: Worst, whom: Track, actor: Actor, act: GapAct): Finding => {
  const atM = { xM: whom.xM[worst.at]!, yM: whom.yM[worst.at]! };
  return {
    kind: 'gapNotHeld',
    weight: worst.isToLookAt ? 'look' : 'know',
    timeS: worst.at / STEP_HZ,
    atM,
    spots: [actor.spot.id, act.whom],
    act: act.id,
    value: worst.apartM,
    speedMps: Math.hypot(whom.xMps[worst.at]!, whom.yMps[worst.at]!),
    threshold: worst.wantedM,
    unit: 'm',
    status: GAP_TOLERANCE_RATIO.status,
    source: GAP_TOLERANCE_RATIO.source,
  };
};
