import type { IcePoint, Rink, Run, SpotId } from '@icewright/engine';
import { drawRink, drawUpright, rinkViewBox, svgParts } from '@icewright/picture';
import { type PointerEvent, useMemo, useRef } from 'react';
import type { Lengths } from '../parts/figures.ts';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { BoardHandles } from './board-handles.tsx';
import { icePointUnder } from './board-pointer.ts';
import { BoardSkaters } from './board-skaters.tsx';
import { drillMarkup } from './drill-markup.ts';
import type { Chosen, Grip } from './grip.ts';
import { type Thing, thingAdded } from './new-things.ts';
import { onIce } from './on-ice.ts';
import { routePulled, spotMoved, throughAdded, throughMoved } from './route-writes.ts';
import type { Hand } from './use-hand.ts';
import type { Write } from './write.ts';

/** The ice with the drill on it, worked by hand: places dragged, routes pulled and bent. */
export function Board(props: {
  readonly hand: Hand;
  readonly rink: Rink;
  readonly run: Run | null;
  readonly lengths: Lengths;
  readonly timeS: number;
  readonly chosen: Chosen;
  readonly onChoose: (chosen: Chosen) => void;
  readonly placing: Thing | null;
  readonly onPlaced: (spotId: SpotId | null) => void;
  readonly ownsPuckAtEnd: (spotId: SpotId) => boolean;
}) {
  const { hand, rink, run, lengths, chosen, onChoose, placing } = props;
  const { drill } = hand;
  const isUpright = useIsNarrow(701);
  const sheet = useRef<SVGGElement>(null);
  const grip = useRef<{ readonly grip: Grip; readonly offset: IcePoint } | null>(null);

  const rinkDrawing = useMemo(
    () =>
      svgParts(pen => {
        const draw = () => drawRink(pen, rink, { scaleBar: !isUpright, dotLines: true });
        isUpright ? drawUpright(pen, draw) : draw();
      }, {}),
    [rink, isUpright],
  );
  const drillDrawing = useMemo(
    () => drillMarkup({ drill, rink, run, isUpright, lengths }),
    [drill, rink, run, isUpright, lengths],
  );
  const [x, y, width, height] = rinkViewBox(rink, isUpright);

  const take = (taken: Grip, event: PointerEvent, placeM: IcePoint) => {
    const at = icePointUnder(sheet.current, event);
    if (at === null || placing !== null) return;
    event.preventDefault();
    event.stopPropagation();
    (event.currentTarget as Element).ownerDocument.defaultView?.getSelection()?.removeAllRanges();
    sheet.current?.ownerSVGElement?.setPointerCapture(event.pointerId);
    grip.current = { grip: taken, offset: { xM: placeM.xM - at.xM, yM: placeM.yM - at.yM } };
  };
  const moved = (event: PointerEvent) => {
    const at = icePointUnder(sheet.current, event);
    if (grip.current === null || at === null) return;
    const toM = { xM: at.xM + grip.current.offset.xM, yM: at.yM + grip.current.offset.yM };
    hand.hold(writesOf(hand, grip.current.grip, onIce(rink, toM), props.ownsPuckAtEnd));
  };
  const dropped = () => {
    if (grip.current === null) return;
    grip.current = null;
    hand.letGo();
  };
  const pressed = (event: PointerEvent) => {
    const at = icePointUnder(sheet.current, event);
    if (at === null) return;
    if (placing === null) return onChoose({ spotId: null, actId: null });
    const { writes, spotId } = thingAdded(hand.drill, placing, onIce(rink, at));
    hand.keep(writes);
    props.onPlaced(spotId ?? null);
  };

  return (
    <svg
      className={placing === null ? 'board ice-svg' : 'board ice-svg is-placing'}
      viewBox={`${x} ${y} ${width} ${height}`}
      onPointerDown={pressed}
      onPointerMove={moved}
      onPointerUp={dropped}
      onPointerCancel={() => {
        grip.current = null;
        hand.putBack();
      }}
    >
      <title>The ice</title>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
      <g dangerouslySetInnerHTML={{ __html: rinkDrawing }} />
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: as above */}
      <g className="drill-drawing" dangerouslySetInnerHTML={{ __html: drillDrawing }} />
      <g ref={sheet} transform={isUpright ? 'rotate(-90)' : undefined}>
        {run !== null && <BoardSkaters run={run} drill={drill} timeS={props.timeS} />}
        <BoardHandles
          hand={hand}
          chosen={chosen}
          isUpright={isUpright}
          onChoose={onChoose}
          onTake={take}
          ownsPuckAtEnd={props.ownsPuckAtEnd}
        />
      </g>
    </svg>
  );
}

function writesOf(hand: Hand, grip: Grip, toM: IcePoint, ownsPuck: (spotId: SpotId) => boolean): Write[] {
  const { kept } = hand;
  switch (grip.kind) {
    case 'spot':
      return spotMoved(kept, grip.spotId, toM);
    case 'through':
      return throughMoved(kept, grip.spotId, grip.actId, grip.index, toM);
    case 'bend':
      return throughAdded(kept, grip.spotId, grip.actId, grip.index, toM);
    case 'pull':
      return routePulled(kept, grip.spotId, toM, grip.newAct, ownsPuck(grip.spotId));
    case 'puck':
      return [{ path: ['pucks', grip.puckId, 'atM'], value: toM }];
    case 'gear':
      return [{ path: ['gear', grip.gearId, 'atM'], value: toM }];
  }
}
