import type { DrillSpot } from '@icewright/book';
import type { ActId, IcePoint, SpotId } from '@icewright/engine';
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { flushSync } from 'react-dom';
import { pullPlaceOf } from '../finger-room.ts';
import { newPull } from '../grip.ts';
import type { HandleProps } from '../handle-props.ts';
import { onIce } from '../on-ice.ts';
import { endOfRoutes, newActId, routePulled } from '../route-writes.ts';
import type { Hand } from '../use-hand.ts';
import { Grab, nudged } from './grab.tsx';

/** Up to the disc of the skater it is pulled out of, and no further: there it is she who is moved. */
const HIT_M = 0.75;

/** What a new route is pulled out by. By key: arrows pull its end along, and Enter, or going elsewhere, lets go of it. */
export function PullHandle(props: HandleProps & { readonly spotId: SpotId; readonly spot: DrillSpot }) {
  const { hand, spotId, spot, rink } = props;
  const endM = endOfRoutes(spot);
  const atM = pullPlaceOf(hand.drill, spotId, rink.area);
  const pull = usePullByKey(hand);
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Enter') pull.letGo();
    else if (isUndo(event) && pull.isHeld()) {
      event.preventDefault();
      event.stopPropagation();
      pull.putBack();
    } else
      nudged(event, props.isUpright, pull.atM() ?? endM, wantedM => {
        const toM = onIce(rink, wantedM);
        const writes = routePulled(hand.kept, spotId, toM, pull.actTo(toM), props.ownsPuckAtEnd(spotId));
        hand.hold(writes, { atM: toM, ghostsM: [], snap: null, refusal: null, words: '' });
      });
  };
  return (
    <>
      <g className="pull-line">
        <line x1={endM.xM} y1={-endM.yM} x2={atM.xM} y2={-atM.yM} />
      </g>
      <Grab
        className="handle pull"
        name={`Pull a route out of ${spot.role}`}
        atM={atM}
        radiusM={HIT_M}
        shownM={0.46}
        onTake={event => props.onTake(newPull(spotId), event, atM)}
        onKey={key}
        onBlur={pull.letGo}
      />
    </>
  );
}

/** One pull by many presses: the drill gets one point, and one step of undo, when the hand lets go. */
function usePullByKey(hand: Hand) {
  /** The act the pull makes, and where its end is: presses may come faster than pictures. */
  const pulled = useRef<{ readonly act: ActId; readonly toM: IcePoint } | null>(null);
  const latest = useRef(hand);
  latest.current = hand;
  const end = (how: 'letGo' | 'putBack') => {
    if (pulled.current === null) return;
    pulled.current = null;
    latest.current[how]();
  };
  const over = useRef(end);
  over.current = end;
  useEffect(() => {
    // A pointer that comes down finds the drill as it stands, with the pull in it.
    const down = () => pulled.current !== null && flushSync(() => over.current('letGo'));
    window.addEventListener('pointerdown', down, { capture: true });
    return () => {
      window.removeEventListener('pointerdown', down, { capture: true });
      over.current('letGo');
    };
  }, []);
  return {
    actTo: (toM: IcePoint): ActId => {
      const act = pulled.current?.act ?? newActId();
      pulled.current = { act, toM };
      return act;
    },
    atM: () => pulled.current?.toM,
    isHeld: () => pulled.current !== null,
    letGo: () => end('letGo'),
    putBack: () => end('putBack'),
  };
}

const isUndo = (event: KeyboardEvent): boolean =>
  event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey);
