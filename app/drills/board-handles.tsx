import type { IcePoint, SpotId } from '@icewright/engine';
import { createContext, type KeyboardEvent, type PointerEvent, useContext } from 'react';
import { arrowStep, plus } from './board-pointer.ts';
import { PULL_M, placesToTake, reachOf } from './finger-room.ts';
import { type Chosen, type Grip, newPull } from './grip.ts';
import { spotRemoved } from './new-things.ts';
import {
  actsOf,
  endOfRoutes,
  isRoute,
  newActId,
  routePulled,
  spotMoved,
  spotsOf,
  throughAdded,
  throughMoved,
  throughRemoved,
} from './route-writes.ts';
import type { Hand } from './use-hand.ts';
import type { Write } from './write.ts';

/** What stands on the board, where a finger may be what takes it. */
const Places = createContext<readonly IcePoint[] | null>(null);

type Take = (grip: Grip, event: PointerEvent, placeM: IcePoint) => void;

/** What a finger, a mouse or a key can take hold of, above the drawing. Every one of them is a button with a name. */
export function BoardHandles(props: {
  readonly hand: Hand;
  readonly chosen: Chosen;
  readonly isUpright: boolean;
  readonly onChoose: (chosen: Chosen) => void;
  readonly onTake: Take;
  readonly ownsPuckAtEnd: (spotId: SpotId) => boolean;
}) {
  const { hand, chosen, onChoose, onTake } = props;
  const { drill } = hand;
  const nudge = (event: KeyboardEvent, fromM: IcePoint, writes: (toM: IcePoint) => Write[]) => {
    const step = arrowStep(event, props.isUpright);
    if (step === null) return false;
    event.preventDefault();
    event.stopPropagation();
    hand.keep(writes(plus(fromM, step)));
    return true;
  };
  const isGone = (event: KeyboardEvent) => event.key === 'Delete' || event.key === 'Backspace';

  return (
    <Places value={placesToTake(drill, chosen.spotId)}>
      {Object.entries(drill.pucks).map(([puckId, puck]) => (
        <Grab
          key={puckId}
          name={puck.count > 1 ? `Pucks, ${puck.count}` : 'Puck'}
          atM={puck.atM}
          radiusM={0.8}
          onTake={event => onTake({ kind: 'puck', puckId }, event, puck.atM)}
          onKey={event => {
            if (isGone(event)) hand.keep([{ path: ['pucks', puckId], value: undefined }]);
            else nudge(event, puck.atM, toM => [{ path: ['pucks', puckId, 'atM'], value: toM }]);
          }}
        />
      ))}
      {Object.entries(drill.gear).map(([gearId, gear]) => (
        <Grab
          key={gearId}
          name={gear.kind}
          atM={gear.atM}
          radiusM={0.8}
          onTake={event => onTake({ kind: 'gear', gearId }, event, gear.atM)}
          onKey={event => {
            if (isGone(event)) hand.keep([{ path: ['gear', gearId], value: undefined }]);
            else nudge(event, gear.atM, toM => [{ path: ['gear', gearId, 'atM'], value: toM }]);
          }}
        />
      ))}
      {spotsOf(drill).map(([spotId, spot]) => (
        <Grab
          key={spotId}
          name={`${spot.role}, ${spot.side === 'us' ? 'one of us' : 'one of them'}`}
          atM={spot.atM}
          radiusM={1.15}
          isChosen={spotId === chosen.spotId}
          onTake={event => {
            onChoose({ spotId, actId: spotId === chosen.spotId ? chosen.actId : null });
            onTake({ kind: 'spot', spotId }, event, spot.atM);
          }}
          onKey={event => {
            if (event.key === 'Enter') onChoose({ spotId, actId: null });
            else if (isGone(event)) hand.keep(spotRemoved(drill, spotId));
            else nudge(event, spot.atM, toM => spotMoved(drill, spotId, toM));
          }}
        />
      ))}
      {chosen.spotId !== null && (
        <RouteHandles {...props} spotId={chosen.spotId} nudge={nudge} isGone={isGone} />
      )}
    </Places>
  );
}

function RouteHandles(props: {
  readonly hand: Hand;
  readonly spotId: SpotId;
  readonly chosen: Chosen;
  readonly isUpright: boolean;
  readonly onChoose: (chosen: Chosen) => void;
  readonly onTake: Take;
  readonly nudge: (event: KeyboardEvent, fromM: IcePoint, writes: (toM: IcePoint) => Write[]) => boolean;
  readonly isGone: (event: KeyboardEvent) => boolean;
  readonly ownsPuckAtEnd: (spotId: SpotId) => boolean;
}) {
  const { hand, spotId, onTake, nudge, isGone } = props;
  const { drill } = hand;
  const spot = drill.spots[spotId];
  if (spot === undefined || spot.kind === 'goalie') return null;
  let before = spot.atM;
  const handles = actsOf(spot).flatMap(([actId, act]) => {
    if (!isRoute(act)) return [];
    return act.throughM.flatMap((atM, index) => {
      const middleM = { xM: (before.xM + atM.xM) / 2, yM: (before.yM + atM.yM) / 2 };
      const awayM = Math.hypot(atM.xM - before.xM, atM.yM - before.yM);
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
            props.onChoose({ spotId, actId });
            onTake({ kind: 'through', spotId, actId, index }, event, atM);
          }}
          onKey={event => {
            if (isGone(event)) hand.keep(throughRemoved(drill, spotId, actId, index));
            else nudge(event, atM, toM => throughMoved(drill, spotId, actId, index, toM));
          }}
        />
      );
      if (awayM < 3) return [point];
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
            props.onChoose({ spotId, actId });
            onTake({ kind: 'bend', spotId, actId, index }, event, middleM);
          }}
          onKey={event => {
            nudge(event, middleM, toM => throughAdded(drill, spotId, actId, index, toM));
          }}
        />
      );
      return [bend, point];
    });
  });
  const endM = endOfRoutes(spot);
  const pullM = { xM: endM.xM, yM: endM.yM - PULL_M };
  return (
    <>
      {handles}
      <g className="pull-line">
        <line x1={endM.xM} y1={-endM.yM} x2={pullM.xM} y2={-pullM.yM} />
      </g>
      <Grab
        className="handle pull"
        name={`Pull a route out of ${spot.role}`}
        atM={pullM}
        radiusM={0.9}
        shownM={0.46}
        onTake={event => onTake(newPull(spotId), event, pullM)}
        onKey={event => {
          nudge(event, endM, toM => routePulled(drill, spotId, toM, newActId(), props.ownsPuckAtEnd(spotId)));
        }}
      />
    </>
  );
}

function Grab(props: {
  readonly name: string;
  readonly atM: IcePoint;
  readonly radiusM: number;
  readonly shownM?: number;
  readonly className?: string;
  readonly isChosen?: boolean;
  readonly onTake: (event: PointerEvent) => void;
  readonly onKey: (event: KeyboardEvent) => void;
}) {
  const places = useContext(Places);
  const hitM = places === null ? props.radiusM : reachOf(props.atM, props.radiusM, places);
  const classes = ['grab', props.className, props.isChosen && 'is-chosen'];
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button element cannot stand in a drawing
    <g
      role="button"
      tabIndex={0}
      aria-label={props.name}
      aria-pressed={props.isChosen}
      className={classes.filter(Boolean).join(' ')}
      transform={`translate(${props.atM.xM} ${-props.atM.yM})`}
      onPointerDown={props.onTake}
      onKeyDown={props.onKey}
    >
      <circle className="hit" r={hitM} />
      {props.shownM !== undefined && <circle className="shown" r={props.shownM} />}
      <circle className="ring" r={props.radiusM + 0.2} />
    </g>
  );
}
