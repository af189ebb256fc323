import { useMemo } from 'react';
import { filmPath } from './film-path.ts';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView, PersonView } from './freeze-view.ts';
import { nameKey, type PictureWords, pairKey, pinKey, wantedKey } from './picture-word-places.ts';
import { Cased, LinkMark, WantedMark } from './picture-words.tsx';
import { ring, rinkLines } from './rink-lines.ts';
import type { Shown } from './shown.ts';
import type { Word } from './word-places.ts';

/** Everything drawn over the frozen picture, in its own pixels; `unit` is one pixel of the screen. */
export function FreezeMarks({
  desk,
  view,
  shown,
  words,
  unit,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly shown: Shown;
  readonly words: PictureWords;
  readonly unit: number;
}) {
  const { fit, freeze, rink } = view;
  const paint = useMemo(
    () =>
      fit && shown.paint
        ? rinkLines(rink)
            .map(line => filmPath(fit, line))
            .join('')
        : '',
    [fit, rink, shown.paint],
  );
  return (
    <>
      {paint !== '' && <path className="pm-paint" d={paint} strokeWidth={1.2 * unit} />}
      {view.people.map(person => (
        <Person
          key={person.id}
          person={person}
          desk={desk}
          view={view}
          word={words.get(nameKey(person.id))}
          unit={unit}
        />
      ))}
      {fit &&
        view.people.map(person => (
          <WantedMark
            key={person.id}
            person={person}
            fit={fit}
            word={words.get(wantedKey(person.id))}
            unit={unit}
          />
        ))}
      {desk.pairs.map(pair => (
        <LinkMark key={pair.join()} pair={pair} view={view} word={words.get(pairKey(pair))} unit={unit} />
      ))}
      {freeze.puck && <Puck desk={desk} view={view} unit={unit} />}
      {view.pins.map(pin => {
        const { xPx: x, yPx: y } = pin.at;
        const arm = 7 * unit;
        const tone = pin.disagrees ? 'bad' : pin.leftOut ? 'out' : '';
        const isChosen = desk.chosen === pin.id;
        return (
          // biome-ignore lint/a11y/useSemanticElements: a cross in a drawing cannot be a button element
          <g
            key={pin.id}
            className={`pm-pin ${tone}`}
            role="button"
            tabIndex={0}
            aria-label={`Pin ${pin.number}, ${pin.words}${pin.disagrees ? ', disagrees' : ''}. Arrows move it, Delete takes it out.`}
            data-thing="pin"
            data-id={pin.id}
          >
            <circle className="hit" cx={x} cy={y} r={13 * unit} />
            {isChosen && <circle className="pm-chosen" cx={x} cy={y} r={11 * unit} strokeWidth={2 * unit} />}
            <path
              className="under"
              d={`M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`}
              strokeWidth={4 * unit}
            />
            <path d={`M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`} strokeWidth={1.6 * unit} />
            <Cased word={words.get(pinKey(pin.id))} tone={pin.disagrees ? 'warm' : 'cool'} bold />
          </g>
        );
      })}
      {desk.tool.kind === 'pin' && desk.tool.waitingAt && (
        <circle
          className="pm-waiting"
          cx={desk.tool.waitingAt.xPx}
          cy={desk.tool.waitingAt.yPx}
          r={8 * unit}
          strokeWidth={2 * unit}
        />
      )}
    </>
  );
}

function Person({
  person,
  desk,
  view,
  word,
  unit,
}: {
  readonly person: PersonView;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly word: Word | undefined;
  readonly unit: number;
}) {
  const { placed, atM, id } = person;
  const { fit } = view;
  const { xPx: x, yPx: y } = placed.feet;
  const foot = fit && atM ? filmPath(fit, ring(atM, FOOT_RING_M, 28), true) : circlePath(x, y, 9 * unit);
  const isChosen = desk.chosen === id || (desk.tool.kind === 'measure' && desk.tool.first === id);
  const isCarrier = view.freeze.puck?.carrier === id;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a ring in a drawing cannot be a button element
    <g
      className={`pm-person ${placed.side}${isChosen ? ' chosen' : ''}`}
      role="button"
      tabIndex={0}
      aria-label={`${placed.role}, ${placed.side === 'us' ? 'one of us' : 'one of them'}${isCarrier ? ', has the puck' : ''}${person.unplaced ? `, ${person.unplaced}` : ''}. Arrows move the feet, Delete takes it out.`}
      data-thing="skater"
      data-id={id}
    >
      <circle className="hit" cx={x} cy={y} r={14 * unit} />
      <path className="under" d={foot} strokeWidth={4.5 * unit} />
      <path
        d={foot}
        strokeWidth={(placed.side === 'us' ? 2.4 : 1.6) * unit}
        strokeDasharray={placed.side === 'us' ? undefined : `${5 * unit} ${2.5 * unit}`}
      />
      <circle className="pm-dot" cx={x} cy={y} r={2 * unit} />
      {word && <Hair word={word} x={x} y={y} unit={unit} />}
      <Cased word={word} tone={person.unplaced ? 'warm' : isChosen ? 'cool' : 'ink'} bold />
    </g>
  );
}

/** From a name that had to stand aside to the feet it belongs to. */
function Hair({ word, x, y, unit }: { word: Word; x: number; y: number; unit: number }) {
  if (Math.abs(word.x - x) < word.size) return null;
  return (
    <path className="pm-hair" d={`M${word.x} ${word.y + 0.2 * word.size}L${x} ${y}`} strokeWidth={unit} />
  );
}

function Puck({
  desk,
  view,
  unit,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly unit: number;
}) {
  const { xPx: x, yPx: y } = view.freeze.puck!.at;
  const isChosen = desk.chosen === 'puck' || (desk.tool.kind === 'measure' && desk.tool.first === 'puck');
  return (
    // biome-ignore lint/a11y/useSemanticElements: a dot in a drawing cannot be a button element
    <g
      className={`pm-puck${isChosen ? ' chosen' : ''}`}
      role="button"
      tabIndex={0}
      aria-label="The puck. Arrows move it, Delete takes it out."
      data-thing="puck"
      data-id="puck"
    >
      <circle className="hit" cx={x} cy={y} r={12 * unit} />
      <circle className="under" cx={x} cy={y} r={7 * unit} strokeWidth={4 * unit} />
      <circle className="ring" cx={x} cy={y} r={7 * unit} strokeWidth={1.6 * unit} />
      <circle className="pm-dot" cx={x} cy={y} r={2 * unit} />
    </g>
  );
}

const circlePath = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

const FOOT_RING_M = 0.6;
