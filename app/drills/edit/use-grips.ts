import type { IcePoint, Rink, Run, SpotId } from '@icewright/engine';
import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import { icePointUnder, pxPerM } from '../board-pointer.ts';
import type { Grip } from '../grip.ts';
import type { Hand } from '../use-hand.ts';
import type { Pressed } from './aim.ts';
import { type Holding, heldAt, snapsFor } from './held.ts';
import { inside, type Marquee } from './marquee.ts';
import { catchPx, DOUBLE_PRESS_MS, LONG_PRESS_MS, liftPx, STILL_PX, type Tool, toolOf } from './press.ts';
import { isPicked, NOTHING, pressed, type Selection, toggled } from './selection.ts';

/** A pointer that is down: what it has taken, where it went down, how far it has been. */
interface Down {
  readonly pointerId: number;
  readonly tool: Tool;
  readonly xPx: number;
  readonly yPx: number;
  readonly adds: boolean;
  readonly before: Selection;
  readonly taken: { readonly holding: Holding; readonly offset: IcePoint } | null;
  readonly startM: IcePoint;
  farthestPx: number;
  /** A finger has rested: it now selects instead of pushing the page. */
  isLong: boolean;
}

export interface Grips {
  readonly take: (grip: Grip, event: PointerEvent, placeM: IcePoint) => void;
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: (event: PointerEvent) => void;
  readonly onPointerCancel: () => void;
  readonly marquee: Marquee | null;
}

/**
 * What pointers do on the board, mouse, pen and finger alike. A thing that is taken is held until it is let go; Esc or a call
 * of the system gives it back. A drag over empty ice selects what lies inside; by finger after a rest, since a moving finger pushes the page.
 */
export function useGrips(of: {
  readonly hand: Hand;
  readonly rink: Rink;
  readonly run: Run | null;
  readonly sheet: RefObject<SVGGElement | null>;
  readonly selection: Selection;
  readonly onSelect: (selection: Selection) => void;
  readonly ownsPuckAtEnd: (spotId: SpotId) => boolean;
  readonly onDoublePress: (grip: Grip, atM: IcePoint) => void;
  readonly onWentBack: (said: string) => void;
  /** A press that moved nothing, before it selects anything: true when it was meant for something else. */
  readonly onPress: (press: Pressed) => boolean;
}): Grips {
  const { hand, rink, run, sheet, selection, onSelect } = of;
  const down = useRef<Down | null>(null);
  const rest = useRef(0);
  const lastPress = useRef(NEVER);
  const [marquee, setMarquee] = useState<Marquee | null>(null);

  const end = () => {
    clearTimeout(rest.current);
    down.current = null;
    setMarquee(null);
  };
  const giveBack = () => {
    end();
    hand.putBack();
  };
  useEscape(() => down.current !== null, giveBack);
  useHeldPage(sheet, () => down.current !== null && (down.current.isLong || down.current.taken !== null));

  const begin = (event: PointerEvent, startM: IcePoint, before: Selection, taken: Down['taken']) => {
    const tool = toolOf(event);
    down.current = {
      pointerId: event.pointerId,
      tool,
      xPx: event.clientX,
      yPx: event.clientY,
      adds: event.shiftKey,
      before,
      taken,
      startM,
      farthestPx: 0,
      isLong: false,
    };
    if (tool === 'touch') rest.current = window.setTimeout(rested, LONG_PRESS_MS);
  };
  const rested = () => {
    const one = down.current;
    if (one === null || one.farthestPx > STILL_PX.touch) return;
    one.isLong = true;
    const grip = one.taken?.holding.grip;
    if (grip === undefined) setMarquee({ fromM: one.startM, toM: one.startM });
    else if (grip.kind === 'things') onSelect(toggled(one.before, grip.picked));
  };

  const take: Grips['take'] = (grip, event, placeM) => {
    const at = icePointUnder(sheet.current, event);
    if (at === null || down.current !== null || event.button > 0) return;
    event.preventDefault();
    event.stopPropagation();
    window.getSelection()?.removeAllRanges();
    sheet.current?.ownerSVGElement?.setPointerCapture(event.pointerId);
    const holding: Holding = {
      drill: hand.kept,
      rink,
      run,
      grip,
      snaps: snapsFor(hand.kept, rink, grip),
      catchM: 0,
      hasPuckAtEnd: grip.kind === 'pull' && of.ownsPuckAtEnd(grip.spotId),
    };
    begin(event, at, selection, { holding, offset: { xM: placeM.xM - at.xM, yM: placeM.yM - at.yM } });
  };

  const onPointerDown = (event: PointerEvent) => {
    const at = icePointUnder(sheet.current, event);
    if (at === null || down.current !== null || event.button > 0) return;
    if (toolOf(event) !== 'touch') sheet.current?.ownerSVGElement?.setPointerCapture(event.pointerId);
    begin(event, at, selection, null);
  };

  const onPointerMove = (event: PointerEvent) => {
    const one = down.current;
    if (one === null || one.pointerId !== event.pointerId) return;
    one.farthestPx = Math.max(one.farthestPx, Math.hypot(event.clientX - one.xPx, event.clientY - one.yPx));
    if (one.farthestPx <= STILL_PX[one.tool]) return;
    clearTimeout(rest.current);
    if (one.taken === null) {
      const toM = icePointUnder(sheet.current, event);
      if (toM !== null && (one.tool !== 'touch' || one.isLong)) setMarquee({ fromM: one.startM, toM });
      return;
    }
    const up = liftPx(one.tool, one.farthestPx);
    const at = icePointUnder(sheet.current, { clientX: event.clientX, clientY: event.clientY - up });
    if (at === null) return;
    const { holding, offset } = one.taken;
    const catchM = event.altKey ? 0 : catchPx(one.tool) / pxPerM(sheet.current);
    const { writes, shown } = heldAt(
      { ...holding, catchM },
      { xM: at.xM + offset.xM, yM: at.yM + offset.yM },
    );
    const finger = up === 0 ? null : icePointUnder(sheet.current, event);
    // Undo, or somebody else, has taken off what is held: the drag is over.
    if (!hand.hold(writes, finger === null ? shown : { ...shown, fingerM: finger })) end();
  };

  const onPointerUp = (event: PointerEvent) => {
    const one = down.current;
    if (one === null || one.pointerId !== event.pointerId) return;
    const isStill = one.farthestPx <= STILL_PX[one.tool];
    end();
    if (one.taken !== null) {
      if (isStill) return onStillPress(one, event.timeStamp);
      const wentBack = hand.letGo();
      if (wentBack !== null) of.onWentBack(wentBack);
      return;
    }
    const toM = icePointUnder(sheet.current, event);
    const isPulled = !isStill && toM !== null && (one.tool !== 'touch' || one.isLong);
    if (isPulled) onSelect(added(one, inside(hand.kept, { fromM: one.startM, toM })));
    else if (isStill && !one.adds && !one.isLong && !of.onPress({ atM: one.startM, thing: null }))
      onSelect(NOTHING);
  };
  /** A press on one of several that moved nothing means this one. Two of them are a double press; what is dragged was never pressed. */
  const onStillPress = (one: Down, atMs: number) => {
    if (one.taken === null) return;
    const { grip } = one.taken.holding;
    if (of.onPress({ atM: placeOf(one), thing: grip.kind === 'things' ? grip.picked : null })) return;
    const last = lastPress.current;
    const isDouble = last.key === keyOf(grip) && atMs - last.atMs < DOUBLE_PRESS_MS;
    lastPress.current = isDouble ? NEVER : { key: keyOf(grip), atMs };
    if (isDouble) return of.onDoublePress(grip, placeOf(one));
    if (grip.kind === 'things' && !one.adds && !one.isLong) onSelect(pressed(NOTHING, grip.picked, false));
  };

  return { take, onPointerDown, onPointerMove, onPointerUp, onPointerCancel: giveBack, marquee };
}

/** Where the thing itself is, in the middle. */
const placeOf = ({ startM, taken }: Down): IcePoint => ({
  xM: startM.xM + (taken?.offset.xM ?? 0),
  yM: startM.yM + (taken?.offset.yM ?? 0),
});

const NEVER: { readonly key: string; readonly atMs: number } = { key: '', atMs: 0 };

/** Which thing a grip has taken, whatever stands around it. */
const keyOf = (grip: Grip): string =>
  JSON.stringify({ ...grip, newAct: undefined, selection: undefined, fromM: undefined });

const added = (one: Down, found: Selection): Selection =>
  one.adds ? [...one.before, ...found.filter(each => !isPicked(one.before, each))] : found;

/** Esc while something is in the hand: heard before anything else, so that what is selected stays so. */
function useEscape(isHeld: () => boolean, giveBack: () => void): void {
  const latest = useRef({ isHeld, giveBack });
  latest.current = { isHeld, giveBack };
  useEffect(() => {
    const heard = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || !latest.current.isHeld()) return;
      event.preventDefault();
      event.stopPropagation();
      latest.current.giveBack();
    };
    window.addEventListener('keydown', heard, { capture: true });
    return () => window.removeEventListener('keydown', heard, { capture: true });
  }, []);
}

/** The page stands still under a finger that holds something or has rested; the browser asks at the first move of a touch. */
function useHeldPage(sheet: RefObject<SVGGElement | null>, isHeld: () => boolean): void {
  const latest = useRef(isHeld);
  latest.current = isHeld;
  useEffect(() => {
    const board = sheet.current?.ownerSVGElement;
    const moved = (event: TouchEvent) => latest.current() && event.cancelable && event.preventDefault();
    board?.addEventListener('touchmove', moved, { passive: false });
    return () => board?.removeEventListener('touchmove', moved);
  }, [sheet]);
}
