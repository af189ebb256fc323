import type { CarryOption, FilmPoint, PassOption } from '@icewright/engine';
import { useMemo, useRef, useState } from 'react';
import type { Desk, Thing } from './freeze-desk.ts';
import { FreezeMarks } from './freeze-marks.tsx';
import type { FreezeView } from './freeze-view.ts';
import { arrowOf, pixelsOf } from './key-steps.ts';
import { drawLoupe, loupePlace } from './loupe.ts';
import { PinsOfferMarks } from './offer/pins-offer-marks.tsx';
import type { PinsOfferHere } from './offer/use-pins-offer.ts';
import { OptionMarks } from './option-marks.tsx';
import { OfferRings } from './people/offer-rings.tsx';
import type { PeopleOffer } from './people/use-people-offer.ts';
import { pictureWordsOf } from './picture-word-places.ts';
import { isCaught, pressAt } from './press-at.ts';
import type { Shown } from './shown.ts';

/** Marks over the frozen picture, and the hand that puts them there: by pointer with a loupe, or by keys with a crosshair. */
export function FreezeLayer({
  desk,
  view,
  shown,
  options,
  filmPerScreen,
  canvas,
  offer,
  pinsOffer,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly shown: Shown;
  readonly options: readonly (PassOption | CarryOption)[];
  readonly filmPerScreen: number;
  readonly canvas: HTMLCanvasElement | null;
  readonly offer: PeopleOffer;
  readonly pinsOffer: PinsOfferHere;
}) {
  const layer = useRef<SVGSVGElement>(null);
  const loupe = useRef<HTMLCanvasElement>(null);
  const grip = useRef<Grip>(undefined);
  const repeats = useRef(0);
  const [cross, setCross] = useState<FilmPoint>();
  const lastCross = useRef<FilmPoint>(undefined);
  const { widthPx, heightPx } = view.freeze.picture;
  // On a narrow picture the marks are smaller, or they would hide it.
  const unit = filmPerScreen * Math.max(0.62, Math.min(1, widthPx / filmPerScreen / 640));
  const words = useMemo(
    () => pictureWordsOf(view, desk.pairs, options, unit),
    [view, desk.pairs, options, unit],
  );
  const puts = ['pin', 'place', 'puck', 'wanted'].includes(desk.tool.kind);

  const filmPoint = (event: { clientX: number; clientY: number }): FilmPoint => {
    const box = layer.current!.getBoundingClientRect();
    return {
      xPx: within(((event.clientX - box.left) / box.width) * widthPx, widthPx),
      yPx: within(((event.clientY - box.top) / box.height) * heightPx, heightPx),
    };
  };
  const showLoupe = (at: FilmPoint | undefined, byTouch = false) => {
    const glass = loupe.current;
    if (!glass) return;
    glass.hidden = !at || !canvas;
    if (!at || !canvas) return;
    drawLoupe(glass, canvas, at, 1 / filmPerScreen);
    const place = loupePlace(
      at.xPx / filmPerScreen,
      at.yPx / filmPerScreen,
      widthPx / filmPerScreen,
      byTouch,
    );
    glass.style.left = `${place.left}px`;
    glass.style.top = `${place.top}px`;
  };

  const down = (event: React.PointerEvent) => {
    if (event.button !== 0) return;
    setCross(undefined);
    const thing = thingOf(event.target);
    if (thing && desk.tool.kind === 'measure' && thing.kind !== 'pin')
      return pressAt(desk, view, filmPoint(event), thing);
    const at = filmPoint(event);
    if (thing && isCaught(desk.tool, thing)) {
      grip.current = { thing, from: at, moved: false };
      desk.choose(thing.id);
    } else {
      grip.current = { from: at, moved: false, ...(thing ? { pressed: thing } : {}) };
      if (!puts) desk.choose(undefined);
    }
    layer.current?.setPointerCapture(event.pointerId);
    if (puts || thing) showLoupe(at, event.pointerType === 'touch');
  };
  const move = (event: React.PointerEvent) => {
    const at = filmPoint(event);
    const held = grip.current;
    const byTouch = event.pointerType === 'touch';
    if (puts || held?.thing) showLoupe(byTouch && !held ? undefined : at, byTouch);
    if (!held?.thing) return;
    held.moved ||= Math.hypot(at.xPx - held.from.xPx, at.yPx - held.from.yPx) > 2 * filmPerScreen;
    if (held.moved) desk.hold({ thing: held.thing, at });
  };
  const up = (event: React.PointerEvent) => {
    const held = grip.current;
    grip.current = undefined;
    if (event.pointerType === 'touch') showLoupe(undefined);
    if (!held) return;
    const at = filmPoint(event);
    if (held.thing) {
      if (held.moved) desk.write.move(held.thing, at, 'hand');
      desk.hold(undefined);
    } else pressAt(desk, view, at, held.pressed);
  };
  const key = (event: React.KeyboardEvent) => {
    const arrow = arrowOf(event.key);
    const thing = thingOf(event.target);
    if (arrow) {
      event.preventDefault();
      repeats.current = event.repeat ? repeats.current + 1 : 0;
      const step = pixelsOf(event, repeats.current);
      const from = thing ? placeOfThing(view, thing) : (cross ?? { xPx: widthPx / 2, yPx: heightPx / 2 });
      if (!from) return;
      const at = {
        xPx: within(from.xPx + arrow[0] * step, widthPx),
        yPx: within(from.yPx + arrow[1] * step, heightPx),
      };
      if (thing) desk.write.move(thing, at, 'keys');
      else {
        lastCross.current = at;
        setCross(at);
      }
      showLoupe(at);
    } else if (event.key === 'Enter') {
      event.preventDefault();
      if (thing && desk.tool.kind !== 'measure') desk.choose(thing.id);
      else pressAt(desk, view, thing ? placeOfThing(view, thing)! : (cross ?? middleOf(view)), thing);
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && thing) {
      event.preventDefault();
      desk.write.remove(thing);
      layer.current?.focus();
    } else if (event.key === 'Escape') {
      showLoupe(undefined);
      desk.setTool({ kind: 'look' });
    }
  };
  return (
    <>
      <svg
        ref={layer}
        className={puts ? `freeze-layer putting ${desk.tool.kind}` : 'freeze-layer'}
        viewBox={`0 0 ${widthPx} ${heightPx}`}
        preserveAspectRatio="none"
        role="application"
        aria-label="The frozen picture. Arrows move the crosshair, Enter puts down what is chosen."
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is worked on by keys: arrows move a crosshair, Enter presses
        tabIndex={0}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={() => {
          grip.current = undefined;
          desk.hold(undefined);
        }}
        onPointerLeave={() => showLoupe(undefined)}
        onKeyDown={key}
        onFocus={event => {
          if (event.target !== event.currentTarget || !puts) return;
          if (event.currentTarget.matches(':focus-visible')) setCross(lastCross.current ?? middleOf(view));
        }}
        onBlur={event => {
          if (event.target === event.currentTarget) setCross(undefined);
          showLoupe(undefined);
        }}
      >
        <title>Marks on the frozen picture</title>
        <OptionMarks view={view} options={options} words={words} unit={unit} />
        <FreezeMarks desk={desk} view={view} shown={shown} words={words} unit={unit} />
        <OfferRings offer={offer} desk={desk} view={view} unit={unit} />
        <PinsOfferMarks offer={pinsOffer} view={view} unit={unit} />
        {cross && <Crosshair at={cross} unit={unit} />}
      </svg>
      <canvas ref={loupe} className="loupe" hidden />
      {cross && (
        <p className="vh" role="status">
          {cross.xPx.toFixed(1)}, {cross.yPx.toFixed(1)}
        </p>
      )}
    </>
  );
}

interface Grip {
  /** What is being moved. */
  readonly thing?: Thing;
  /** What was pressed and stays where it is. */
  readonly pressed?: Thing;
  readonly from: FilmPoint;
  moved: boolean;
}

function Crosshair({ at, unit }: { readonly at: FilmPoint; readonly unit: number }) {
  const arm = 16 * unit;
  const gap = 3 * unit;
  const path = `M${at.xPx - arm} ${at.yPx}H${at.xPx - gap}M${at.xPx + gap} ${at.yPx}H${at.xPx + arm}M${at.xPx} ${at.yPx - arm}V${at.yPx - gap}M${at.xPx} ${at.yPx + gap}V${at.yPx + arm}`;
  return (
    <g className="crosshair" data-x={at.xPx} data-y={at.yPx}>
      <path className="under" d={path} strokeWidth={4 * unit} />
      <path d={path} strokeWidth={1.5 * unit} />
    </g>
  );
}

const thingOf = (target: EventTarget | null): Thing | undefined => {
  const found = target instanceof Element ? target.closest<SVGElement>('[data-thing]') : null;
  const { thing, id } = found?.dataset ?? {};
  if (thing === 'puck') return { kind: 'puck', id: 'puck' };
  return (thing === 'pin' || thing === 'skater') && id ? { kind: thing, id } : undefined;
};

const placeOfThing = ({ freeze }: FreezeView, thing: Thing): FilmPoint | undefined =>
  thing.kind === 'puck'
    ? freeze.puck?.at
    : thing.kind === 'pin'
      ? freeze.pins[thing.id as keyof typeof freeze.pins]?.at
      : freeze.skaters[thing.id as keyof typeof freeze.skaters]?.feet;

const middleOf = ({ freeze }: FreezeView): FilmPoint => ({
  xPx: freeze.picture.widthPx / 2,
  yPx: freeze.picture.heightPx / 2,
});

const within = (value: number, most: number): number => Math.max(0, Math.min(most, value));
