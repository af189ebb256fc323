import { cameraPlaceOf, type EndsKnown } from '@icewright/engine';
import { useMemo } from 'react';
import { Act } from '../../parts/act.tsx';
import { numberSaid } from '../../parts/figures.ts';
import { focusNext } from '../focus-next.ts';
import type { FreezeView } from '../freeze-view.ts';
import { HeldWords } from '../held-words.tsx';
import { LookAct } from '../look-act.tsx';
import { heldWith, turnedFit } from './offered-here.ts';
import type { PinsOfferHere } from './use-pins-offer.ts';
import './pins-offer.css';

/** Asks for pins found in the frozen picture; takes what was asked away again. */
export function PinsOfferAct({
  offer,
  isFrozen,
}: {
  readonly offer: PinsOfferHere;
  readonly isFrozen: boolean;
}) {
  const notNow = isFrozen ? undefined : "go back to the freeze's own picture first";
  return (
    <LookAct
      name="offer-pins"
      keys="Shift+p"
      sign="⇧P"
      says="offer pins for the freeze"
      notNow={notNow}
      offer={offer}
      words={{
        none: 'Offer pins',
        looked: offer.refused === undefined ? 'Put the pins offered away' : 'Put this away',
      }}
    />
  );
}

/** The candidates, how well they would hold the picture, which pins disagree, and which end is which. Nothing is accepted by itself. */
export function PinsOfferPanel({
  offer,
  view,
  isFrozen,
}: {
  readonly offer: PinsOfferHere;
  readonly view: FreezeView;
  readonly isFrozen: boolean;
}) {
  if (offer.state === 'none') return null;
  if (offer.state === 'looking') {
    return (
      <p className="pins-acts" role="status">
        <span className="q2">Looking for lines, circles and spots</span>
        <progress max={1} value={offer.share} aria-label="Looked through" />
      </p>
    );
  }
  return (
    <div className="pins-offer" data-testid="pins-offer">
      {offer.refused === undefined ? (
        <Candidates offer={offer} view={view} />
      ) : (
        <p className="note" role="status" data-testid="no-pins-offered">
          <span className="b">No pins are offered.</span> {offer.refused}{' '}
          {offer.canLookAgain && (
            <Act
              notNow={isFrozen ? undefined : "go back to the freeze's own picture first"}
              onPress={() => {
                focusNext('[data-act="offer-pins"]');
                offer.again();
              }}
            >
              Look again from your pins
            </Act>
          )}
        </p>
      )}
    </div>
  );
}

function Candidates({ offer, view }: { readonly offer: PinsOfferHere; readonly view: FreezeView }) {
  const { adds, disagree } = offer.here;
  const { dropped } = offer;
  const wanted = useMemo(() => adds.filter(one => !dropped.has(one.landmark)), [adds, dropped]);
  const held = useMemo(() => heldWith(wanted, view), [wanted, view]);
  return (
    <>
      <p className="note" role="status">
        {adds.length > 0 ? (
          <>
            <b className="b">{adds.length} pins offered.</b> Do the broken lines lie on the paint, out to the
            edges of the picture? {held && <WouldHold held={held} view={view} />}
          </>
        ) : disagree.length > 0 ? (
          'Pins were found, but most of those that are here lie elsewhere: one of the two is wrong.'
        ) : (
          'Every pin that was found is here already.'
        )}
      </p>
      {disagree.length > 0 && (
        <p className="note" data-testid="offer-disagrees">
          <span className="warm b">
            {disagree.length === 1 ? 'Your pin' : 'Your pins'}{' '}
            {disagree.map(({ number }) => number).join(', ')} {disagree.length === 1 ? 'does' : 'do'} not go
            with what was found.
          </span>{' '}
          {disagree.map(({ words }) => words).join('; ')}.
        </p>
      )}
      {offer.offer && (
        <p className="note">
          <span className={offer.isTurned && offer.offer.ends !== 'open' ? 'warm' : ''}>
            {endsWords(offer, view.freeze.picture)}
          </span>{' '}
          <Act isOn={offer.isTurned} onPress={offer.turn}>
            Turn the ends round
          </Act>
        </p>
      )}
      {adds.length > 0 && (
        <>
          <p className="pins-acts">
            <Act
              notNow={wanted.length === 0 ? 'every one is left out' : undefined}
              onPress={() => {
                focusNext('[data-act="offer-people"]', '[data-act="offer-pins"]');
                offer.accept(wanted);
              }}
            >
              Accept {wanted.length === adds.length ? `all ${adds.length}` : `these ${wanted.length}`}
            </Act>
            <span className="q3">One step back takes them out again.</span>
          </p>
          <ol>
            {adds.map(one => {
              const isDropped = offer.dropped.has(one.landmark);
              return (
                <li key={one.landmark} className={isDropped ? 'out' : ''} data-landmark={one.landmark}>
                  <i className="est offer-name">{one.words}</i>
                  <span className="px">
                    <i className="est">± {numberSaid(one.sdPx)} px</i>
                  </span>
                  <Act
                    bare
                    label={`Accept ${one.words}`}
                    onPress={() => {
                      focusNext('[data-testid="pins-offer"] li button', '[data-act="offer-pins"]');
                      offer.accept([one]);
                    }}
                  >
                    Accept
                  </Act>
                  <Act bare isOn={isDropped} label={`Leave out ${one.words}`} onPress={() => offer.drop(one)}>
                    Leave out
                  </Act>
                </li>
              );
            })}
          </ol>
        </>
      )}
    </>
  );
}

function WouldHold({
  held,
  view: { lengths },
}: {
  readonly held: NonNullable<FreezeView['held']>;
  readonly view: FreezeView;
}) {
  return (
    <span data-testid="would-hold">
      Then they hold <HeldWords held={held} lengths={lengths} isOffered />.
    </span>
  );
}

/** How it is known which end is which, and what that makes of near and far: the map lies with the camera below its lower edge. */
const endsWords = (
  { offer, isTurned }: PinsOfferHere,
  { widthPx, heightPx }: FreezeView['freeze']['picture'],
) => {
  if (!offer) return '';
  const how = isTurned ? `You have turned the ends round${AGAINST[offer.ends] ?? ''}` : HOW_KNOWN[offer.ends];
  const fit = isTurned ? turnedFit(offer.fit) : offer.fit;
  const camera = cameraPlaceOf(fit.filmFromIce, { widthPx, heightPx });
  return camera !== null && camera.yM > 0
    ? `${how}: what is near in the picture is named far, and what is left right.`
    : `${how}: near, far, left and right are named as the camera sees them.`;
};

/** What a turn goes against, where something told the ends. */
const AGAINST: Partial<Record<EndsKnown, string>> = {
  refCrease: ', against the officials’ crease that was found in the picture',
  yourPins: ', against your pins',
  earlierPins: ', against the pictures of this film that were pinned before',
};

const HOW_KNOWN: Readonly<Record<EndsKnown, string>> = {
  yourPins: 'The ends are as your pins have them',
  earlierPins: 'The ends are as in pictures of this film that were pinned before',
  refCrease: 'The officials’ crease tells which side is which',
  open: 'A sheet looks the same from both sides',
};
