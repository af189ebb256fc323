import type { PlayableAct, PlayableSpot } from '../drill/playable-parts.ts';
import { STEP_HZ } from '../drill/step-hz.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';
import type { Finding, PuckTrack, Track } from './run-result.ts';

/**
 * Pucks that lie free at the end of the rep and that somebody should have fetched, and pucks that are not there at all:
 * - `puckLeftBehind` when somebody waits in vain for a puck (`noPuckToPlay` among the findings) while one lies free: the nearest;
 *   `spots` and `act`: who waits, and with what. As many of those who wait as there are such pucks.
 * - `tooFewPucks` when more acts need a puck than the drill has: value pucks needed, threshold pucks there; `spots`: who goes without.
 *   One who is alone in a drill without pucks has `noPuckToPlay`, which says it all.
 * - `puckLeftBehind` when a puck that was played lies out of everybody's reach and no act meant that; `spots`: who had it last, no `act`.
 * Shots are not fetched in the rep, and a shot, a leave and a drop are meant. A pass that goes astray has a finding of its own and
 * makes none here, nor does the wait for it; nor do pucks that nobody has touched and nobody wants. Value of the first and the last: metres
 * from the puck to that skater, or to the nearest one; threshold: the lunge. Weight `know`: they say why. Our own rule. Empty when there is nothing to say.
 */
export const findPuckLeft = (
  spots: readonly PlayableSpot[],
  lungeMs: readonly number[],
  tracks: readonly Track[],
  pucks: readonly PuckTrack[],
  findings: readonly Finding[],
): readonly Finding[] => {
  const astray = findings.filter(({ kind }) => STRAYS.has(kind));
  const loose = pucks
    .filter(puck => puck.owner.at(-1) === -1)
    .map(freeOf)
    .filter(one => !astray.some(finding => isOf(finding, one, tracks)) && !wasShot(one, spots, tracks));
  const waits = findings.filter(
    ({ kind, spots: [who] }) => kind === 'noPuckToPlay' && !isPassedTo(spots, who),
  );
  if (waits.length === 0) return loose.flatMap(one => lostIn(one, spots, tracks, lungeMs));
  const puckCount = pucks.reduce((sum, { count }) => sum + count, 0);
  const looseCount = loose.reduce((sum, { count }) => sum + count, 0);
  return [
    ...waits.slice(0, looseCount).flatMap(wait => besideWaiting(wait, loose, tracks, lungeMs)),
    ...tooFew(waits.slice(looseCount), puckCount),
  ];
};

const isPassedTo = (spots: readonly PlayableSpot[], who: SpotId | undefined): boolean =>
  spots.some(({ acts }) => acts.some(act => act.kind === 'pass' && act.toSpot === who));

const tooFew = (lacking: readonly Finding[], puckCount: number): readonly Finding[] => {
  const [first] = lacking;
  if (!first || puckCount + lacking.length < 2) return [];
  return [
    {
      kind: 'tooFewPucks',
      weight: 'know',
      timeS: first.timeS,
      atM: first.atM,
      spots: lacking.flatMap(one => one.spots),
      value: puckCount + lacking.length,
      threshold: puckCount,
      unit: 'pucks',
      status: 'derived',
      source: 'the pucks of the drill against the acts that want one',
    },
  ];
};

const STRAYS: ReadonlySet<string> = new Set(['receiverCannotGetThere', 'passDiesShort', 'noBankPass']);

interface Free {
  readonly atM: IcePoint;
  readonly sinceS: number;
  /** Index of who had it last; −1 when nobody has. */
  readonly lastOwner: number;
  readonly count: number;
}

const freeOf = (puck: PuckTrack): Free => {
  const last = puck.xM.length - 1;
  let i = last;
  while (i >= 0 && puck.owner[i]! < 0) i--;
  return {
    atM: { xM: puck.xM[last]!, yM: puck.yM[last]! },
    sinceS: (i + 1) / STEP_HZ,
    lastOwner: i < 0 ? -1 : puck.owner[i]!,
    count: puck.count,
  };
};

/** Whether a stray pass is that of this puck: its passer had the puck last. */
const isOf = (stray: Finding, free: Free, tracks: readonly Track[]): boolean => {
  const spot = tracks[free.lastOwner]?.spot;
  return spot !== undefined && stray.spots.includes(spot);
};

const besideWaiting = (
  wait: Finding,
  loose: readonly Free[],
  tracks: readonly Track[],
  lungeMs: readonly number[],
): readonly Finding[] => {
  const index = tracks.findIndex(({ spot }) => spot === wait.spots[0]);
  const nearest = nearestOf(loose, one => Math.hypot(one.atM.xM - wait.atM.xM, one.atM.yM - wait.atM.yM));
  if (index < 0 || !nearest) return [];
  return [
    {
      ...LEFT,
      timeS: nearest.of.sinceS,
      atM: nearest.of.atM,
      spots: wait.spots,
      ...(wait.act === undefined ? {} : { act: wait.act }),
      value: nearest.farM,
      threshold: lungeMs[index]!,
    },
  ];
};

const lostIn = (
  one: Free,
  spots: readonly PlayableSpot[],
  tracks: readonly Track[],
  lungeMs: readonly number[],
): readonly Finding[] => {
  const owner = spots[one.lastOwner];
  const track = tracks[one.lastOwner];
  if (!owner || !track || wasMeant(owner, track, one.sinceS)) return [];
  const nearest = nearestOf([...tracks.keys()], index =>
    Math.hypot(one.atM.xM - tracks[index]!.xM.at(-1)!, one.atM.yM - tracks[index]!.yM.at(-1)!),
  );
  if (!nearest || nearest.farM <= lungeMs[nearest.of]!) return [];
  return [
    {
      ...LEFT,
      timeS: one.sinceS,
      atM: one.atM,
      spots: [owner.id],
      value: nearest.farM,
      threshold: lungeMs[nearest.of]!,
    },
  ];
};

/** Whether the act at which the puck was let go means it: a leave, a drop. */
const wasMeant = (owner: PlayableSpot, track: Track, sinceS: number): boolean =>
  actsAbout(owner, track, sinceS).some(
    act => act.kind === 'leave' || (act.kind === 'pass' && act.way === 'drop'),
  );

const wasShot = (one: Free, spots: readonly PlayableSpot[], tracks: readonly Track[]): boolean => {
  const owner = spots[one.lastOwner];
  const track = tracks[one.lastOwner];
  return !!owner && !!track && actsAbout(owner, track, one.sinceS).some(({ kind }) => kind === 'shoot');
};

/** The acts about a time: a shot or a leave takes none, so that the samples show the act before it and the one after. */
const actsAbout = (spot: PlayableSpot, track: Track, timeS: number): readonly PlayableAct[] => {
  const last = track.actIndex.length - 1;
  const i = Math.min(Math.max(0, Math.round(timeS * STEP_HZ) - 1), last);
  const before = track.actIndex[i]!;
  const after = track.actIndex[Math.min(i + 2, last)]!;
  return spot.acts.slice(Math.max(0, before), Math.max(before, after) + 2);
};

const LEFT = {
  kind: 'puckLeftBehind',
  weight: 'know',
  unit: 'm',
  status: 'derived',
  source: 'where the puck lies when the rep as drawn has ended',
} as const;

const nearestOf = <Item>(
  items: readonly Item[],
  farOf: (item: Item) => number,
): { readonly of: Item; readonly farM: number } | undefined =>
  items
    .map(of => ({ of, farM: farOf(of) }))
    .reduce<{ of: Item; farM: number } | undefined>(
      (best, one) => (best && best.farM <= one.farM ? best : one),
      undefined,
    );
