import type { ActId, IcePoint, SpotId } from '@icewright/engine';
import type { KeyboardEvent } from 'react';
import type { Grip } from '../grip.ts';
import type { HandleProps } from '../handle-props.ts';
import { onIce } from '../on-ice.ts';
import { actsOf, isRoute, throughAdded, throughMoved, throughRemoved } from '../route-writes.ts';
import { doublePressed } from './double-press.ts';
import { Grab, isTakeOff, nudged } from './grab.tsx';
import { PullHandle } from './pull-handle.tsx';
import { pickedAct, pickedSpot } from './selection.ts';
import { focusOnThing } from './things-in-focus.ts';

/** Two points nearer than this leave no room to take the line between them. */
const ROOM_M = 3;

/** The points of the routes of one spot, the lines between them, and what a new route is pulled out by. */
export function RouteHandles(props: HandleProps & { readonly spotId: SpotId }) {
  const { hand, spotId, isUpright, rink, onTake } = props;
  const { drill } = hand;
  const spot = drill.spots[spotId];
  if (spot === undefined || spot.kind === 'goalie') return null;
  const choose = (actId: ActId) => props.onSelect([pickedAct(spotId, actId)]);
  const nudge = (
    event: KeyboardEvent,
    fromM: IcePoint,
    writes: (toM: IcePoint) => Parameters<typeof hand.keep>[0],
  ) => nudged(event, isUpright, fromM, toM => hand.keep(writes(onIce(rink, toM))));
  const split = (grip: Grip, atM: IcePoint) =>
    doublePressed({ hand, grip, atM, onSelect: props.onSelect, onSaid: props.onSaid });
  let before = spot.atM;
  const handles = actsOf(spot).flatMap(([actId, act]) => {
    if (!isRoute(act)) return [];
    return act.throughM.flatMap((atM, index) => {
      const middleM = { xM: (before.xM + atM.xM) / 2, yM: (before.yM + atM.yM) / 2 };
      const hasRoom = Math.hypot(atM.xM - before.xM, atM.yM - before.yM) >= ROOM_M;
      before = atM;
      const point = (
        <Grab
          // biome-ignore lint/suspicious/noArrayIndexKey: a point of a route is nothing but its place in it
          key={`${actId}.${index}`}
          className="handle"
          name={`${spot.role}, point ${index + 1} of the route`}
          atM={atM}
          radiusM={0.7}
          shownM={0.36}
          onTake={event => {
            choose(actId);
            onTake({ kind: 'through', spotId, actId, index }, event, atM);
          }}
          onKey={event => {
            if (isTakeOff(event)) {
              event.stopPropagation();
              // The next point takes its place under the keys; after the last one who skates the route has them.
              if (index === act.throughM.length - 1) focusOnThing(pickedSpot(spotId));
              hand.keep(throughRemoved(drill, spotId, actId, index));
            } else if (event.key === 'Enter') choose(actId);
            else if (isSplit(event)) split({ kind: 'through', spotId, actId, index }, atM);
            else nudge(event, atM, toM => throughMoved(drill, spotId, actId, index, toM));
          }}
        />
      );
      if (!hasRoom) return [point];
      const bend = (
        <Grab
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          key={`${actId}.${index}.bend`}
          className="handle bend"
          name={`${spot.role}, bend the route before point ${index + 1}`}
          atM={middleM}
          radiusM={0.7}
          shownM={0.2}
          onTake={event => {
            choose(actId);
            onTake({ kind: 'bend', spotId, actId, index }, event, middleM);
          }}
          onKey={event => {
            if (isSplit(event)) split({ kind: 'bend', spotId, actId, index }, middleM);
            else nudge(event, middleM, toM => throughAdded(drill, spotId, actId, index, toM));
          }}
        />
      );
      return [bend, point];
    });
  });
  return (
    <>
      <PullHandle {...props} spot={spot} />
      {/* Above it: the end of a route is moved, where both could be meant. */}
      {handles}
    </>
  );
}

function isSplit(event: KeyboardEvent): boolean {
  const isIt = event.key === 's' && !event.ctrlKey && !event.metaKey && !event.altKey;
  if (isIt) event.preventDefault();
  return isIt;
}
