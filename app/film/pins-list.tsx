import { Act } from '../parts/act.tsx';
import { lengthSaid, numberSaid } from '../parts/figures.ts';
import type { Desk } from './freeze-desk.ts';
import { type FreezeView, isAnyPin } from './freeze-view.ts';
import { HeldWords } from './held-words.tsx';
import { LandmarkChoice, LandmarkSelect } from './landmark-choice.tsx';
import { PinsOfferAct, PinsOfferPanel } from './offer/pins-offer-panel.tsx';
import type { PinsOfferHere } from './offer/use-pins-offer.ts';
import { refusedPinsWords } from './refused-pins.ts';

/** The pins with how far each is off, which one disagrees, and how well all of them hold the picture. */
export function PinsList({
  desk,
  view,
  offer,
  isFrozen,
  isNamedAtPicture,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly offer: PinsOfferHere;
  readonly isFrozen: boolean;
  /** The mark of the next pin is named elsewhere. */
  readonly isNamedAtPicture: boolean;
}) {
  const { fitted, held, pins } = view;
  const counted = pins.filter(pin => !pin.leftOut).length;
  const refused = fitted?.kind === 'refused' && !view.isCarried ? refusedPinsWords(fitted) : undefined;
  return (
    <section className="sec pins">
      <h2>
        Pins{' '}
        {held && (
          <span className="q3" data-testid="held">
            {view.isCarried
              ? `carried from frame ${view.freeze.carried?.from.join(' and ')}, they hold`
              : `${counted} of them hold`}{' '}
            {view.fit?.disagreement ? (
              <>
                <s>
                  <HeldWords held={held} lengths={view.lengths} />
                </s>
                , not while they disagree
              </>
            ) : (
              <HeldWords held={held} lengths={view.lengths} />
            )}
          </span>
        )}
      </h2>
      {pins.length === 0 && !view.isCarried && (
        <p className="note">
          Pins tie the picture to the ice: name a mark that you see, then press its place in the picture. Four
          hold it; eight or ten, spread out, hold it well.
        </p>
      )}
      <p className="pins-acts">
        <PinsOfferAct offer={offer} isFrozen={isFrozen} />
      </p>
      <PinsOfferPanel offer={offer} view={view} isFrozen={isFrozen} />
      <ol>
        {pins.map(pin => (
          <li key={pin.id} className={pin.disagrees ? 'bad' : pin.leftOut ? 'out' : ''}>
            <span className="pn">{pin.number}</span>
            <button
              type="button"
              className="quiet pin-name"
              aria-pressed={desk.chosen === pin.id}
              onClick={() => desk.choose(pin.id)}
            >
              {pin.words}
            </button>
            <span className="px">
              {pin.leftOut
                ? 'not counted'
                : pin.residualPx === undefined
                  ? ''
                  : `${numberSaid(pin.residualPx)} px`}
            </span>
          </li>
        ))}
      </ol>
      {refused && (
        <p className="note refusal" role="status" data-testid="refused">
          <span className="warm b">{refused.says}</span> {refused.todo}
        </p>
      )}
      <Disagreement desk={desk} view={view} />
      <ChosenPin desk={desk} view={view} />
      {desk.tool.kind === 'pin' ? (
        !isNamedAtPicture && <LandmarkChoice desk={desk} view={view} />
      ) : (
        <p className="pins-acts">
          <Act onPress={() => desk.setTool({ kind: 'pin' })}>Put down pins</Act>
        </p>
      )}
    </section>
  );
}

function Disagreement({ desk, view }: { readonly desk: Desk; readonly view: FreezeView }) {
  const wrong = view.fit?.disagreement;
  if (!wrong) return null;
  if (wrong.kind === 'several') {
    return (
      <p className="note" role="status">
        <span className="warm b">The pins do not agree,</span> and no single one explains it: several are
        wrong, the lens bends, or this is another sheet than the game's.
      </p>
    );
  }
  if (isAnyPin(view.freeze, view.fit)) {
    return (
      <p className="note" role="status" data-testid="disagrees">
        <span className="warm b">These pins do not agree,</span> and so few cannot tell which of them is
        wrong. Put down one more, away from the others, on a mark that you see well: then it can be told.
      </p>
    );
  }
  const ids = wrong.kind === 'onePin' ? [wrong.pin] : wrong.pins;
  const pins = view.pins.filter(pin => ids.includes(pin.id));
  return (
    <p className="note" role="status" data-testid="disagrees">
      {wrong.kind === 'onePin' ? (
        <>
          <span className="warm b">Pin {pins[0]?.number} disagrees</span> with the others by{' '}
          {numberSaid(wrong.byPx, 0)} px
          {wrong.byM === undefined ? '' : `, ${lengthSaid(wrong.byM, view.lengths)} on the ice`}.
        </>
      ) : (
        <span className="warm b">One of the pins {pins.map(pin => pin.number).join(', ')} is wrong.</span>
      )}{' '}
      {pins.map(pin => (
        <span key={pin.id}>
          <button type="button" className="quiet" onClick={() => desk.choose(pin.id)}>
            Look at {pins.length > 1 ? pin.number : 'it'}
          </button>{' '}
          or{' '}
          <button type="button" className="quiet" onClick={() => desk.write.leaveOut(pin.id, true)}>
            do not count {pins.length > 1 ? pin.number : 'it'}
          </button>
          .{' '}
        </span>
      ))}
    </p>
  );
}

function ChosenPin({ desk, view }: { readonly desk: Desk; readonly view: FreezeView }) {
  const pin = view.pins.find(one => one.id === desk.chosen);
  if (!pin) return null;
  return (
    <p className="pins-acts">
      <span className="q2">Pin {pin.number}</span>
      <LandmarkSelect
        label={`Which mark is pin ${pin.number}?`}
        value={pin.landmark}
        view={view}
        onChoose={id => desk.write.renamePin(pin.id, id)}
      />
      <Act onPress={() => desk.write.leaveOut(pin.id, !pin.leftOut)}>
        {pin.leftOut ? 'Count it again' : 'Do not count it'}
      </Act>
      <Act onPress={() => desk.write.remove({ kind: 'pin', id: pin.id })}>Take out</Act>
    </p>
  );
}
