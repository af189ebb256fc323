import type { Drill } from '@icewright/book';
import type { ActId, Id, SpotId } from '@icewright/engine';
import type { Chosen } from '../chosen.ts';

/** One thing of a drill that can be selected, on the ice or in the score. */
export type Picked =
  | { readonly kind: 'spot'; readonly spot: SpotId }
  | { readonly kind: 'act'; readonly spot: SpotId; readonly act: ActId }
  | { readonly kind: 'puck'; readonly puck: Id<'puck'> }
  | { readonly kind: 'gear'; readonly gear: Id<'gear'> }
  | { readonly kind: 'game'; readonly game: Id<'game'> };

/**
 * What is selected, in the order it was picked; the last one leads: the line of words and the fields speak of it. The ice and
 * the score show and change one and the same selection.
 */
export type Selection = readonly Picked[];

export const NOTHING: Selection = [];

export const pickedSpot = (spot: SpotId): Picked => ({ kind: 'spot', spot });
export const pickedAct = (spot: SpotId, act: ActId): Extract<Picked, { kind: 'act' }> => ({
  kind: 'act',
  spot,
  act,
});

export const isSame = (one: Picked, other: Picked): boolean => keyOf(one) === keyOf(other);

export const isPicked = (selection: Selection, one: Picked): boolean =>
  selection.some(each => isSame(each, one));

/** Added at the end, where it leads; one that was picked before is let go. */
export const toggled = (selection: Selection, one: Picked): Selection =>
  isPicked(selection, one) ? selection.filter(each => !isSame(each, one)) : [...selection, one];

/** A press: alone it picks only this, with Shift it adds or lets go. What is already picked with others stays, so that all can be dragged. */
export const pressed = (selection: Selection, one: Picked, adds: boolean): Selection => {
  if (adds) return toggled(selection, one);
  if (!isPicked(selection, one)) return [one];
  return [...selection.filter(each => !isSame(each, one)), one];
};

/** The same selection after something went: only what the drill still has. The same list when nothing went. */
export const stillThere = (selection: Selection, drill: Drill): Selection => {
  const left = selection.filter(one => isThere(one, drill));
  return left.length === selection.length ? selection : left;
};

/** The spot and act that lead: those whose fields are open. */
export const leadOf = (selection: Selection): Chosen => {
  const last = selection.at(-1);
  if (last?.kind === 'spot') return { spotId: last.spot, actId: null };
  if (last?.kind === 'act') return { spotId: last.spot, actId: last.act };
  return { spotId: null, actId: null };
};

/** Only this spot or act, or nothing. */
export const selectionOf = ({ spotId, actId }: Chosen): Selection => {
  if (spotId === null) return NOTHING;
  return [actId === null ? pickedSpot(spotId) : pickedAct(spotId, actId)];
};

export const spotsPicked = (selection: Selection): ReadonlySet<SpotId> =>
  new Set(selection.flatMap(one => (one.kind === 'spot' ? [one.spot] : [])));

/** Everything that stands or lies on the ice of its own: spots, pucks, gear, games. */
export const everything = (drill: Drill): Selection => [
  ...keysOf(drill.games).map(game => ({ kind: 'game', game }) as const),
  ...keysOf(drill.gear).map(gear => ({ kind: 'gear', gear }) as const),
  ...keysOf(drill.pucks).map(puck => ({ kind: 'puck', puck }) as const),
  ...keysOf(drill.spots).map(pickedSpot),
];

const isThere = (one: Picked, drill: Drill): boolean => {
  switch (one.kind) {
    case 'spot':
      return drill.spots[one.spot] !== undefined;
    case 'act':
      return drill.spots[one.spot]?.acts[one.act] !== undefined;
    case 'puck':
      return drill.pucks[one.puck] !== undefined;
    case 'gear':
      return drill.gear[one.gear] !== undefined;
    case 'game':
      return drill.games[one.game] !== undefined;
  }
};

const keyOf = (one: Picked): string => {
  switch (one.kind) {
    case 'spot':
      return `spot ${one.spot}`;
    case 'act':
      return `act ${one.spot} ${one.act}`;
    case 'puck':
      return `puck ${one.puck}`;
    case 'gear':
      return `gear ${one.gear}`;
    case 'game':
      return `game ${one.game}`;
  }
};

const keysOf = <Key extends string>(list: Readonly<Record<Key, unknown>>): Key[] =>
  Object.keys(list) as Key[];
