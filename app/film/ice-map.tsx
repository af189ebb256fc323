import type { CarryOption, IcePoint, PassOption } from '@icewright/engine';
import {
  drawErrorEllipse,
  drawLink,
  drawPictureEdge,
  drawRink,
  drawWay,
  rinkViewBox,
  sheetPoint,
  svgParts,
} from '@icewright/picture';
import { useMemo, useRef } from 'react';
import { drawOptions } from './draw-options.ts';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { MapPeople } from './map-people.tsx';
import { MapPins } from './map-pins.tsx';
import { MapWords, mapWordsOf, placeOnIce } from './map-words.tsx';
import { MapPinsOffered } from './offer/map-pins-offered.tsx';
import type { Candidate } from './offer/offered-here.ts';
import { MapOffered } from './people/map-offered.tsx';
import type { OfferedPerson } from './people/offered-people.ts';
import type { Shown } from './shown.ts';

/** The frozen picture on the ice: who stands where with the 95 % ellipse, the limit of the picture, pins, wanted places. */
export function IceMap({
  desk,
  view,
  shown,
  drawn,
  offered,
  pinsOffered,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly shown: Shown;
  /** Lanes and bank passes, drawn under the people. */
  readonly drawn: readonly (PassOption | CarryOption)[];
  /** Found in the picture and not taken. */
  readonly offered: readonly OfferedPerson[];
  readonly pinsOffered: readonly Candidate[];
}) {
  const svg = useRef<SVGSVGElement>(null);
  const box = useMemo(() => boxOf(view, desk.tool.kind === 'pin'), [view, desk.tool.kind]);
  const k = box[2] > 45 ? 1.5 : 1.1;
  const ground = useMemo(
    () => svgParts(pen => drawRink(pen, view.rink, { dotLines: true }), { k, thinFloor: box[2] / 700 }),
    [view.rink, k, box[2]],
  );
  const marks = useMemo(
    () =>
      svgParts(
        pen => {
          if (view.seenM.length > 2) drawPictureEdge(pen, view.seenM);
          if (view.fit) drawOptions(pen, view, drawn);
          if (shown.ellipses) {
            for (const one of view.ice?.scene.skaters ?? []) drawErrorEllipse(pen, one.atM, one.covM2);
            const puck = view.ice?.scene.puck;
            if (puck) drawErrorEllipse(pen, puck.atM, puck.covM2);
            for (const one of offered) drawErrorEllipse(pen, one.atM, one.covM2);
          }
          for (const { placed, atM } of view.people) {
            if (!placed.ghostM || !atM) continue;
            drawWay(pen, atM, placed.ghostM, '');
          }
          for (const pair of desk.pairs) {
            const [a, b] = pair.map(id => placeOnIce(view, id));
            if (a && b) drawLink(pen, sheetPoint(a), sheetPoint(b), '');
          }
        },
        { k },
      ),
    [view, desk.pairs, shown.ellipses, drawn, offered, k],
  );
  const words = useMemo(() => mapWordsOf(view, desk.pairs, drawn, k), [view, desk.pairs, drawn, k]);
  const icePoint = (event: { clientX: number; clientY: number }): IcePoint | undefined => {
    const matrix = svg.current?.getScreenCTM();
    if (!matrix) return undefined;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    return { xM: at.x, yM: -at.y };
  };
  return (
    <svg
      ref={svg}
      className={`ice-svg ice-map${desk.tool.kind === 'pin' ? ' picking' : ''}`}
      viewBox={box.join(' ')}
      role="application"
      aria-label={`The frozen picture on the ice, ${view.people.length} placed. The camera is below the lower edge.`}
      onPointerUp={event => {
        const at = icePoint(event);
        if (desk.tool.kind === 'wanted' && desk.tool.who && at) desk.write.setGhost(desk.tool.who, at);
      }}
    >
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
      <g dangerouslySetInnerHTML={{ __html: ground }} />
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
      <g dangerouslySetInnerHTML={{ __html: marks }} />
      {desk.tool.kind !== 'pin' && <MapOffered offered={offered} k={k} />}
      <MapPinsOffered candidates={pinsOffered} view={view} k={k} />
      <MapPins desk={desk} view={view} k={k} />
      {desk.tool.kind !== 'pin' && (
        <>
          <MapPeople desk={desk} view={view} words={words} k={k} icePoint={icePoint} />
          <MapWords words={words} />
        </>
      )}
    </svg>
  );
}

/** The whole sheet while marks are picked; later the part that the picture shows, when that is much less. */
const boxOf = (view: FreezeView, picking: boolean): readonly [number, number, number, number] => {
  const whole = rinkViewBox(view.rink);
  const xs = view.seenM.map(one => one.xM);
  if (picking || xs.length === 0) return whole;
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  if (to - from > CLOSE_UP_M - 4) return whole;
  const middle = (from + to) / 2;
  const left = Math.max(whole[0], Math.min(whole[0] + whole[2] - CLOSE_UP_M, middle - CLOSE_UP_M / 2));
  return [left, whole[1], CLOSE_UP_M, whole[3]];
};
const CLOSE_UP_M = 40;
