import type { IcePoint } from '@icewright/engine';
import { useRef } from 'react';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView, PersonView } from './freeze-view.ts';
import { arrowOf } from './key-steps.ts';
import { type MapWord, mapNameKey } from './map-words.tsx';

/** Where they stand: a fix is a dot with its role. A wanted place is a broken ring that can be dragged, or moved by arrows. */
export function MapPeople({
  desk,
  view,
  words,
  k,
  icePoint,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly words: readonly MapWord[];
  readonly k: number;
  readonly icePoint: (event: { clientX: number; clientY: number }) => IcePoint | undefined;
}) {
  const puck = view.ice?.scene.puck?.atM;
  return (
    <>
      {view.people.map(person =>
        person.atM ? (
          <Fix
            key={person.id}
            desk={desk}
            person={person}
            atM={person.atM}
            k={k}
            word={words.find(one => one.key === mapNameKey(person.id))}
          />
        ) : null,
      )}
      {puck && <circle className="map-puck" cx={puck.xM} cy={-puck.yM} r={0.2 * k} />}
      {view.people.map(person =>
        person.placed.ghostM ? (
          <Wanted
            key={person.id}
            desk={desk}
            person={person}
            ghostM={person.placed.ghostM}
            k={k}
            icePoint={icePoint}
          />
        ) : null,
      )}
    </>
  );
}

function Fix({
  desk,
  person,
  atM,
  k,
  word,
}: {
  readonly desk: Desk;
  readonly person: PersonView;
  readonly atM: IcePoint;
  readonly k: number;
  readonly word: MapWord | undefined;
}) {
  const { id, placed } = person;
  const isChosen = desk.chosen === id;
  return (
    <g
      className={`map-person ${placed.side}${isChosen ? ' chosen' : ''}`}
      data-role={placed.role}
      data-x-m={atM.xM.toFixed(3)}
      data-y-m={atM.yM.toFixed(3)}
      onPointerUp={event => {
        if (desk.tool.kind === 'wanted') {
          event.stopPropagation();
          desk.setTool({ kind: 'wanted', who: id });
        }
        desk.choose(id);
      }}
    >
      <circle className="hit" cx={atM.xM} cy={-atM.yM} r={1.1 * k} />
      {isChosen && <circle className="ring" cx={atM.xM} cy={-atM.yM} r={0.95 * k} strokeWidth={0.18 * k} />}
      <circle className="fix" cx={atM.xM} cy={-atM.yM} r={0.3 * k} strokeWidth={0.14 * k} />
      {word && (
        <text x={word.x} y={word.y} fontSize={word.size} strokeWidth={0.3 * word.size} textAnchor="middle">
          {word.text}
        </text>
      )}
    </g>
  );
}

function Wanted({
  desk,
  person,
  ghostM,
  k,
  icePoint,
}: {
  readonly desk: Desk;
  readonly person: PersonView;
  readonly ghostM: IcePoint;
  readonly k: number;
  readonly icePoint: (event: { clientX: number; clientY: number }) => IcePoint | undefined;
}) {
  const held = useRef(false);
  const { id, placed } = person;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a ring in a drawing cannot be a button element
    <g
      className="map-wanted"
      role="button"
      tabIndex={0}
      aria-label={`Where ${placed.role} was wanted. Arrows move it by 0.1 m, with Shift by 1 m; Delete takes it out.`}
      onPointerDown={event => {
        held.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        desk.choose(id);
      }}
      onPointerMove={event => {
        const at = held.current ? icePoint(event) : undefined;
        if (at) desk.hold({ ghostOf: id, atM: at });
      }}
      onPointerUp={event => {
        const at = held.current ? icePoint(event) : undefined;
        event.stopPropagation();
        held.current = false;
        if (at) desk.write.setGhost(id, at);
        desk.hold(undefined);
      }}
      onKeyDown={event => {
        const arrow = arrowOf(event.key);
        if (arrow) {
          event.preventDefault();
          const step = event.shiftKey ? 1 : 0.1;
          desk.write.setGhost(id, { xM: ghostM.xM + arrow[0] * step, yM: ghostM.yM - arrow[1] * step });
        } else if (event.key === 'Delete' || event.key === 'Backspace') {
          event.preventDefault();
          desk.write.setGhost(id, undefined);
        }
      }}
    >
      <circle className="hit" cx={ghostM.xM} cy={-ghostM.yM} r={1.2 * k} />
      <circle
        className="ring"
        cx={ghostM.xM}
        cy={-ghostM.yM}
        r={0.8 * k}
        strokeWidth={0.14 * k}
        strokeDasharray={`${0.4 * k} ${0.28 * k}`}
      />
      <text
        x={ghostM.xM - 1.1 * k}
        y={-ghostM.yM + 0.35 * k}
        fontSize={1.12 * k}
        strokeWidth={0.34 * k}
        textAnchor="end"
      >
        {placed.role}
      </text>
    </g>
  );
}
