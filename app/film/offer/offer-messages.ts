import type { KnownEnds, PinsOffer, RinkChoice } from '@icewright/engine';

/** What the worker is asked: a picture in colour, the sheet, and what helps to tell the ends. The bytes are handed over. */
export interface OfferAsk {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8ClampedArray;
  readonly sheet: RinkChoice;
  readonly known: KnownEnds;
}

export type OfferSaid =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'done'; readonly offer: PinsOffer }
  | { readonly kind: 'failed'; readonly why: string };
