import type { Dress, FoundPerson, PinFit, RinkChoice } from '@icewright/engine';

/** What the worker is asked: who stands on the ice of one picture, as it is shown. */
export interface PeopleAsk {
  readonly rgba: Uint8ClampedArray;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly fit: PinFit;
  readonly sheet: RinkChoice;
  /** What was seen earlier in this film, by number of group. */
  readonly known: readonly (Dress | undefined)[];
}

export type PeopleSaid =
  | { readonly kind: 'found'; readonly people: readonly FoundPerson[] }
  | { readonly kind: 'noIce' }
  | { readonly kind: 'failed'; readonly why: string };
