import type { Freeze, Game, Mark } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { SEEN_FOR_S } from './lay-mark.ts';

/**
 * Marks that hang on skaters of a freeze who begin to be followed: from now on they go with them. One that was seen only while the freeze stands, because nobody
 * knew where they go, is then seen for the usual time from it on, once that is known of all on whom it hangs.
 */
export const marksGoingAlong = (
  marks: Game['marks'],
  freezeId: string,
  { filmTimeS }: Pick<Freeze, 'filmTimeS'>,
  begun: ReadonlyMap<string, Id<'track'>>,
  endS: number,
): [string, Mark][] =>
  Object.entries(marks).flatMap(([id, mark]): [string, Mark][] => {
    const at = mark.at.map(place => {
      const track = place.placed?.freeze === freezeId ? begun.get(place.placed.placed) : undefined;
      return track ? { ...place, track } : place;
    });
    if (at.every((place, i) => place === mark.at[i])) return [];
    const isAsLaid = mark.freeze === freezeId && mark.fromS === mark.toS;
    if (!isAsLaid || at.some(place => place.placed && !place.track)) return [[id, { ...mark, at }]];
    const { freeze: _, ...freed } = mark;
    return [[id, { ...freed, at, fromS: filmTimeS, toS: Math.min(endS, filmTimeS + SEEN_FOR_S) }]];
  });
