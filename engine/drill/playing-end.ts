import type { LineId } from '../rink/lines.ts';
import type { End } from '../units/ends.ts';
import type { Spot } from './drill.ts';

type Player = Pick<Spot, 'side' | 'kind' | 'attacks'>;

/** The end a spot plays towards: as it says itself, else us towards plusX and them towards minusX. Its own net is at the other end. */
export const attackedEndOf = ({ side, attacks }: Pick<Spot, 'side' | 'attacks'>): End =>
  attacks ?? (side === 'us' ? 'plusX' : 'minusX');

/**
 * The end that we play towards in a whole drill: minusX where every skater plays the other way than usual, as in a drill that was turned
 * to the other end; else plusX, also where the two ways are mixed or nobody skates. Any spots, in any order.
 */
export const weAttack = (spots: readonly Player[]): End => {
  const skaters = spots.filter(({ kind }) => kind === 'skater');
  const isTurned = (spot: Player) => (attackedEndOf(spot) === 'plusX') !== (spot.side === 'us');
  return skaters.length > 0 && skaters.every(isTurned) ? 'minusX' : 'plusX';
};

/** The same line seen from the other end: our blue line is theirs. */
export const lineAtOtherEnd = (line: LineId): LineId => OTHER_LINE[line];

const OTHER_LINE: Readonly<Record<LineId, LineId>> = {
  goalLineMinusX: 'goalLinePlusX',
  blueLineMinusX: 'blueLinePlusX',
  centreLine: 'centreLine',
  blueLinePlusX: 'blueLineMinusX',
  goalLinePlusX: 'goalLineMinusX',
};
