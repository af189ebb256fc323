import type { IcePoint, Id } from '@icewright/engine';
import type { KeyboardEvent, PointerEvent } from 'react';
import { CueHandle } from './edit/cue-handle.tsx';
import { Grab, isTakeOff, nudged, Places } from './edit/grab.tsx';
import { moved } from './edit/laid-elsewhere.ts';
import { refusalOf } from './edit/refusal.ts';
import { removed } from './edit/removed.ts';
import { RouteHandles } from './edit/route-handles.tsx';
import { isPicked, leadOf, type Picked, pressed, type Selection, spotsPicked } from './edit/selection.ts';
import { focusBeyond } from './edit/things-in-focus.ts';
import { placesToTake } from './finger-room.ts';
import { GameCorners } from './games/game-corners.tsx';
import { gameGrabM } from './games/game-writes.ts';
import type { HandleProps } from './handle-props.ts';
import { spotsOf } from './route-writes.ts';
import { afterWrites } from './write.ts';

/** What a finger, a mouse or a key can take hold of, above the drawing. */
export function BoardHandles(props: HandleProps) {
  const { hand, selection, onSelect, onTake } = props;
  const { drill } = hand;
  const { spotId, actId } = leadOf(selection);

  const withOthers = (picked: Picked): Selection => (isPicked(selection, picked) ? selection : [picked]);
  const take = (picked: Picked, event: PointerEvent, atM: IcePoint) => {
    // The act that is open of a spot stays open while the spot is dragged.
    const isOpen = picked.kind === 'spot' && actId !== null && spotId === picked.spot && !event.shiftKey;
    const next = isOpen ? [picked] : pressed(selection, picked, event.shiftKey);
    if (!isOpen) onSelect(next);
    onTake({ kind: 'things', picked, selection: next, fromM: atM }, event, atM);
  };
  const key = (picked: Picked, event: KeyboardEvent, atM: IcePoint) => {
    if (event.key === 'Enter') onSelect(pressed(selection, picked, event.shiftKey));
    else if (isTakeOff(event)) {
      event.stopPropagation();
      focusBeyond(withOthers(picked));
      hand.keep(removed(drill, withOthers(picked)));
    } else
      nudged(event, props.isUpright, atM, (toM, stepM) => {
        const writes = moved(drill, withOthers(picked), stepM);
        const refusal = refusalOf(
          afterWrites(drill, writes),
          props.rink,
          spotsPicked(withOthers(picked)),
          toM,
        );
        if (refusal === null) hand.keep(writes);
        else props.onSaid(refusal.said);
      });
  };
  const grab = (picked: Picked, name: string, atM: IcePoint, radiusM: number) => (
    <Grab
      key={JSON.stringify(picked)}
      name={name}
      atM={atM}
      radiusM={radiusM}
      isPicked={isPicked(selection, picked) || (picked.kind === 'spot' && picked.spot === spotId)}
      thing={JSON.stringify(picked)}
      onTake={event => take(picked, event, atM)}
      onKey={event => key(picked, event, atM)}
    />
  );

  return (
    <Places value={placesToTake(drill, spotId, props.rink.area)}>
      {entriesOf(drill.games).map(([game, { usCount, themCount, fromM, toM }]) =>
        grab(
          { kind: 'game', game: game as Id<'game'> },
          `Small game, ${usCount} on ${themCount}`,
          gameGrabM({ fromM, toM }, props.rink, props.isUpright),
          0.9,
        ),
      )}
      {entriesOf(drill.pucks).map(([puck, { count, atM }]) =>
        grab({ kind: 'puck', puck: puck as Id<'puck'> }, count > 1 ? `Pucks, ${count}` : 'Puck', atM, 0.8),
      )}
      {entriesOf(drill.gear).map(([gear, { kind, atM }]) =>
        grab({ kind: 'gear', gear: gear as Id<'gear'> }, kind, atM, 0.8),
      )}
      {spotsOf(drill).map(([spot, { role, side, atM }]) =>
        grab({ kind: 'spot', spot }, `${role}, ${side === 'us' ? 'one of us' : 'one of them'}`, atM, 1.15),
      )}
      <GameCorners {...props} />
      {spotId !== null && <RouteHandles {...props} spotId={spotId} />}
      {spotId !== null && actId !== null && <CueHandle {...props} spotId={spotId} actId={actId} />}
    </Places>
  );
}

const entriesOf = <Part,>(list: Readonly<Record<string, Part>>): [string, Part][] => Object.entries(list);
