import type { Ink } from './inks.ts';

/** Two voices: `words` is what a person says, `figures` what was measured, computed, or can be pressed. */
export type Voice = 'words' | 'figures';

export interface Lettering {
  readonly voice: Voice;
  /** Ice metres on the ice, px in charts, points on the card. */
  readonly size: number;
  readonly byK?: true;
  readonly weight: number;
  /** Width in per cent, of the screen's variable font; paper sets the letters at this width. */
  readonly stretch?: number;
  readonly italic?: true;
  readonly ink: Ink;
  /** A casing of this ink and width under the letters, so that a line behind them does not cut them. */
  readonly casing?: { readonly ink: Ink; readonly width: number };
}

const letteringTable = <const T extends Record<string, Lettering>>(table: T): T => table;
const onIce = (width: number) => ({ ink: 'ice', width }) as const;

export const LETTERINGS = letteringTable({
  // on the ice
  roleUs: { voice: 'figures', size: 1, weight: 640, stretch: 80, ink: 'on-ink' },
  roleThem: { voice: 'figures', size: 1, weight: 640, stretch: 80, ink: 'ink' },
  roleWarm: { voice: 'figures', size: 1, weight: 640, stretch: 80, ink: 'warm' },
  coach: { voice: 'figures', size: 1.2, byK: true, weight: 640, ink: 'ink', casing: onIce(0.4) },
  label: {
    voice: 'figures',
    size: 0.86,
    byK: true,
    weight: 400,
    stretch: 88,
    ink: 'ink',
    casing: onIce(0.34),
  },
  labelBold: {
    voice: 'figures',
    size: 0.86,
    byK: true,
    weight: 620,
    stretch: 88,
    ink: 'ink',
    casing: onIce(0.34),
  },
  labelWarm: {
    voice: 'figures',
    size: 0.92,
    byK: true,
    weight: 620,
    stretch: 88,
    ink: 'warm',
    casing: onIce(0.36),
  },
  labelWord: {
    voice: 'words',
    size: 1,
    byK: true,
    weight: 400,
    italic: true,
    ink: 'ink',
    casing: onIce(0.34),
  },
  measure: {
    voice: 'figures',
    size: 0.92,
    byK: true,
    weight: 560,
    stretch: 88,
    ink: 'ink',
    casing: onIce(0.36),
  },
  order: { voice: 'figures', size: 0.95, byK: true, weight: 640, ink: 'ink', casing: onIce(0.4) },
  second: { voice: 'figures', size: 0.7, byK: true, weight: 400, ink: 'ink-2', casing: onIce(0.3) },
  cueFull: { voice: 'figures', size: 0.8, byK: true, weight: 640, ink: 'on-ink' },
  cueOpen: { voice: 'figures', size: 0.8, byK: true, weight: 640, ink: 'ink' },
  flag: { voice: 'figures', size: 0.95, byK: true, weight: 620, ink: 'ink' },
  flagLook: { voice: 'figures', size: 0.95, byK: true, weight: 620, ink: 'on-ink' },
  pinName: { voice: 'figures', size: 0.82, byK: true, weight: 600, ink: 'cool' },
  pinBadName: { voice: 'figures', size: 0.82, byK: true, weight: 600, ink: 'warm' },
  fixRole: {
    voice: 'figures',
    size: 1.12,
    byK: true,
    weight: 640,
    stretch: 84,
    ink: 'ink',
    casing: onIce(0.34),
  },
  area: { voice: 'words', size: 1.02, weight: 400, italic: true, ink: 'ink-2', casing: onIce(0.25) },
  scale: { voice: 'figures', size: 0.78, weight: 400, stretch: 84, ink: 'ink-2' },
  dimension: { voice: 'figures', size: 0.66, weight: 400, ink: 'ink-2', casing: onIce(0.25) },

  // over a film, px of its own measure
  filmWords: {
    voice: 'words',
    size: 18,
    byK: true,
    weight: 560,
    italic: true,
    ink: 'ink',
    casing: onIce(6),
  },
  filmFigure: {
    voice: 'figures',
    size: 15,
    byK: true,
    weight: 650,
    stretch: 88,
    ink: 'ink',
    casing: onIce(5),
  },
  filmTitle: { voice: 'words', size: 24, byK: true, weight: 500, ink: 'ink' },
  filmTitleSmall: { voice: 'figures', size: 15, byK: true, weight: 400, ink: 'ink' },
  filmGhostName: {
    voice: 'figures',
    size: 15,
    byK: true,
    weight: 650,
    stretch: 88,
    ink: 'warm',
    casing: onIce(5),
  },
  filmGhostWords: {
    voice: 'words',
    size: 18,
    byK: true,
    weight: 560,
    italic: true,
    ink: 'warm',
    casing: onIce(6),
  },

  // charts, px
  axis: { voice: 'figures', size: 11, weight: 400, stretch: 84, ink: 'ink-3' },
  axisBold: { voice: 'figures', size: 11, weight: 600, stretch: 84, ink: 'ink-2' },
  barWord: { voice: 'figures', size: 12, weight: 400, stretch: 88, ink: 'ink-2' },
  barFigure: { voice: 'figures', size: 12, weight: 600, stretch: 88, ink: 'ink' },
  who: { voice: 'figures', size: 12, weight: 400, stretch: 88, ink: 'ink-3' },
  coachOfStave: { voice: 'figures', size: 16, weight: 640, ink: 'ink' },
  caption: { voice: 'figures', size: 12, weight: 400, ink: 'ink-3' },
  name: { voice: 'figures', size: 13, weight: 600, ink: 'ink' },
  verdict: { voice: 'figures', size: 17, weight: 620, ink: 'ink' },
  verdictNone: { voice: 'figures', size: 17, weight: 400, ink: 'ink' },
  verdictUnknown: { voice: 'figures', size: 17, weight: 400, ink: 'ink-2' },
  verdictDown: { voice: 'figures', size: 17, weight: 620, ink: 'warm' },
  sectionTitle: { voice: 'words', size: 26, weight: 400, ink: 'ink' },

  // the card, points
  cardTeam: { voice: 'figures', size: 8.3, weight: 400, ink: 'ink' },
  cardTitle: { voice: 'words', size: 27, weight: 400, ink: 'ink' },
  cardSmall: { voice: 'figures', size: 7.9, weight: 400, ink: 'ink-2' },
  cardStrong: { voice: 'figures', size: 10.9, weight: 600, ink: 'ink' },
  cardAim: { voice: 'words', size: 12.8, weight: 400, ink: 'ink' },
  cardAimLead: { voice: 'words', size: 12.8, weight: 400, italic: true, ink: 'ink' },
  cardClock: { voice: 'figures', size: 15.8, weight: 600, ink: 'ink' },
  cardClockSmall: { voice: 'figures', size: 8.3, weight: 400, ink: 'ink' },
  cardBlock: { voice: 'words', size: 15, weight: 500, ink: 'ink' },
  cardCue: { voice: 'words', size: 10.9, weight: 400, italic: true, ink: 'ink' },
  cardPoint: { voice: 'figures', size: 8.3, weight: 400, ink: 'ink' },
  cardFactName: { voice: 'figures', size: 7.2, weight: 400, ink: 'ink-3' },
  cardFact: { voice: 'figures', size: 7.9, weight: 600, ink: 'ink' },
  cardGroup: { voice: 'figures', size: 8.3, weight: 600, ink: 'ink' },
  cardCautionHead: { voice: 'figures', size: 9, weight: 600, ink: 'ink' },
  cardCaution: { voice: 'figures', size: 8.4, weight: 400, ink: 'ink' },
  cardKey: { voice: 'figures', size: 7.8, weight: 400, ink: 'ink' },
});

export type LetteringName = keyof typeof LETTERINGS;

export const letteringOf = (name: LetteringName): Lettering => LETTERINGS[name];
