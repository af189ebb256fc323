import type { CarryOption, IcePoint, PassOption } from '@icewright/engine';
import { lengthSaid } from '../parts/figures.ts';
import type { Pair } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { measureOf } from './measure-of.ts';
import { legsOf, optionKey } from './options-of.ts';
import { laneWords } from './options-table.tsx';
import { type Word, type WordPlace, wordPlaces } from './word-places.ts';

export type MapWord = Word & WordPlace & { readonly tone: 'ink' | 'warm' | 'name' };

/**
 * Everything that is written on the ice beside the picture, where no word covers another or a person. Metres of the
 * sheet with y down; `k` is how much larger marks are drawn than on a whole sheet.
 */
export const mapWordsOf = (
  view: FreezeView,
  pairs: readonly Pair[],
  options: readonly (PassOption | CarryOption)[],
  k: number,
): readonly MapWord[] => {
  const people = view.people.flatMap(one => (one.atM ? [{ ...one, atM: one.atM }] : []));
  const puck = view.ice?.scene.puck?.atM;
  const size = 1.12 * k;
  const names = people.map(
    ({ id, placed, atM }): MapWord => ({
      key: mapNameKey(id),
      text: placed.role,
      tone: 'name',
      x: atM.xM + 1.15 * k,
      y: -atM.yM - 0.5 * k,
      size,
    }),
  );
  const measures = pairs.flatMap((pair): MapWord[] => {
    const [a, b] = pair.map(id => placeOnIce(view, id));
    const distance = measureOf(view, pair)?.distance;
    if (!a || !b || !distance) return [];
    const at = middleOf(a, b);
    const text = `${distance.value} ${distance.plusMinus}`;
    return [{ key: `pair ${pair.join()}`, text, tone: 'ink', x: at.xM, y: -at.yM - 0.5 * k, size }];
  });
  const ways = people.flatMap(({ id, placed, atM }): MapWord[] => {
    if (!placed.ghostM) return [];
    const at = middleOf(atM, placed.ghostM);
    const lengthM = Math.hypot(placed.ghostM.xM - atM.xM, placed.ghostM.yM - atM.yM);
    const text = lengthSaid(lengthM, view.lengths);
    return [{ key: `way ${id}`, text, tone: 'warm', x: at.xM, y: -at.yM - 0.6 * k, size }];
  });
  const lanes = options.flatMap((option): MapWord[] => {
    if (option.kind === 'carry') return [];
    const [from, second, ...rest] = legsOf(view, option);
    const to = rest[rest.length - 1] ?? second;
    if (!from || !second || !to) return [];
    const at = option.kind === 'bank' ? second : middleOf(from, to);
    const drop = (option.kind === 'bank' ? 1.6 : -0.95) * k;
    const key = `lane ${optionKey(option)}`;
    return [{ key, text: laneWords(option), tone: 'ink', x: at.xM, y: -at.yM + drop, size }];
  });
  const words = [...names, ...measures, ...ways, ...lanes];
  const places = wordPlaces(words, [
    ...people.map(({ atM }) => ({ x: atM.xM, y: -atM.yM, r: 0.45 * k })),
    ...people.flatMap(({ placed: { ghostM } }) =>
      ghostM ? [{ x: ghostM.xM, y: -ghostM.yM, r: 0.8 * k }] : [],
    ),
    ...(puck ? [{ x: puck.xM, y: -puck.yM, r: 0.25 * k }] : []),
  ]);
  return words.map(word => ({ ...word, ...places.get(word.key) }));
};

export const mapNameKey = (id: string): string => `name ${id}`;

/** Words on the ice that belong to no single person; names stand with whom they name. */
export function MapWords({ words }: { readonly words: readonly MapWord[] }) {
  return (
    <g className="map-words">
      {words
        .filter(word => word.tone !== 'name')
        .map(({ key, text, tone, x, y, size }) => (
          <text
            key={key}
            className={tone}
            x={x}
            y={y}
            fontSize={size}
            strokeWidth={0.3 * size}
            textAnchor="middle"
          >
            {text}
          </text>
        ))}
    </g>
  );
}

export const placeOnIce = (view: FreezeView, id: string): IcePoint | undefined =>
  id === 'puck' ? view.ice?.scene.puck?.atM : view.people.find(one => one.id === id)?.atM;

const middleOf = (a: IcePoint, b: IcePoint): IcePoint => ({
  xM: (a.xM + b.xM) / 2,
  yM: (a.yM + b.yM) / 2,
});
