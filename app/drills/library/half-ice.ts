import type { Drill, DrillSpot } from '@icewright/book';
import { type IcePoint, lineWords, type SpotId } from '@icewright/engine';
import { countSaid, type Lengths, lengthSaid } from '../../parts/figures.ts';
import { mappedGame, mappedGear, mappedSpot } from '../edit/mapped-parts.ts';
import { HALF_TURN, movedBy, type PlaceMap } from '../edit/place-map.ts';
import { needsOfDrill } from './library-query.ts';

/** A version, and whom it leaves out; or the one sentence why there is none. */
export type Made = { readonly drill: Drill; readonly without?: string } | { readonly whyNot: string };

/**
 * The drill on the half of the sheet where x is positive: as it lies when it lies there, half-turned from the other half, moved from
 * the middle zone when nothing in it hangs on a line or a net. On a 200 × 85 ft sheet it is then drawn on half ice.
 */
export function halfIceOf(drill: Drill, lengths: Lengths = 'metres'): Made {
  const { ice } = needsOfDrill(drill);
  if (drill.rink.preset === 'halfIce' || drill.rink.preset === 'crossIce')
    return { whyNot: 'it is drawn on small ice already' };
  if (ice === 'whole') return { whyNot: tooLongSaid(drill, lengths) };
  const map =
    ice === 'middle' ? outOfTheMiddle(drill) : placesOf(drill).some(at => at.xM < -1.5) ? HALF_TURN : null;
  if (map === undefined)
    return {
      whyNot: `it lies in the middle zone, and ${tiedSaid(drill)}, which half ice has elsewhere`,
    };
  const laid = map === null ? drill : laidBy(drill, map);
  return {
    drill: { ...laid, rink: drill.rink.preset === '200x85ft' ? { preset: 'halfIce' } : drill.rink },
  };
}

/** Who does not fit, where, and by how much: whatever is farthest over the red line, seen from the half that has the most of it. */
const tooLongSaid = (drill: Drill, lengths: Lengths): string => {
  const places = Object.values(drill.spots).flatMap(spot =>
    spot.kind === 'goalie'
      ? []
      : [
          { who: `${spot.role} stands`, atM: spot.atM },
          ...Object.values(spot.acts).flatMap(act =>
            'throughM' in act ? act.throughM.map(atM => ({ who: `${spot.role} skates`, atM })) : [],
          ),
        ],
  );
  const overOf = (sign: 1 | -1) => places.map(({ who, atM }) => ({ who, overM: -sign * atM.xM }));
  const isOver = ({ overM }: { readonly overM: number }) => overM > 0;
  const [right, left] = [overOf(1), overOf(-1)];
  const over = right.filter(isOver).length <= left.filter(isOver).length ? right : left;
  const farthest = over.sort((one, other) => other.overM - one.overM)[0];
  const others = new Set(over.filter(isOver).map(({ who }) => who)).size - 1;
  if (farthest === undefined || farthest.overM <= 0) return 'it takes the whole sheet';
  const more =
    others > 0 ? `, and ${countSaid(others, 'more way or place', 'more ways and places')} past it` : '';
  return `half ice ends at the red line: ${farthest.who} ${lengthSaid(farthest.overM, lengths)} past it${more}`;
};

const tiedSaid = (drill: Drill): string => {
  for (const { role, acts } of Object.values(drill.spots))
    for (const act of Object.values(acts)) {
      if (act.kind === 'shoot') return `${role} shoots at a net`;
      if (act.kind === 'gap') return `${role} keeps a gap to a blue line`;
      if (act.cue !== undefined && 'line' in act.cue)
        return `${role} waits for ${lineWords(act.cue.line, drill)}`;
    }
  return 'it hangs on a line or a net';
};

/** Far enough towards the end that all of it is past the red line; undefined when it cannot be moved. */
const outOfTheMiddle = (drill: Drill): PlaceMap | undefined => {
  const acts = Object.values(drill.spots).flatMap(spot => Object.values(spot.acts));
  const isTied = acts.some(
    act => act.kind === 'shoot' || act.kind === 'gap' || (act.cue !== undefined && 'line' in act.cue),
  );
  if (isTied) return undefined;
  const lowest = Math.min(...placesOf(drill).map(at => at.xM));
  return movedBy({ xM: Math.max(0, 1 - lowest), yM: 0 });
};

const placesOf = (drill: Drill): readonly IcePoint[] =>
  Object.values(drill.spots).flatMap(spot =>
    spot.kind === 'goalie'
      ? []
      : [spot.atM, ...Object.values(spot.acts).flatMap(act => ('throughM' in act ? act.throughM : []))],
  );

/** Everything in a drill laid elsewhere. */
export const laidBy = (drill: Drill, map: PlaceMap): Drill => {
  const each = <Part>(parts: Readonly<Record<string, Part>>, lay: (part: Part) => Part) =>
    Object.fromEntries(Object.entries(parts).map(([id, part]) => [id, lay(part)]));
  return {
    ...drill,
    spots: each(drill.spots, (spot: DrillSpot) => mappedSpot(spot, map, false)) as Record<SpotId, DrillSpot>,
    pucks: each(drill.pucks, puck => ({ ...puck, atM: map.point(puck.atM) })) as Drill['pucks'],
    gear: each(drill.gear, gear => mappedGear(gear as never, map)) as Drill['gear'],
    games: each(drill.games, game => mappedGame(game as never, map)) as Drill['games'],
  };
};
