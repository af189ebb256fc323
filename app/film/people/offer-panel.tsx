import { Act } from '../../parts/act.tsx';
import { focusNext } from '../focus-next.ts';
import type { FreezeView } from '../freeze-view.ts';
import { LookAct } from '../look-act.tsx';
import { groupsOf, letterOf, type OfferedGroup } from './offered-people.ts';
import type { PeopleOffer } from './use-people-offer.ts';
import './offer.css';

/** Asks who can be found in the picture; takes what was asked away again. */
export function OfferAct({
  offer,
  view,
  isFrozen,
}: {
  readonly offer: PeopleOffer;
  readonly view: FreezeView;
  readonly isFrozen: boolean;
}) {
  const notNow = view.fit
    ? isFrozen
      ? undefined
      : "go back to the freeze's own picture first"
    : 'the pins must hold the picture first';
  return (
    <LookAct
      name="offer-people"
      keys="Shift+e"
      sign="⇧E"
      says="offer the people of the freeze"
      notNow={notNow}
      offer={offer}
      words={{ none: 'Offer people', looked: 'Put the offer away' }}
    />
  );
}

/** Who was found and is not placed, by what they wear: a dress is taken whole, or one by one. Nothing is taken by itself. */
export function OfferPanel({ offer }: { readonly offer: PeopleOffer }) {
  if (offer.state !== 'looked') return null;
  const { offered, leftOutCount } = offer;
  return (
    <div className="offer" data-testid="offer">
      <p className="q2" role="status">
        {saidOf(offer)}
      </p>
      {groupsOf(offered).map(one => (
        <GroupRow key={one.group} group={one} offer={offer} />
      ))}
      <NotClear offer={offer} />
      {offered.length > 0 && <OneByOne offer={offer} />}
      {leftOutCount > 0 && (
        <p className="pins-acts">
          <span className="q3">{leftOutCount} left out.</span>
          <Act onPress={offer.bringBack}>Offer them again</Act>
        </p>
      )}
    </div>
  );
}

const saidOf = ({ refused, offered, leftOutCount }: PeopleOffer): string =>
  refused ??
  (offered.length > 0
    ? `${offered.length} found who ${offered.length === 1 ? 'is' : 'are'} not placed, lettered by what they wear. Look at each ring before you take it: some hold nobody, and a dress can hold one of the others.`
    : leftOutCount > 0
      ? 'Nobody else was found.'
      : 'Nobody was found who is not placed already.');

function GroupRow({ group, offer }: { readonly group: OfferedGroup; readonly offer: PeopleOffer }) {
  const { letter, people, colour } = group;
  const then = (act: () => void) => () => {
    focusNext(
      `[data-testid="offer"] [data-group]:not([data-group="${letter}"]) button`,
      '[data-act="offer-people"]',
    );
    act();
  };
  return (
    <p className="pins-acts offer-group" data-group={letter}>
      <span className="offer-dress">
        <i className="b">{letter}</i> <span className="offer-colour" style={{ background: colour }} />{' '}
        {people.length}
      </span>
      <Act label={`All of dress ${letter} are ours`} onPress={then(() => offer.take(people, 'us'))}>
        All ours
      </Act>
      <Act label={`All of dress ${letter} are theirs`} onPress={then(() => offer.take(people, 'them'))}>
        All theirs
      </Act>
      <Act
        label={`All of dress ${letter} are officials: leave them out`}
        onPress={then(() => offer.leaveOut(people))}
      >
        Officials: leave out
      </Act>
    </p>
  );
}

/** Nobody whose dress does not tell goes with the rest of a dress. */
function NotClear({ offer }: { readonly offer: PeopleOffer }) {
  const people = offer.offered.filter(one => one.group === null);
  if (people.length === 0) return null;
  return (
    <p className="pins-acts" data-testid="dress-not-clear">
      <span className="offer-dress">
        <i className="b">?</i> {people.length}
      </span>
      <span className="q2">
        What {people.length === 1 ? 'this one wears is' : 'these wear is'} not clear: take one by one.
      </span>
    </p>
  );
}

/** For those a dress does not tell, and for fingers too broad for the rings. */
function OneByOne({ offer }: { readonly offer: PeopleOffer }) {
  const { offered, chosen } = offer;
  const next = offered[(chosen ? offered.indexOf(chosen) + 1 : 0) % offered.length]!;
  const then = (act: () => void) => () => {
    focusNext('[data-testid="offer"] [data-group] button', '[data-act="offer-people"]');
    act();
    offer.choose(offered.length > 1 ? next.id : undefined);
  };
  return (
    <p className="pins-acts">
      <Act onPress={() => offer.choose(next.id)}>{chosen ? 'Next one' : 'One by one'}</Act>
      {chosen && (
        <>
          <span className="q2">
            this one, <i className="b">{letterOf(chosen.group)}</i>, is
          </span>
          <Act onPress={then(() => offer.take([chosen], 'us'))}>Ours</Act>
          <Act onPress={then(() => offer.take([chosen], 'them'))}>Theirs</Act>
          <Act onPress={then(() => offer.leaveOut([chosen]))}>Nobody we need</Act>
        </>
      )}
    </p>
  );
}
