import type { IcePoint } from '@icewright/engine';
import { createContext, type KeyboardEvent, type PointerEvent, type ReactNode, useContext } from 'react';
import { arrowStep, plus } from '../board-pointer.ts';
import { reachOf } from '../finger-room.ts';

/** What stands on the board, where a finger may be what takes it. */
export const Places = createContext<readonly IcePoint[] | null>(null);

/** Something that a finger, a mouse or a key can take hold of: a button with a name, above the drawing. */
export function Grab(props: {
  readonly name: string;
  readonly atM: IcePoint;
  readonly radiusM: number;
  readonly shownM?: number;
  readonly className?: string;
  readonly isPicked?: boolean;
  /** For the key that goes from one thing to the next. */
  readonly thing?: string;
  /** A mark of its own. */
  readonly children?: ReactNode;
  readonly onTake: (event: PointerEvent) => void;
  readonly onKey: (event: KeyboardEvent) => void;
  /** The keys have gone elsewhere. */
  readonly onBlur?: () => void;
}) {
  const places = useContext(Places);
  const hitM = places === null ? props.radiusM : reachOf(props.atM, props.radiusM, places);
  const classes = ['grab', props.className, props.isPicked && 'is-chosen'];
  const ringM = props.radiusM + 0.2;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button element cannot stand in a drawing
    <g
      role="button"
      tabIndex={0}
      aria-label={props.name}
      aria-pressed={props.isPicked}
      data-thing={props.thing}
      className={classes.filter(Boolean).join(' ')}
      transform={`translate(${props.atM.xM} ${-props.atM.yM})`}
      onPointerDown={props.onTake}
      onKeyDown={props.onKey}
      onBlur={props.onBlur}
    >
      <circle className="hit" r={hitM} />
      {props.children}
      {props.shownM !== undefined && <circle className="shown" r={props.shownM} />}
      <circle className="ring" r={ringM} />
      <path className="ticks" d={ticksAt(ringM)} />
    </g>
  );
}

/** Moves a thing by arrow keys: 0.1 m, with Shift 1 m. True when the key was one of them. */
export function nudged(
  event: KeyboardEvent,
  isUpright: boolean,
  fromM: IcePoint,
  move: (toM: IcePoint, stepM: IcePoint) => void,
): boolean {
  const step = arrowStep(event, isUpright);
  if (step === null || event.altKey || event.ctrlKey || event.metaKey) return false;
  event.preventDefault();
  event.stopPropagation();
  move(plus(fromM, step), step);
  return true;
}

export const isTakeOff = (event: KeyboardEvent): boolean =>
  event.key === 'Delete' || event.key === 'Backspace';

/** Four ticks about the ring of what has the focus. */
const ticksAt = (ringM: number): string =>
  [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ]
    .map(
      ([x = 0, y = 0]) =>
        `M${x * (ringM + 0.25)} ${y * (ringM + 0.25)}L${x * (ringM + 0.85)} ${y * (ringM + 0.85)}`,
    )
    .join('');
