import type { KeyboardEvent, PointerEvent } from 'react';
import { filmPath } from '../film-path.ts';
import type { Desk } from '../freeze-desk.ts';
import type { FreezeView } from '../freeze-view.ts';
import { Cased } from '../picture-words.tsx';
import { ring } from '../rink-lines.ts';
import { letterOf, type OfferedPerson } from './offered-people.ts';
import type { PeopleOffer } from './use-people-offer.ts';

/** Who was found in the frozen picture: fine broken rings, which a press takes while somebody is being placed, and chooses else. */
export function OfferRings({
  offer,
  desk,
  view,
  unit,
}: {
  readonly offer: PeopleOffer;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly unit: number;
}) {
  const { fit } = view;
  const { tool } = desk;
  if (!fit || tool.kind === 'pin') return null;
  const press = (one: OfferedPerson) =>
    tool.kind === 'place' ? offer.take([one], tool.side, tool.who) : offer.choose(one.id);
  return (
    <g className={`offer-rings${tool.kind === 'look' || tool.kind === 'place' ? '' : ' resting'}`}>
      {offer.offered.map(one => {
        const { xPx: x, yPx: y } = one.feetPx;
        const path = filmPath(fit, ring(one.atM, FOOT_RING_M, 28), true);
        const isChosen = offer.chosen?.id === one.id;
        return (
          // biome-ignore lint/a11y/useSemanticElements: a ring in a drawing cannot be a button element
          <g
            key={one.id}
            className={`offer-ring${isChosen ? ' chosen' : ''}`}
            role="button"
            tabIndex={0}
            data-group={letterOf(one.group)}
            aria-pressed={isChosen}
            aria-label={`Somebody found, ${one.group === null ? 'dress not clear' : `dress ${letterOf(one.group)}`}. U takes one of us, T one of them, Delete leaves it out.`}
            onPointerDown={stop}
            onPointerUp={stop}
            onClick={() => press(one)}
            onKeyDown={event => byKey(event, one, offer, press)}
          >
            <circle className="hit" cx={x} cy={y} r={14 * unit} />
            {isChosen && <circle className="pm-chosen" cx={x} cy={y} r={15 * unit} strokeWidth={2 * unit} />}
            <path className="under" d={path} strokeWidth={4 * unit} />
            <path
              d={path}
              strokeWidth={(isChosen ? 2.4 : 1.5) * unit}
              strokeDasharray={`${2 * unit} ${3 * unit}`}
            />
            <Cased
              word={{
                key: one.id,
                text: letterOf(one.group),
                x: x + 15 * unit,
                y: y + 9 * unit,
                size: 12 * unit,
              }}
              tone={isChosen ? 'cool' : 'ink'}
            />
          </g>
        );
      })}
    </g>
  );
}

const FOOT_RING_M = 0.6;

/** What lies below must not take the press for its own. */
const stop = (event: PointerEvent): void => event.stopPropagation();

const byKey = (
  event: KeyboardEvent,
  one: OfferedPerson,
  offer: PeopleOffer,
  press: (one: OfferedPerson) => void,
): void => {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const act = actOf(event.key, one, offer, press);
  if (!act) return;
  event.preventDefault();
  event.stopPropagation();
  // The ring that is gone cannot keep the focus: the next one takes it, else the picture.
  const ringHere = event.currentTarget;
  const next = ringHere.nextElementSibling ?? ringHere.previousElementSibling ?? ringHere.closest('svg');
  act();
  if (event.key !== 'Enter') (next as SVGElement | null)?.focus();
};

const actOf = (
  key: string,
  one: OfferedPerson,
  offer: PeopleOffer,
  press: (one: OfferedPerson) => void,
): (() => void) | undefined => {
  if (key === 'Enter') return () => press(one);
  if (key === 'u') return () => offer.take([one], 'us');
  if (key === 't') return () => offer.take([one], 'them');
  return key === 'Delete' || key === 'Backspace' ? () => offer.leaveOut([one]) : undefined;
};
