import type { Freeze, Game, Placed } from '@icewright/book';
import { newId } from '@icewright/book';
import type { FilmPoint, IcePoint } from '@icewright/engine';
import { useMemo, useState } from 'react';
import { edit, endStep } from '../shell/book.ts';
import { foundRole, nextRole } from './people-words.ts';
import { trackOfPlaced } from './track/track-of-placed.ts';

/** What a press on the picture or on the ice does. */
export type Tool =
  | { readonly kind: 'look' }
  | { readonly kind: 'pin'; readonly landmark?: string; readonly waitingAt?: FilmPoint }
  | { readonly kind: 'place'; readonly side: Placed['side']; readonly who: Placed['kind'] }
  | { readonly kind: 'puck' }
  | { readonly kind: 'measure'; readonly first?: string }
  | { readonly kind: 'wanted'; readonly who?: string };

/** Something on the picture: by kind and id. */
export type Thing =
  | { readonly kind: 'pin' | 'skater'; readonly id: string }
  | { readonly kind: 'puck'; readonly id: 'puck' };

/** What is in the hand now: shown at once, written when it is let go. */
export type InHand =
  | { readonly thing: Thing; readonly at: FilmPoint }
  | { readonly ghostOf: string; readonly atM: IcePoint };

export interface Desk {
  readonly freezeId: string;
  /** The freeze with what is in the hand already moved. */
  readonly freeze: Freeze;
  readonly tool: Tool;
  readonly setTool: (tool: Tool) => void;
  readonly chosen: string | undefined;
  readonly choose: (id: string | undefined) => void;
  /** Pairs being measured. */
  readonly pairs: readonly Pair[];
  readonly addPair: (a: string, b: string) => void;
  readonly dropPair: (pair: Pair) => void;
  readonly hold: (inHand: InHand | undefined) => void;
  readonly write: FreezeWriting;
  /** Why nobody's wanted place can be said now. */
  readonly noWanted?: string;
}

/** Two skaters, or a skater and the puck, by id. */
export type Pair = readonly [a: string, b: string];

export interface FreezeWriting {
  addPin(landmark: string, at: FilmPoint): void;
  renamePin(id: string, landmark: string): void;
  leaveOut(id: string, leftOut: boolean): void;
  addSkater(side: Placed['side'], kind: Placed['kind'], feet: FilmPoint): string;
  /** Somebody found in the picture, or several in one step. */
  addFound(side: Placed['side'], people: readonly FoundFeet[]): void;
  setSkater(id: string, change: Partial<Pick<Placed, 'role' | 'skater' | 'side' | 'kind'>>): void;
  /** By keys many small moves are one step of undo; by hand each is one. */
  move(thing: Thing, at: FilmPoint, by: 'hand' | 'keys'): void;
  remove(thing: Thing): void;
  setPuck(at: FilmPoint): void;
  setCarrier(id: string | undefined): void;
  setGhost(id: string, atM: IcePoint | undefined): void;
  set(field: 'title' | 'attacks' | 'habit' | 'allPlaced', value: string | undefined): void;
}

export interface FoundFeet extends Required<Pick<Placed, 'feet' | 'feetSdPx' | 'kind'>> {}

/** The desk of the open freeze; undefined while none is open. Another freeze begins with a clean desk. */
export const useDesk = (
  gameId: string,
  freezeId: string | undefined,
  kept: Freeze | undefined,
  tracks: Game['tracks'],
): Desk | undefined => {
  const [lying, setLying] = useState<Lying>({ on: undefined, pairs: [] });
  const write = useMemo(
    () => (freezeId && kept ? writingOf(gameId, freezeId, kept, tracks) : undefined),
    [gameId, freezeId, kept, tracks],
  );
  const own = lying.on === freezeId ? lying : { on: freezeId, pairs: [] };
  const freeze = useMemo(
    () => kept && (own.inHand ? withInHand(kept, own.inHand) : kept),
    [kept, own.inHand],
  );
  if (!freezeId || !kept || !freeze || !write) return undefined;
  const change = (part: Partial<Lying>) =>
    setLying(now => ({ ...(now.on === freezeId ? now : { on: freezeId, pairs: [] }), ...part }));
  return {
    freezeId,
    freeze,
    tool: own.tool ?? toolToBegin(kept),
    setTool: tool => change({ tool }),
    chosen: own.chosen,
    choose: chosen => change({ chosen }),
    pairs: own.pairs,
    addPair: (a, b) => change({ pairs: [...own.pairs.filter(one => !isSame(one, [a, b])), [a, b]] }),
    dropPair: pair => change({ pairs: own.pairs.filter(one => one !== pair) }),
    hold: inHand => change({ inHand }),
    write,
  };
};

interface Lying {
  readonly on: string | undefined;
  readonly tool?: Tool;
  readonly chosen?: string | undefined;
  readonly pairs: readonly Pair[];
  readonly inHand?: InHand | undefined;
}

const isSame = ([a, b]: Pair, [c, d]: Pair): boolean => (a === c && b === d) || (a === d && b === c);

/** A fresh freeze begins with its pins. */
const toolToBegin = (freeze: Freeze): Tool =>
  Object.keys(freeze.pins).length < 4 && !freeze.carried ? { kind: 'pin' } : { kind: 'look' };

const writingOf = (
  gameId: string,
  freezeId: string,
  freeze: Freeze,
  tracks: Game['tracks'],
): FreezeWriting => {
  const at = (...path: string[]) => ['freezes', freezeId, ...path];
  const game = () => {
    endStep(gameId);
    return edit(gameId);
  };
  const setOrRemove = (path: string[], value: unknown) =>
    value === undefined ? edit(gameId).remove(path) : edit(gameId).set(path, value);
  /** Who is followed from here is followed from where his feet are now. */
  const moveFeet = (id: string, px: FilmPoint) =>
    edit(gameId).transact(() => {
      const placed = freeze.skaters[id as keyof Freeze['skaters']];
      const followed = placed && trackOfPlaced(tracks, freeze, placed);
      edit(gameId).set(at('skaters', id, 'feet'), px);
      // A hand has put them there now.
      edit(gameId).remove(at('skaters', id, 'feetSdPx'));
      if (followed) edit(gameId).set(['tracks', followed.track, 'hands', followed.hand, 'feet'], px);
    });
  return {
    addPin: (landmark, px) => {
      game().set(at('pins', newId<'pin'>()), { landmark, at: px, leftOut: false });
    },
    renamePin: (id, landmark) => game().set(at('pins', id, 'landmark'), landmark),
    leaveOut: (id, leftOut) => game().set(at('pins', id, 'leftOut'), leftOut),
    addSkater: (side, kind, feet) => {
      const id = newId<'placed'>();
      game().set(at('skaters', id), { side, kind, role: nextRole(freeze, side, kind), feet });
      return id;
    },
    addFound: (side, people) => {
      const change = game();
      change.transact(() => {
        let skaters: Freeze['skaters'] = freeze.skaters;
        for (const { feet, feetSdPx, kind } of people) {
          const id = newId<'placed'>();
          const one = { side, kind, role: foundRole({ skaters }, side, kind), feet, feetSdPx };
          change.set(at('skaters', id), one);
          skaters = { ...skaters, [id]: one };
        }
      });
      endStep(gameId);
    },
    setSkater: (id, change) =>
      edit(gameId).transact(() => {
        for (const [field, value] of Object.entries(change)) setOrRemove(at('skaters', id, field), value);
      }),
    move: (thing, px, by) => {
      const change = by === 'hand' ? game() : edit(gameId);
      if (thing.kind === 'pin') change.set(at('pins', thing.id, 'at'), px);
      else if (thing.kind === 'skater') moveFeet(thing.id, px);
      else change.set(at('puck'), { ...freeze.puck, at: px });
    },
    remove: thing => {
      const change = game();
      change.transact(() => {
        if (thing.kind === 'puck') change.remove(at('puck'));
        else change.remove(at(thing.kind === 'pin' ? 'pins' : 'skaters', thing.id));
        // Whoever is taken out is without a mark again: what was said of all of us holds no longer.
        const isOurs = freeze.skaters[thing.id as keyof Freeze['skaters']]?.side === 'us';
        if (isOurs && freeze.allPlaced) change.remove(at('allPlaced'));
        if (freeze.puck && freeze.puck.carrier === thing.id) change.set(at('puck'), { at: freeze.puck.at });
      });
    },
    setPuck: px => game().set(at('puck'), { ...freeze.puck, at: px }),
    setCarrier: id =>
      freeze.puck && game().set(at('puck'), { at: freeze.puck.at, ...(id ? { carrier: id } : {}) }),
    setGhost: (id, atM) => setOrRemove(at('skaters', id, 'ghostM'), atM),
    set: (field, value) => setOrRemove(at(field), value),
  };
};

const withInHand = (freeze: Freeze, inHand: InHand): Freeze => {
  if ('ghostOf' in inHand) return withSkater(freeze, inHand.ghostOf, { ghostM: inHand.atM });
  const { thing, at } = inHand;
  if (thing.kind === 'skater') return withSkater(freeze, thing.id, { feet: at });
  if (thing.kind === 'puck') return freeze.puck ? { ...freeze, puck: { ...freeze.puck, at } } : freeze;
  const pin = freeze.pins[thing.id as keyof typeof freeze.pins];
  return pin ? { ...freeze, pins: { ...freeze.pins, [thing.id]: { ...pin, at } } } : freeze;
};

const withSkater = (freeze: Freeze, id: string, change: Partial<Placed>): Freeze => {
  const skater = freeze.skaters[id as keyof typeof freeze.skaters];
  return skater ? { ...freeze, skaters: { ...freeze.skaters, [id]: { ...skater, ...change } } } : freeze;
};
