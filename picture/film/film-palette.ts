import { BLACK_PALETTE, type Palette } from '../inks.ts';

/** Over a film the ground is ice by daylight, whatever the theme: dark ink and a casing of ice. */
export const FILM_PALETTE: Palette = {
  ...BLACK_PALETTE,
  ink: '#0b2238',
  ice: '#f1f6f8',
  warm: '#a8320a',
  cool: '#00617f',
};
