/** Roles of colour. A name is that of a CSS variable of the screens: `ink-2` is `var(--ink-2)`. */
export const INKS = [
  'ink',
  'ink-2',
  'ink-3',
  'edge',
  'hair',
  'wash',
  'paper',
  'ice',
  'warm',
  'cool',
  'on-ink',
  'rink-red',
  'rink-blue',
  'rink-crease',
  'rink-board',
] as const;

export type Ink = (typeof INKS)[number];

export type Palette = Readonly<Record<Ink, string>>;

/** Paper and photocopier: black ink, grey paint, no hue anywhere. */
export const BLACK_PALETTE: Palette = {
  ink: '#000000',
  'ink-2': '#1c1c1c',
  'ink-3': '#444444',
  edge: '#555555',
  hair: '#bbbbbb',
  wash: '#e4e4e4',
  paper: '#ffffff',
  ice: '#ffffff',
  warm: '#000000',
  cool: '#000000',
  'on-ink': '#ffffff',
  'rink-red': '#c9c9c9',
  'rink-blue': '#bdbdbd',
  'rink-crease': '#eeeeee',
  'rink-board': '#444444',
};
