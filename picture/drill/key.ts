import type { LetteringName } from '../lettering.ts';
import type { Pen } from '../pen/pen.ts';
import { KEY_SIGNS, NARROW_SIGNS } from './key-signs.ts';
import type { KeyEntry } from './used-marks.ts';

/** What the key says of each mark. */
export const KEY_WORDS: Readonly<Record<KeyEntry, string>> = {
  skating: 'skating',
  withPuck: 'with puck',
  backward: 'backward',
  backwardPuck: 'backward with puck',
  pivot: 'turns round',
  stop: 'stop',
  turn: 'tight turn',
  face: 'faces that way',
  pass: 'pass',
  bank: 'bank pass',
  saucer: 'saucer',
  rim: 'rim',
  drop: 'drop',
  meant: 'cut: as meant',
  shot: 'shot',
  pickUp: 'picks a puck up',
  left: 'puck left',
  chase: 'chases',
  steal: 'goes for the puck',
  gap: 'keeps a gap',
  gapSkated: 'keeps a gap, forward',
  screen: 'in the lane',
  ticks: 'a second each',
  fires: 'cue fires',
  waits: 'waits for it',
  whistle: 'whistle',
  seconds: 'after seconds',
  place: 'place to come to',
  us: 'us',
  them: 'them',
  goalie: 'goalie',
  coach: 'coach',
  line: 'waiting',
  pucks: 'pucks',
  pylon: 'pylon',
  net: 'moved net',
  smallNet: 'small net',
  divider: 'divider',
};

export interface KeySetting {
  readonly x: number;
  /** Middle of the first row. */
  readonly y: number;
  readonly width: number;
  readonly lettering: LetteringName;
  /** Drawing units of one ice metre in the signs. */
  readonly scale: number;
}

/** Half width of a line's sign and of a small thing's, ice metres. */
const WIDE_M = 3.2;
const NARROW_M = 1.1;
const ROW_M = 2.9;
/** A small thing alone is drawn larger than a line's sign, or its letter could not be read. */
const NARROW_LARGER = 1.35;

/** The key: the marks that were used and no others, in rows as wide as asked. Returns its height. */
export const drawKey = (pen: Pen, used: readonly KeyEntry[], setting: KeySetting): number => {
  const gap = 0.7 * setting.scale;
  const items = used.map(entry => {
    const sign = 2 * halfOf(entry) * setting.scale;
    return { entry, sign, width: sign + gap + pen.measure(setting.lettering, KEY_WORDS[entry]) };
  });
  const rows = rowsOf(items, setting.width, 4 * gap);
  const rowHeight = ROW_M * setting.scale;
  rows.forEach((row, index) => {
    const y = setting.y + index * rowHeight;
    const taken = row.reduce((sum, item) => sum + item.width, 0);
    const even = row.length > 1 ? (setting.width - taken) / (row.length - 1) : 0;
    const between = Math.min(even, 9 * gap);
    let x = setting.x;
    for (const item of row) {
      const scale = setting.scale * (isNarrow(item.entry) ? NARROW_LARGER : 1);
      pen.place({ x: x + item.sign / 2, y, scale, k: 1 }, () => KEY_SIGNS[item.entry](pen));
      const size = pen.measure(setting.lettering, 'x') * 0.5;
      pen.text(setting.lettering, KEY_WORDS[item.entry], x + item.sign + gap, y, { drop: size });
      x += item.width + between;
    }
  });
  return rows.length * rowHeight;
};

const isNarrow = (entry: KeyEntry): boolean => NARROW_SIGNS.includes(entry);

const halfOf = (entry: KeyEntry): number => (isNarrow(entry) ? NARROW_M * NARROW_LARGER : WIDE_M);

/** As few rows as fit, and then rows of about the same length. */
const rowsOf = <T extends { readonly width: number }>(
  items: readonly T[],
  width: number,
  least: number,
): readonly (readonly T[])[] => {
  const all = items.reduce((sum, item) => sum + item.width + least, -least);
  const count = Math.max(1, Math.ceil(all / width));
  for (let aim = all / count; ; aim *= 1.04) {
    const rows = filledRows(items, Math.min(aim, width), least);
    if (rows.length <= count || aim > width) return rows;
  }
};

const filledRows = <T extends { readonly width: number }>(
  items: readonly T[],
  width: number,
  least: number,
): readonly (readonly T[])[] => {
  const rows: T[][] = [];
  let taken = 0;
  for (const item of items) {
    const row = rows[rows.length - 1];
    if (row && taken + least + item.width <= width) {
      row.push(item);
      taken += least + item.width;
    } else {
      rows.push([item]);
      taken = item.width;
    }
  }
  return rows;
};
