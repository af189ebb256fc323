import type { IcePoint, PinFit } from '@icewright/engine';

export const FILM_MARK_KINDS = [
  'ring',
  'lane',
  'link',
  'arrow',
  'zone',
  'ghost',
  'spotlight',
  'text',
] as const;

export type FilmMarkKind = (typeof FILM_MARK_KINDS)[number];

/** One mark as it lies on the ice in one picture. */
export interface FilmMark {
  readonly kind: FilmMarkKind;
  /** One for a ring, a spotlight, a ghost and a text; two or more in order for the others. */
  readonly placesM: readonly IcePoint[];
  /** What stands beside it: said by a person. */
  readonly words: string;
  /** What was measured between its two ends, with its ±. */
  readonly figure?: string;
  /** The skater of whom it is the ghost: number or role. */
  readonly who?: string;
  /** Radius of a ring or a spotlight, width of a lane; absent: the usual one. */
  readonly sizeM?: number;
}

/** A picture and how it is tied to the ice. `unitPx`: pixels of the picture in one pixel of the drawing's own measures. */
export interface FilmView {
  readonly fit: PinFit;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly unitPx: number;
}

/** Usual radii and widths, metres. Our own choice: a ring clears the skates, a lane is a stick and a blade wide. */
export const USUAL_SIZE_M: Readonly<Partial<Record<FilmMarkKind, number>>> = {
  ring: 0.9,
  ghost: 0.9,
  spotlight: 1.5,
  lane: 1.6,
};

/** So high and so wide a spotlight lights whoever stands in it, metres: with his stick and his lean, and not the boards behind him. Only pictures hang on it. */
export const BEAM_M = { high: 2.2, radius: 0.95 } as const;

/** The pole that a text stands on, metres. */
export const POLE_M = 1.4;

/** With how many places a mark is whole. */
export const placesWanted = (kind: FilmMarkKind): { readonly least: number; readonly most: number } =>
  kind === 'zone'
    ? { least: 3, most: 24 }
    : kind === 'lane' || kind === 'arrow'
      ? { least: 2, most: 2 }
      : kind === 'link'
        ? { least: 2, most: 2 }
        : kind === 'ghost'
          ? { least: 1, most: 2 }
          : { least: 1, most: 1 };

export const sizeOf = ({ kind, sizeM }: Pick<FilmMark, 'kind' | 'sizeM'>): number =>
  sizeM ?? USUAL_SIZE_M[kind] ?? 1;
