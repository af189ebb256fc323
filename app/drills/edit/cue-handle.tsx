import { type ActId, LINE_IDS, type SpotId } from '@icewright/engine';
import { besideM } from '../finger-room.ts';
import type { HandleProps } from '../handle-props.ts';
import { spotsOf } from '../route-writes.ts';
import { cueDropped, cuesOfSpot } from './cue-dropped.ts';
import { Grab } from './grab.tsx';
import { placeBefore } from './held.ts';

/**
 * The lozenge of the act that is open, to be pulled to what shall start it: another spot, a line, a place. By key, arrows go
 * through all that could, Enter keeps one.
 */
export function CueHandle(props: HandleProps & { readonly spotId: SpotId; readonly actId: ActId }) {
  const { hand, rink, run, spotId, actId } = props;
  const startM = placeBefore(hand.kept, { spotId, actId });
  const spot = hand.kept.spots[spotId];
  if (startM === null || spot === undefined) return null;
  // Beside the start of the act, away from the handle that pulls routes.
  const atM =
    hand.shown?.lineFromM === undefined ? { xM: startM.xM - besideM(), yM: startM.yM } : hand.shown.atM;
  // Every spot that could and every line, as one would point at them.
  const places = [
    ...spotsOf(hand.kept).flatMap(([id, each]) => (cuesOfSpot(hand.kept, id).length > 0 ? [each.atM] : [])),
    ...LINE_IDS.map(line => ({ xM: rink.lines[line].centreXM, yM: 4.5 })),
  ];
  const step = (by: number) => {
    const shown =
      hand.shown?.lineFromM === undefined ? -1 : places.findIndex(place => isNear(place, hand.shown!.atM));
    const next =
      places[((((shown < 0 && by < 0 ? 0 : shown) + by) % places.length) + places.length) % places.length];
    if (next === undefined) return;
    const dropped = cueDropped({ drill: hand.kept, rink, run, spotId, actId, atM: next });
    hand.hold(
      dropped.cue === null ? [] : [{ path: ['spots', spotId, 'acts', actId, 'cue'], value: dropped.cue }],
      {
        atM: dropped.atM,
        ghostsM: [],
        snap: null,
        refusal: dropped.cue === null ? { said: dropped.said, atM: [] } : null,
        words: dropped.said,
        lineFromM: startM,
      },
    );
    props.onSaid(`${spot.role} starts ${dropped.said}. Enter keeps it.`);
  };
  return (
    <Grab
      className="handle cue-handle"
      name={`What starts this act of ${spot.role}`}
      atM={atM}
      radiusM={0.75}
      onTake={event => props.onTake({ kind: 'cue', spotId, actId }, event, atM)}
      onKey={event => {
        if (event.key === 'Enter') {
          const wentBack = hand.letGo();
          props.onSaid(wentBack ?? '');
        } else if (event.key === 'ArrowRight' || event.key === 'ArrowDown') step(1);
        else if (event.key === 'ArrowLeft' || event.key === 'ArrowUp') step(-1);
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
    >
      <path className="lozenge" d="M0 -.72L.72 0L0 .72L-.72 0Z" />
    </Grab>
  );
}

const isNear = (a: { readonly xM: number; readonly yM: number }, b: typeof a): boolean =>
  Math.hypot(a.xM - b.xM, a.yM - b.yM) < 0.05;
