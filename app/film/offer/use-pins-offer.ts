import type { Game, Team } from '@icewright/book';
import { newId } from '@icewright/book';
import type { PinsOffer } from '@icewright/engine';
import { useMemo } from 'react';
import { edit, endStep } from '../../shell/book.ts';
import type { Desk } from '../freeze-desk.ts';
import type { FreezeView } from '../freeze-view.ts';
import { type Looking, useOneLook } from '../one-look.ts';
import type { Player } from '../player.ts';
import { knownEnds } from './known-ends.ts';
import { noOfferWords } from './no-offer-words.ts';
import type { OfferAsk, OfferSaid } from './offer-messages.ts';
import { type Candidate, type OfferedHere, offeredHere } from './offered-here.ts';
import { inFilmPixels, smallPicture } from './small-picture.ts';

type Offered = Extract<PinsOffer, { kind: 'offered' }>;

/** Pins found in the frozen picture, and what the coach may do with them. Nothing of it is in the game until he accepts. */
export interface PinsOfferHere {
  readonly state: 'none' | 'looking' | 'looked';
  /** How much of the looking is done, 0 to 1. */
  readonly share: number;
  /** Why nothing is offered. */
  readonly refused?: string;
  /** Of nothing offered: pins have been put since, which another look would take as given. */
  readonly canLookAgain: boolean;
  readonly offer?: Offered;
  readonly here: OfferedHere;
  /** Candidates that were dropped stay to be seen, and can be taken back. */
  readonly dropped: ReadonlySet<string>;
  readonly isTurned: boolean;
  /** Looks; while it looks it stops; an offer that lies there is put away. */
  toggle(): void;
  again(): void;
  turn(): void;
  drop(candidate: Candidate): void;
  accept(candidates: readonly Candidate[]): void;
}

interface Looked extends Looking {
  readonly share: number;
  readonly refused?: string;
  readonly pinCount: number;
  readonly offer?: Offered;
  readonly dropped: ReadonlySet<string>;
  readonly isTurned: boolean;
}

const NOTHING: OfferedHere = { adds: [], disagree: [] };

export const usePinsOffer = (
  gameId: string,
  game: Game,
  player: Player,
  desk: Desk | undefined,
  view: FreezeView | undefined,
  sheet: Team['rink'],
): PinsOfferHere => {
  const { looked, change, putAway, begin } = useOneLook<Looked>(desk?.freezeId);
  const here = useMemo(
    () =>
      looked?.offer && view
        ? offeredHere(looked.offer.pins, looked.offer.fit, looked.isTurned, view)
        : NOTHING,
    [looked?.offer, looked?.isTurned, view],
  );
  const look = () => {
    const picture = player.shownPicture();
    if (!desk || !view || !picture) return;
    const on = desk.freezeId;
    const made = new Worker(new URL('./offer.worker.ts', import.meta.url), { type: 'module' });
    const small = smallPicture(picture);
    const known = knownEnds(game, view, on, small.filmPerPx);
    const pinCount = known.pins?.length ?? 0;
    const told = begin(made, {
      on,
      state: 'looking',
      share: 0,
      pinCount,
      dropped: new Set(),
      isTurned: false,
    });
    made.addEventListener('message', ({ data }: MessageEvent<OfferSaid>) => {
      if (data.kind === 'progress') return told({ share: data.share });
      if (data.kind === 'failed') return told({ state: 'looked', refused: failedSaid(data.why) });
      const { offer } = data;
      told(
        offer.kind === 'none'
          ? { state: 'looked', refused: noOfferWords(offer.reason, offer.found, sheet) }
          : { state: 'looked', offer: inFilmPixels(offer, small.filmPerPx) },
      );
    });
    made.addEventListener('error', ({ message }) => told({ state: 'looked', refused: failedSaid(message) }));
    const ask: OfferAsk = { ...small, sheet, known };
    made.postMessage(ask, [small.rgba.buffer]);
  };
  return {
    state: looked?.state ?? 'none',
    share: looked?.share ?? 0,
    ...(looked?.refused === undefined ? {} : { refused: looked.refused }),
    ...(looked?.offer === undefined ? {} : { offer: looked.offer }),
    canLookAgain:
      looked?.refused !== undefined &&
      (view?.pins.filter(pin => pin.iceM && !pin.leftOut).length ?? 0) > looked.pinCount,
    here,
    dropped: looked?.dropped ?? new Set(),
    isTurned: looked?.isTurned ?? false,
    toggle: () => (looked ? putAway() : look()),
    again: look,
    turn: () => looked && change({ isTurned: !looked.isTurned, dropped: new Set() }),
    drop: ({ landmark }) => {
      const dropped = new Set(looked?.dropped);
      if (!dropped.delete(landmark)) dropped.add(landmark);
      change({ dropped });
    },
    accept: candidates => {
      if (!desk) return;
      const game = edit(gameId);
      endStep(gameId);
      game.transact(() => {
        for (const { landmark, at } of candidates) {
          game.set(['freezes', desk.freezeId, 'pins', newId<'pin'>()], { landmark, at, leftOut: false });
        }
      });
      endStep(gameId);
      if (candidates.length > 1) {
        putAway();
        if (desk.tool.kind === 'pin') desk.setTool({ kind: 'look' });
      }
    },
  };
};

const failedSaid = (why: string): string => `The picture could not be looked through: ${why}.`;
