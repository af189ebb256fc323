import { type CarryOption, filmFromIce, type IcePoint, type PassOption } from '@icewright/engine';
import { LENGTH_UNIT, lengthNumberSaid } from '../parts/figures.ts';
import type { Pair } from './freeze-desk.ts';
import type { FreezeView, PersonView, PinView } from './freeze-view.ts';
import { measureOf } from './measure-of.ts';
import { legsOf, optionKey } from './options-of.ts';
import { laneWords } from './options-table.tsx';
import { type Body, type Word, type WordPlace, wordPlaces } from './word-places.ts';

/** Everything that is written over the frozen picture, by the key of what it belongs to, where nothing covers another. */
export type PictureWords = ReadonlyMap<string, Word & WordPlace>;

export const nameKey = (id: string): string => `name ${id}`;
export const pinKey = (id: string): string => `pin ${id}`;
export const wantedKey = (id: string): string => `wanted ${id}`;
export const pairKey = (pair: Pair): string => `pair ${pair.join()}`;
export const laneKey = (option: PassOption | CarryOption): string => `lane ${optionKey(option)}`;

/** `unit` is one pixel of the screen, in pixels of the picture. Names go first, then pins, measures, wanted places, lanes. */
export const pictureWordsOf = (
  view: FreezeView,
  pairs: readonly Pair[],
  options: readonly (PassOption | CarryOption)[],
  unit: number,
): PictureWords => {
  const words = [
    ...view.people.map(person => nameOfPerson(view, person, unit)),
    ...view.pins.map(pin => numberOfPin(pin, unit)),
    ...pairs.flatMap(pair => measureOfPair(view, pair, unit)),
    ...view.people.flatMap(person => wantedOf(view, person, unit)),
    ...options.flatMap(option => laneOf(view, option, unit)),
  ];
  const feet = view.people.map(({ placed }) => ({ x: placed.feet.xPx, y: placed.feet.yPx, r: 9 * unit }));
  const { puck } = view.freeze;
  const places = wordPlaces(
    words,
    [...feet, ...(puck ? [{ x: puck.at.xPx, y: puck.at.yPx, r: 8 * unit }] : [])],
    view.people.map(person => bodyOf(view, person, unit)),
    { left: 0, top: 0, right: view.freeze.picture.widthPx, bottom: view.freeze.picture.heightPx },
  );
  return new Map(words.map(word => [word.key, { ...word, ...places.get(word.key) }]));
};

const nameOfPerson = (view: FreezeView, { id, placed, atM, unplaced }: PersonView, unit: number): Word => {
  const size = 14 * unit;
  const { xPx: x, yPx: y } = placed.feet;
  return {
    key: nameKey(id),
    text: `${placed.role}${unplaced ? '?' : ''}`,
    x,
    y: y - headOf(view, atM, unit) - 4 * unit,
    size,
    // In a crowd the place above a head lies on whoever stands behind: then under the own feet.
    else: { x, y: y + 12 * unit + size },
  };
};

const bodyOf = (view: FreezeView, person: PersonView, unit: number): Body => {
  const { xPx, yPx } = person.placed.feet;
  const headPx = headOf(view, person.atM, unit);
  const half = headPx * HALF_BODY;
  return { key: nameKey(person.id), left: xPx - half, right: xPx + half, top: yPx - headPx, bottom: yPx };
};

const headOf = (view: FreezeView, atM: PersonView['atM'], unit: number): number =>
  view.fit && atM ? metreAcross(view, atM) * PERSON_M : 40 * unit;

const numberOfPin = ({ id, number, at }: PinView, unit: number): Word => ({
  key: pinKey(id),
  text: `${number}`,
  x: at.xPx + 11 * unit,
  y: at.yPx - 6 * unit,
  size: 12 * unit,
});

const measureOfPair = (view: FreezeView, pair: Pair, unit: number): Word[] => {
  const measured = measureOf(view, pair);
  if (!measured) return [];
  const { a, b, distance } = measured;
  return [
    {
      key: pairKey(pair),
      text: distance ? `${distance.value} ${distance.plusMinus}` : 'cannot be measured',
      x: (a.xPx + b.xPx) / 2,
      y: (a.yPx + b.yPx) / 2 - 8 * unit,
      size: 15 * unit,
    },
  ];
};

const wantedOf = (view: FreezeView, { id, placed, atM }: PersonView, unit: number): Word[] => {
  const at = view.fit && placed.ghostM && filmFromIce(view.fit, placed.ghostM);
  if (!at || !atM || !placed.ghostM) return [];
  const lengthM = Math.hypot(placed.ghostM.xM - atM.xM, placed.ghostM.yM - atM.yM);
  return [
    {
      key: wantedKey(id),
      text: `${placed.role} here, ${lengthNumberSaid(lengthM, view.lengths)} ${LENGTH_UNIT[view.lengths]}`,
      x: at.xPx,
      y: at.yPx + 22 * unit,
      size: 13 * unit,
    },
  ];
};

const laneOf = (view: FreezeView, option: PassOption | CarryOption, unit: number): Word[] => {
  const [from, second, ...rest] = legsOf(view, option);
  const to = rest[rest.length - 1] ?? second;
  if (!view.fit || !from || !second || !to) return [];
  const middleM = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
  const at = filmFromIce(view.fit, option.kind === 'bank' ? second : middleM);
  if (!at) return [];
  const text = option.kind === 'carry' ? 'skates it' : laneWords(option);
  return [{ key: laneKey(option), text, x: at.xPx, y: at.yPx - 10 * unit, size: 13 * unit }];
};

/** How many pixels of the film a metre across the view takes at a place; people are drawn upright from it. */
const metreAcross = (view: FreezeView, at: IcePoint): number => {
  const here = view.fit && filmFromIce(view.fit, at);
  const beside = view.fit && filmFromIce(view.fit, { xM: at.xM + 0.5, yM: at.yM });
  return here && beside ? 2 * Math.hypot(beside.xPx - here.xPx, beside.yPx - here.yPx) : 0;
};

/** A skater on skates, for where the role stands above the head. Only lettering hangs on it. */
const PERSON_M = 1.9;
/** Half of a skater's width for his height, seen from the stand. */
const HALF_BODY = 0.22;
