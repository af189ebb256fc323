import type { Finding, IcePoint, Rink, Run, SpotId } from '@icewright/engine';
import { drawRink, drawUpright, rinkViewBox, svgParts } from '@icewright/picture';
import { type PointerEvent, type ReactNode, useMemo, useRef } from 'react';
import type { Lengths } from '../parts/figures.ts';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { BoardHandles } from './board-handles.tsx';
import { icePointUnder } from './board-pointer.ts';
import { BoardSkaters } from './board-skaters.tsx';
import { drillMarkup } from './drill-markup.ts';
import { type Aim, aimedWrites } from './edit/aim.ts';
import { BoardMarks } from './edit/board-marks.tsx';
import { doublePressed } from './edit/double-press.ts';
import { pickedAct, pressed, type Selection } from './edit/selection.ts';
import { useGrips } from './edit/use-grips.ts';
import { usePickedDrawn } from './edit/use-picked-drawn.ts';
import { usePieces } from './edit/use-pieces.ts';
import type { Grip } from './grip.ts';
import { type Thing, thingAdded } from './new-things.ts';
import { onIce } from './on-ice.ts';
import type { Hand } from './use-hand.ts';

/** The ice with the drill on it, worked by hand: places dragged, routes pulled and bent, many things at once. */
export function Board(props: {
  readonly hand: Hand;
  readonly rink: Rink;
  readonly run: Run | null;
  /** Flags with these numbers, as the list has them. */
  readonly findings: readonly Finding[];
  readonly lengths: Lengths;
  readonly timeS: number;
  readonly selection: Selection;
  readonly onSelect: (selection: Selection) => void;
  readonly placing: Thing | null;
  readonly onPlaced: (spotId: SpotId | null) => void;
  readonly ownsPuckAtEnd: (spotId: SpotId) => boolean;
  /** The act that the next press is for. */
  readonly aim: Aim | null;
  readonly onAimed: () => void;
  /** A sentence about what was done, or why not. */
  readonly onSaid: (said: string) => void;
  /** What lies under the drawing: the freeze it was made from. */
  readonly under?: ReactNode;
}) {
  const { hand, rink, run, findings, lengths, placing, selection, onSelect, ownsPuckAtEnd, onSaid } = props;
  const { drill } = hand;
  const isUpright = useIsNarrow(701);
  const sheet = useRef<SVGGElement>(null);
  const drawing = useRef<SVGGElement>(null);

  const rinkDrawing = useMemo(
    () =>
      svgParts(pen => {
        const draw = () => drawRink(pen, rink, { scaleBar: !isUpright, dotLines: true });
        isUpright ? drawUpright(pen, draw) : draw();
      }, {}),
    [rink, isUpright],
  );
  const drillDrawing = useMemo(
    () => drillMarkup({ drill, rink, run, findings, isUpright, lengths }),
    [drill, rink, run, findings, isUpright, lengths],
  );
  usePieces(drawing, drillDrawing);
  usePickedDrawn(drawing, drillDrawing, selection);
  const turn = isUpright ? 'rotate(-90)' : undefined;
  const [x, y, width, height] = rinkViewBox(rink, isUpright);

  const grips = useGrips({
    hand,
    rink,
    run,
    sheet,
    selection,
    onSelect,
    ownsPuckAtEnd,
    onDoublePress: (grip, atM) => doublePressed({ hand, grip, atM, onSelect, onSaid }),
    onWentBack: said => onSaid(`It went back: ${said}.`),
    onPress: press => {
      const { aim } = props;
      props.onAimed();
      const writes = aim === null ? null : aimedWrites(hand.kept, rink, aim, press);
      if (aim === null || writes === null) return false;
      hand.keep(writes);
      onSelect([pickedAct(aim.spotId, aim.actId)]);
      return true;
    },
  });
  const take = (grip: Grip, event: PointerEvent, placeM: IcePoint) => {
    if (placing === null) grips.take(grip, event, placeM);
  };
  const down = (event: PointerEvent) => {
    if (placing === null) return onDrawing(event) || grips.onPointerDown(event);
    const at = icePointUnder(sheet.current, event);
    if (at === null) return;
    const { writes, spotId } = thingAdded(hand.drill, placing, onIce(rink, at));
    hand.keep(writes);
    props.onPlaced(spotId ?? null);
  };
  /** A line of the drawing is pressed: its act is picked. A lozenge is taken. */
  const onDrawing = (event: PointerEvent): boolean => {
    const drawn = (event.target as Element).closest<SVGGElement>('.drill-drawing [data-act]');
    const { spot, act } = drawn?.dataset ?? {};
    if (spot === undefined || act === undefined) return false;
    const picked = pickedAct(spot as never, act as never);
    onSelect(pressed(selection, picked, event.shiftKey));
    const at = icePointUnder(sheet.current, event);
    if (drawn?.classList.contains('cue-of') && at !== null)
      take({ kind: 'cue', spotId: picked.spot, actId: picked.act } as Grip, event, at);
    return true;
  };

  return (
    <svg
      className={placing === null && props.aim === null ? 'board ice-svg' : 'board ice-svg is-placing'}
      viewBox={`${x} ${y} ${width} ${height}`}
      onPointerDown={down}
      onPointerMove={grips.onPointerMove}
      onPointerUp={grips.onPointerUp}
      onPointerCancel={grips.onPointerCancel}
    >
      <title>The ice</title>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
      <g dangerouslySetInnerHTML={{ __html: rinkDrawing }} />
      {props.under}
      <g ref={drawing} className="drill-drawing" transform={turn} />
      <g ref={sheet} transform={turn}>
        {run !== null && <BoardSkaters run={run} drill={drill} timeS={props.timeS} isUpright={isUpright} />}
        <BoardMarks shown={hand.shown} marquee={grips.marquee} rink={rink} isUpright={isUpright} />
        <BoardHandles
          hand={hand}
          rink={rink}
          run={run}
          selection={selection}
          isUpright={isUpright}
          onSelect={onSelect}
          onTake={take}
          ownsPuckAtEnd={ownsPuckAtEnd}
          onSaid={onSaid}
        />
      </g>
    </svg>
  );
}
