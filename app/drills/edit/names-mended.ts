import type { DrillAct } from '@icewright/book';
import type { Cue, SpotId } from '@icewright/engine';

/** The spot's new name; null when there is no such spot where the part is put. */
export type NameMap = (spot: SpotId) => SpotId | null;

/** An act with the names of another drill in it; null when it can mean nothing there: who it was done to is missing. */
export const actNamed = (act: DrillAct, name: NameMap): DrillAct | null => {
  const { cue, ...rest } = deedNamed(act, name) ?? {};
  if (rest.kind === undefined) return null;
  const named = cue === undefined ? null : cueNamed(cue, name);
  return { ...rest, ...(named === null ? {} : { cue: named }) } as DrillAct;
};

/** The cue, or null when who fires it is missing. */
export const cueNamed = (cue: Cue, name: NameMap): Cue | null => {
  if (!('spot' in cue)) return cue;
  const spot = name(cue.spot);
  return spot === null ? null : { ...cue, spot };
};

/** Every spot that an act needs to be there, its cue's apart. */
export const needsOf = (act: DrillAct): readonly SpotId[] => {
  if (act.kind === 'pass') return [act.toSpot];
  if (act.kind === 'screen') return act.to === undefined ? [act.from] : [act.from, act.to];
  if ('whom' in act && act.whom !== undefined) return [act.whom];
  return [];
};

const deedNamed = (act: DrillAct, name: NameMap): Partial<DrillAct> | null => {
  const missing = needsOf(act).some(spot => name(spot) === null);
  if (missing) return null;
  const to = (spot: SpotId): SpotId => name(spot) ?? spot;
  if (act.kind === 'pass') return { ...act, toSpot: to(act.toSpot) };
  if (act.kind === 'screen')
    return { ...act, from: to(act.from), ...(act.to === undefined ? {} : { to: to(act.to) }) };
  if ('whom' in act && act.whom !== undefined) return { ...act, whom: to(act.whom) } as DrillAct;
  return act;
};
