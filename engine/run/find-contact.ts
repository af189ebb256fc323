import { BODIES_TOUCH_M } from '../drill/drill-rows.ts';
import type { PlayableAct } from '../drill/playable-parts.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import { CONTACT_MPS, FRONT_RAD, noCheckingRowOf, PINNED_M } from './finding-rows.ts';
import type { Finding, RunEvent, Track } from './run-result.ts';
import type { RunState } from './run-state.ts';

/**
 * Where the drill as played asks for body contact at a level below the age of body checking, or of women's hockey. Of two on
 * opposite sides, of whom one hunts the other, the first time that
 * - the hunter catches the other, has the stick on the puck, or in a steal comes within a lunge, within `PINNED_M` of the boards, or
 * - does so from the front (within `FRONT_RAD` of where the other goes) at no less than `CONTACT_MPS`, or
 * - their bodies touch (`BODIES_TOUCH_M`) at no less than that.
 * Value: speed at which the two come together, m/s, 0 when they do not; threshold: 0, no contact is meant. Place: of the one hunted; `spots`: hunter,
 * hunted. It is a caution: the federation's rules decide. Empty at the levels that check.
 */
export const findContact = (
  run: Pick<RunState, 'playable' | 'rink'>,
  tracks: readonly Track[],
  events: readonly RunEvent[],
): readonly Finding[] => {
  const row = noCheckingRowOf(run.playable.level.id);
  if (!row) return [];
  const { spots } = run.playable;
  return spots.flatMap((spot, hunter) =>
    [...new Set(spot.acts.flatMap(act => (isHunt(act.kind) && 'whom' in act ? act.whom : [])))].flatMap(
      whom => {
        const hunted = spots.findIndex(({ id }) => id === whom);
        if (hunted < 0 || spots[hunted]!.side === spot.side) return [];
        const by = tracks[hunter]!;
        const of = tracks[hunted]!;
        const upon = [
          ...events
            .filter(event => isCatch(event, of.spot, by.spot))
            .map(({ timeS }) => Math.min(Math.round(timeS * STEP_HZ), of.xM.length - 1)),
          ...reachesOf(spot.acts, by, of, run.playable.level.model.lungeReachM),
        ].sort((a, b) => a - b);
        const caughtAt = upon.find(at => isHard(run, by, of, at)) ?? -1;
        const touchAt = firstTouch(by, of);
        const at = caughtAt >= 0 && (touchAt < 0 || caughtAt <= touchAt) ? caughtAt : touchAt;
        if (at < 0) return [];
        return [
          {
            kind: 'contactBelowAge',
            weight: 'look',
            timeS: at / STEP_HZ,
            atM: placeAt(of, at),
            spots: [by.spot, of.spot],
            value: Math.max(0, closingMps(by, of, at)),
            threshold: 0,
            unit: 'm/s',
            status: row.status,
            source: row.source,
          } satisfies Finding,
        ];
      },
    ),
  );
};

const isHunt = (kind: string): boolean => kind === 'chase' || kind === 'steal';

/** The hunter is upon the other: within reach, or with the stick on the puck. */
const isCatch = (event: RunEvent, of: SpotId, by: SpotId): boolean =>
  ((event.kind === 'caught' || event.kind === 'loose') && event.spot === of && event.by === by) ||
  (event.kind === 'steal' && event.spot === by && event.from === of);

/** Samples in which a thief is within a lunge of the other: one who comes too fast to win the puck is upon the other all the same. */
const reachesOf = (acts: readonly PlayableAct[], by: Track, of: Track, lungeM: number): readonly number[] => {
  const samples: number[] = [];
  if (!acts.some(act => act.kind === 'steal' && act.whom === of.spot)) return samples;
  for (let i = 0; i < of.xM.length; i++) {
    const act = acts[by.actIndex[i]!];
    if (act?.kind !== 'steal' || act.whom !== of.spot) continue;
    const x = by.xM[i]! - of.xM[i]!;
    const y = by.yM[i]! - of.yM[i]!;
    if (x * x + y * y <= lungeM * lungeM) samples.push(i);
  }
  return samples;
};

const isHard = (run: Pick<RunState, 'rink'>, by: Track, of: Track, at: number): boolean =>
  boardsDistance(run.rink.boards, placeAt(of, at)) < PINNED_M.value || isFromFront(by, of, at);

const placeAt = (track: Track, i: number): IcePoint => ({ xM: track.xM[i]!, yM: track.yM[i]! });

const isFromFront = (by: Track, of: Track, i: number): boolean => {
  const speed = Math.hypot(of.xMps[i]!, of.yMps[i]!);
  const x = by.xM[i]! - of.xM[i]!;
  const y = by.yM[i]! - of.yM[i]!;
  const ahead = x * of.xMps[i]! + y * of.yMps[i]!;
  return (
    ahead > Math.cos(FRONT_RAD.value) * speed * Math.hypot(x, y) && closingMps(by, of, i) >= CONTACT_MPS.value
  );
};

/** Samples left out while the two are farther apart than two skaters at 14 m/s each come together by the next look. */
const LOOK_EVERY = 12;
const FAR_M = BODIES_TOUCH_M.value + (28 * LOOK_EVERY) / STEP_HZ;

const firstTouch = (by: Track, of: Track): number => {
  for (let i = 0; i < of.xM.length; i++) {
    const x = by.xM[i]! - of.xM[i]!;
    const y = by.yM[i]! - of.yM[i]!;
    const apart2 = x * x + y * y;
    if (apart2 > FAR_M * FAR_M) i += LOOK_EVERY - 1;
    if (apart2 > BODIES_TOUCH_M.value ** 2) continue;
    if (closingMps(by, of, i) >= CONTACT_MPS.value) return i;
  }
  return -1;
};

/** How fast the distance between the two shrinks, m/s; negative when it grows. */
const closingMps = (by: Track, of: Track, i: number): number => {
  const x = of.xM[i]! - by.xM[i]!;
  const y = of.yM[i]! - by.yM[i]!;
  const apartM = Math.hypot(x, y);
  if (apartM === 0) return 0;
  return ((by.xMps[i]! - of.xMps[i]!) * x + (by.yMps[i]! - of.yMps[i]!) * y) / apartM;
};
