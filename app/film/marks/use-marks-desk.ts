import { type Game, type Mark, newId } from '@icewright/book';
import type { IcePoint } from '@icewright/engine';
import { type FilmMarkKind, placesWanted } from '@icewright/picture';
import { useState } from 'react';
import { edit, endStep } from '../../shell/book.ts';
import { standWithFirstMark } from '../holds/marked-stand.ts';
import { rounded } from './lay-mark.ts';
import type { MarkPlace } from './mark-places.ts';

/** What lies on the desk while marks are laid and changed. */
export interface MarksDesk {
  readonly isOpen: boolean;
  readonly setOpen: (isOpen: boolean) => void;
  /** The kind in the hand: the next presses lay one of it. */
  readonly kind: FilmMarkKind | undefined;
  readonly take: (kind: FilmMarkKind | undefined) => void;
  /** Places of the mark that is being laid. */
  readonly laid: readonly MarkPlace[];
  readonly setLaid: (laid: readonly MarkPlace[]) => void;
  readonly chosen: string | undefined;
  readonly choose: (id: string | undefined) => void;
  /** A mark on its way: shown at once, written when it is let go. */
  readonly inHand: { readonly id: string; readonly at: readonly MarkPlace[] } | undefined;
  readonly hold: (inHand: MarksDesk['inHand']) => void;
  readonly write: MarkWriting;
}

export interface MarkWriting {
  add(mark: Omit<Mark, 'madeAt'>): string;
  /** By keys many small moves are one step of undo; by hand each is one. */
  set(id: string, change: Partial<Pick<Mark, 'at' | 'text' | 'fromS' | 'toS' | 'sizeM'>>, by?: 'keys'): void;
  tieToFreeze(id: string, freeze: Mark['freeze']): void;
  remove(id: string): void;
}

export const useMarksDesk = (gameId: string, game: Game): MarksDesk => {
  const [isOpen, setOpen] = useState(false);
  const [kind, setKind] = useState<FilmMarkKind>();
  const [laid, setLaid] = useState<readonly MarkPlace[]>([]);
  const [chosen, choose] = useState<string>();
  const [inHand, hold] = useState<MarksDesk['inHand']>();
  const take = (next: FilmMarkKind | undefined) => {
    setKind(next);
    setLaid([]);
    if (next) choose(undefined);
  };
  return {
    isOpen,
    setOpen: open => {
      take(undefined);
      choose(undefined);
      setOpen(open);
    },
    kind,
    take,
    laid,
    setLaid,
    chosen,
    choose,
    inHand,
    hold,
    write: writingOf(gameId, game),
  };
};

const writingOf = (gameId: string, game: Game): MarkWriting => ({
  add: mark => {
    const id = newId<'mark'>();
    endStep(gameId);
    edit(gameId).transact(() => {
      edit(gameId).set(['marks', id], { ...mark, at: mark.at.map(kept), madeAt: new Date().toISOString() });
      letStand(gameId, game, mark.freeze);
    });
    endStep(gameId);
    return id;
  },
  set: (id, change, by) => {
    if (by !== 'keys') endStep(gameId);
    edit(gameId).transact(() => {
      for (const [field, value] of Object.entries(change))
        edit(gameId).set(['marks', id, field], field === 'at' ? (value as MarkPlace[]).map(kept) : value);
    });
  },
  tieToFreeze: (id, freeze) => {
    endStep(gameId);
    edit(gameId).transact(() => {
      if (freeze) edit(gameId).set(['marks', id, 'freeze'], freeze);
      else edit(gameId).remove(['marks', id, 'freeze']);
      letStand(gameId, game, freeze);
    });
  },
  remove: id => {
    endStep(gameId);
    edit(gameId).remove(['marks', id]);
    endStep(gameId);
  },
});

/** In the same step of undo as the mark that it is for. */
const letStand = (gameId: string, game: Game, freeze: Mark['freeze']): void => {
  const holdS = standWithFirstMark(game, freeze);
  if (holdS !== undefined) edit(gameId).set(['freezes', freeze!, 'holdS'], holdS);
};

const kept = (place: MarkPlace): MarkPlace => ({ ...place, atM: rounded(place.atM) });

/** The mark's places after all that does not hang on a skater has moved by so much. */
export const movedPlaces = (at: readonly MarkPlace[], byM: IcePoint): MarkPlace[] =>
  at.map(place =>
    place.track || place.placed ? place : { atM: { xM: place.atM.xM + byM.xM, yM: place.atM.yM + byM.yM } },
  );

export const isEnough = (kind: FilmMarkKind, count: number): boolean => count >= placesWanted(kind).most;
