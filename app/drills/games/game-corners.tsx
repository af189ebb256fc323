import type { IceArea, IcePoint, Id, Rink } from '@icewright/engine';
import type { PointerEvent } from 'react';
import { Grab, nudged } from '../edit/grab.tsx';
import type { Selection } from '../edit/selection.ts';
import type { Grip } from '../grip.ts';
import type { Hand } from '../use-hand.ts';
import { CORNERS, cornerMoved, cornerOf, cornerSaid } from './game-writes.ts';

/** The corners of the small game that is picked: each is dragged, or moved by arrow keys. */
export function GameCorners(props: {
  readonly hand: Hand;
  readonly rink: Rink;
  readonly selection: Selection;
  readonly isUpright: boolean;
  readonly onTake: (grip: Grip, event: PointerEvent, placeM: IcePoint) => void;
}) {
  const { hand, selection, isUpright, rink, onTake } = props;
  const last = selection.at(-1);
  if (last?.kind !== 'game') return null;
  const id: Id<'game'> = last.game;
  const game = hand.drill.games[id];
  if (game === undefined) return null;
  return CORNERS.map((_, corner) => {
    const said = cornerSaid(corner, hand.drill);
    const atM = cornerOf(game, corner);
    return (
      <Grab
        key={CORNERS[corner]!.said}
        className="handle"
        name={`Corner of the small game, ${said}`}
        atM={inSheet(atM, rink.area)}
        radiusM={0.8}
        shownM={0.42}
        onTake={event => onTake({ kind: 'corner', game: id, corner }, event, atM)}
        onKey={event => {
          nudged(event, isUpright, atM, toM => hand.keep(cornerMoved(hand.drill, id, corner, toM, rink)));
        }}
      />
    );
  });
}

/** How far inside the sheet a handle stands, metres, so that it covers nothing beside the board; the corner itself may be at its edge. */
const INSIDE_M = 1;

const inSheet = ({ xM, yM }: IcePoint, area: IceArea): IcePoint => ({
  xM: Math.min(area.maxXM - INSIDE_M, Math.max(area.minXM + INSIDE_M, xM)),
  yM: Math.min(area.maxYM - INSIDE_M, Math.max(area.minYM + INSIDE_M, yM)),
});
