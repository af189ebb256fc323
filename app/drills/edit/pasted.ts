import { type Drill, type DrillAct, type DrillPart, type DrillSpot, newId } from '@icewright/book';
import type { Id, SpotId } from '@icewright/engine';
import { actSaid } from '../act-words.ts';
import type { Write } from '../write.ts';
import { freeRole } from './free-role.ts';
import { areGoalies, mappedAct, mappedGame, mappedGear, mappedSpot } from './mapped-parts.ts';
import { actNamed, type NameMap, needsOf } from './names-mended.ts';
import type { PlaceMap } from './place-map.ts';
import type { Picked, Selection } from './selection.ts';

export interface Pasted {
  readonly writes: readonly Write[];
  /** What is new, to be selected. */
  readonly selection: Selection;
  /** The new name of every spot of the part. */
  readonly spotIds: ReadonlyMap<SpotId, SpotId>;
  /** What could not come along and why, a sentence each. */
  readonly said: readonly string[];
}

type Part = Omit<DrillPart, 'icewright' | 'schema'>;

/** A drill is refused with more: engine/drill/draft-issues.ts. */
const MOST_SPOTS = 60;

/**
 * A part put into a drill with new ids, laid elsewhere by `map`. Names inside the part go to the new ones; a spot outside of
 * it is kept where this drill has it, else the act that needs it, or the cue that waits for it, stays behind. `onto`
 * takes the acts that were copied alone.
 */
export const pasted = (drill: Drill, part: Part, map: PlaceMap, onto: SpotId | null = null): Pasted => {
  const spots = Object.entries(part.spots) as [SpotId, DrillSpot][];
  if (Object.keys(drill.spots).length + spots.length > MOST_SPOTS)
    return nothing(`A drill has room for ${MOST_SPOTS} spots.`);
  const spotIds = new Map(spots.map(([id]) => [id, newId<'spot'>()]));
  const gearIds = new Map(keysOf(part.gear).map(id => [id, newId<'gear'>()]));
  const name: NameMap = spot => spotIds.get(spot) ?? (drill.spots[spot] === undefined ? null : spot);
  const said: string[] = [];
  const lay = (role: string, act: DrillAct): DrillAct | null => {
    const laid = actNamed(mappedAct(act, map), name);
    const missing = [...needsOf(act), ...(laid !== null && laid.cue === undefined ? cuedBy(act) : [])].find(
      spot => name(spot) === null,
    );
    if (missing !== undefined)
      said.push(leftBehind(role, part.outside[missing] ?? 'somebody', laid === null));
    return laid;
  };
  const areOfNet = areGoalies(spots.map(([, spot]) => spot));
  const taken = new Set(Object.values(drill.spots).map(spot => spot.role));
  let rank = Math.max(-1, ...Object.values(drill.spots).map(spot => spot.rank));
  const writes: Write[] = [];
  const selection: Picked[] = [];
  for (const [id, spot] of spots.sort(([, a], [, b]) => a.rank - b.rank)) {
    const role = freeRole(spot, taken);
    taken.add(role);
    rank += 1;
    const acts = Object.values(spot.acts).flatMap(act => {
      const laid = lay(role, act);
      return laid === null ? [] : [[newId<'act'>(), laid] as const];
    });
    const value = { ...mappedSpot(spot, map, areOfNet), rank, role, acts: Object.fromEntries(acts) };
    const spotId = spotIds.get(id)!;
    writes.push({ path: ['spots', spotId], value });
    selection.push({ kind: 'spot', spot: spotId });
  }
  for (const puck of Object.values(part.pucks)) {
    const puckId = newId<'puck'>();
    const owner = puck.ownerSpot === undefined ? undefined : spotIds.get(puck.ownerSpot);
    writes.push({
      path: ['pucks', puckId],
      value: {
        atM: map.point(puck.atM),
        count: puck.count,
        ...(owner === undefined ? {} : { ownerSpot: owner }),
      },
    });
    if (owner === undefined) selection.push({ kind: 'puck', puck: puckId });
  }
  for (const [id, gear] of Object.entries(part.gear)) {
    const gearId = gearIds.get(id as Id<'gear'>)!;
    writes.push({ path: ['gear', gearId], value: mappedGear(gear, map) });
    selection.push({ kind: 'gear', gear: gearId });
  }
  let gameRank = Math.max(-1, ...Object.values(drill.games).map(game => game.rank));
  for (const game of Object.values(part.games)) {
    const gameId = newId<'game'>();
    gameRank += 1;
    const nets = game.nets.flatMap(net => gearIds.get(net) ?? (drill.gear[net] === undefined ? [] : [net]));
    writes.push({ path: ['games', gameId], value: { ...mappedGame(game, map), rank: gameRank, nets } });
    selection.push({ kind: 'game', game: gameId });
  }
  const onActs = actsOnto(drill, part, onto, lay);
  return {
    writes: [...writes, ...onActs.writes],
    selection: [...selection, ...onActs.selection],
    spotIds,
    said: [...said, ...onActs.said],
  };
};

/** Acts that were copied alone come after all that the spot does already; nobody passes to himself. */
const actsOnto = (
  drill: Drill,
  part: Part,
  onto: SpotId | null,
  lay: (role: string, act: DrillAct) => DrillAct | null,
): Pick<Pasted, 'writes' | 'selection' | 'said'> => {
  if (part.acts.length === 0) return { writes: [], selection: [], said: [] };
  const spot = onto === null ? undefined : drill.spots[onto];
  if (onto === null || spot === undefined)
    return { writes: [], selection: [], said: ['Select who shall do it, then paste.'] };
  const writes: Write[] = [];
  const selection: Picked[] = [];
  const said: string[] = [];
  let rank = Math.max(-1, ...Object.values(spot.acts).map(act => act.rank));
  for (const act of part.acts) {
    const laid = lay(spot.role, act);
    if (laid === null) continue;
    if (needsOf(laid).includes(onto)) {
      said.push(`${spot.role} cannot do it to himself or herself: “${actSaid(drill, laid)}” stayed behind.`);
      continue;
    }
    rank += 1;
    const id = newId<'act'>();
    writes.push({ path: ['spots', onto, 'acts', id], value: { ...laid, rank } });
    selection.push({ kind: 'act', spot: onto, act: id });
  }
  return { writes, selection, said };
};

const cuedBy = (act: DrillAct): readonly SpotId[] =>
  act.cue !== undefined && 'spot' in act.cue ? [act.cue.spot] : [];

const leftBehind = (role: string, missing: string, isAct: boolean): string =>
  isAct
    ? `An act of ${role} stayed behind: ${missing} is not in this drill.`
    : `${role} no longer waits for ${missing}, who is not in this drill.`;

const nothing = (sentence: string): Pasted => ({
  writes: [],
  selection: [],
  spotIds: new Map(),
  said: [sentence],
});

const keysOf = <Key extends string>(list: Readonly<Record<Key, unknown>>): Key[] =>
  Object.keys(list) as Key[];
