import type { KeyboardEvent, PointerEvent } from 'react';
import { useMemo } from 'react';
import { filmPath } from '../film-path.ts';
import type { FreezeView } from '../freeze-view.ts';
import { landmarkShort } from '../landmark-words.ts';
import { Cased } from '../picture-words.tsx';
import { rinkLines } from '../rink-lines.ts';
import { type Body, wordPlaces } from '../word-places.ts';
import { type Candidate, turnedFit } from './offered-here.ts';
import type { PinsOfferHere } from './use-pins-offer.ts';

/** Candidate pins over the frozen picture, broken and with sloping names, and the sheet's lines as they would lie: on the paint, or not. */
export function PinsOfferMarks({
  offer,
  view,
  unit,
}: {
  readonly offer: PinsOfferHere;
  readonly view: FreezeView;
  readonly unit: number;
}) {
  const fit = offer.offer?.fit;
  const { adds } = offer.here;
  const drawnBy = useMemo(() => fit && (offer.isTurned ? turnedFit(fit) : fit), [fit, offer.isTurned]);
  const paint = useMemo(
    () =>
      drawnBy
        ? rinkLines(view.rink)
            .map(line => filmPath(drawnBy, line))
            .join('')
        : '',
    [drawnBy, view.rink],
  );
  const { widthPx } = view.freeze.picture;
  const words = useMemo(() => placedNames(adds, unit, widthPx), [adds, unit, widthPx]);
  // On a phone the names would hide the paint; there they stand in the list alone.
  const isNamed = widthPx / unit > LEAST_NAMED;
  if (!fit) return null;
  return (
    <g className="pins-offer-marks">
      <path className="under" d={paint} strokeWidth={2.6 * unit} />
      <path className="offer-paint" d={paint} strokeWidth={1.1 * unit} />
      {adds.map(one => {
        const { xPx: x, yPx: y } = one.at;
        const arm = 8 * unit;
        const cross = `M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`;
        const isDropped = offer.dropped.has(one.landmark);
        return (
          // biome-ignore lint/a11y/useSemanticElements: a cross in a drawing cannot be a button element
          <g
            key={one.landmark}
            className={`offer-pin${isDropped ? ' out' : ''}`}
            role="button"
            tabIndex={0}
            data-landmark={one.landmark}
            aria-label={`Pin offered, ${one.words}${isDropped ? ', left out' : ''}. Enter accepts it, Delete leaves it out.`}
            onPointerDown={stop}
            onPointerUp={stop}
            onClick={() => offer.drop(one)}
            onKeyDown={event => byKey(event, one, offer)}
          >
            <circle className="hit" cx={x} cy={y} r={13 * unit} />
            <path className="under" d={cross} strokeWidth={4 * unit} />
            <path d={cross} strokeWidth={1.6 * unit} strokeDasharray={`${2.5 * unit} ${2 * unit}`} />
            {isNamed && !isDropped && <Cased word={words.get(one.landmark)} tone="cool" />}
          </g>
        );
      })}
    </g>
  );
}

/** Narrower than this on the screen, in marks' own pixels. */
const LEAST_NAMED = 640;

const placedNames = (adds: readonly Candidate[], unit: number, widthPx: number) => {
  const names = adds.map(({ landmark, at }) => {
    const text = landmarkShort(landmark);
    // Half of it, as wide as such letters run: no name is cut off by the picture's edge.
    const half = 0.26 * 11 * unit * text.length;
    const x = Math.max(half, Math.min(widthPx - half, at.xPx));
    return {
      key: landmark,
      text,
      x,
      y: at.yPx - 11 * unit,
      size: 11 * unit,
      else: { x, y: at.yPx + 19 * unit },
    };
  });
  const crosses = adds.map(({ at }) => ({ x: at.xPx, y: at.yPx, r: 8 * unit }));
  const places = wordPlaces(names, crosses, besides(widthPx));
  return new Map(names.map(name => [name.key, { ...name, ...places.get(name.key) }]));
};

/** What is beside the picture: a name that makes room for another does not go there either. */
const besides = (widthPx: number): Body[] =>
  [
    { left: -FAR_PX, right: 0 },
    { left: widthPx, right: widthPx + FAR_PX },
  ].map(sides => ({ ...sides, key: '', top: -FAR_PX, bottom: FAR_PX }));
const FAR_PX = 10_000;

/** What lies below must not take the press for its own. */
const stop = (event: PointerEvent): void => event.stopPropagation();

const byKey = (event: KeyboardEvent, one: Candidate, offer: PinsOfferHere): void => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const accepts = event.key === 'Enter';
  if (!accepts && event.key !== 'Delete' && event.key !== 'Backspace') return;
  event.preventDefault();
  event.stopPropagation();
  if (!accepts) {
    offer.drop(one);
    return;
  }
  // The cross that is gone cannot keep the focus: the next one takes it, else the picture.
  const here = event.currentTarget;
  const sibling = here.nextElementSibling ?? here.previousElementSibling;
  const next = sibling?.matches('.offer-pin') ? sibling : here.closest('svg');
  offer.accept([one]);
  (next as SVGElement | null)?.focus();
};
