import type { Drill } from '@icewright/book';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { useIsCoarse } from '../../parts/use-is-narrow.ts';
import type { Hand } from '../use-hand.ts';
import { type Aim, aimSaid } from './aim.ts';
import { CueLine } from './cue-line.tsx';
import { NextActs } from './next-acts.tsx';
import { leadOf, type Selection } from './selection.ts';
import type { Arrange } from './use-arrange.ts';
import './hand.css';

/** Below the board: what was done and why not, what comes next for who is selected, and what can be done with all that is. */
export function HandLine(props: {
  readonly hand: Hand;
  readonly selection: Selection;
  readonly onSelect: (selection: Selection) => void;
  readonly arrange: Arrange;
  readonly aim: Aim | null;
  readonly onAim: (aim: Aim) => void;
  readonly said: string;
}) {
  const { hand, selection, arrange } = props;
  const { drill } = hand;
  const { spotId, actId } = leadOf(selection);
  const isOne = selection.length === 1;
  const isCoarse = useIsCoarse();
  const aimed = props.aim === null ? null : aimSaid(drill, props.aim);
  const spot = spotId === null ? undefined : drill.spots[spotId];
  return (
    <div className="hand-line">
      <p className="q3 hand-said" aria-live="polite">
        {hand.shown === null ? props.said || aimed || helpFor(drill, selection, isCoarse) : ''}
      </p>
      {selection.length === 0 && (
        <p className="add-acts">
          <Act onPress={arrange.all}>Select everything</Act>
          <Act onPress={arrange.paste}>Paste</Act>
        </p>
      )}
      {isOne && spot !== undefined && spotId !== null && (
        <NextActs hand={hand} spotId={spotId} spot={spot} onSelect={props.onSelect} onAim={props.onAim} />
      )}
      {isOne && spotId !== null && actId !== null && (
        <CueLine hand={hand} spotId={spotId} actId={actId} arrange={arrange} />
      )}
      {selection.length > 0 && actId === null && (
        <fieldset className="add-acts">
          <legend>{selectedSaid(drill, selection)}</legend>
          <Act onPress={() => arrange.mirror('along')}>Mirror</Act>
          <Act onPress={() => arrange.mirror('across')}>Mirror over the red line</Act>
          <Act onPress={arrange.halfTurn}>Half turn</Act>
          <Act onPress={arrange.toOtherEnd}>Copy to the other end</Act>
          <Act onPress={arrange.copy}>Copy</Act>
          <Act onPress={arrange.paste}>Paste</Act>
          <Act bare onPress={arrange.takeOff}>
            Take off the ice
          </Act>
        </fieldset>
      )}
    </div>
  );
}

function selectedSaid(drill: Drill, selection: Selection): string {
  const [only] = selection;
  if (selection.length === 1 && only?.kind === 'spot') return drill.spots[only.spot]?.role ?? '';
  return `${countSaid(selection.length, 'thing')} selected:`;
}

/** What can be done next, for a finger or for a mouse and keys. */
function helpFor(drill: Drill, selection: Selection, isCoarse: boolean): string {
  if (Object.keys(drill.spots).length === 0) return '';
  if (isCoarse) return helpForFingers(selection);
  if (selection.length === 0)
    return 'Press a skater, or drag over the ice for several. By key: n goes to the next, ? lists all keys.';
  if (leadOf(selection).actId !== null)
    return 'Drag the lozenge to what starts this act. A double press on a route splits it, or s on a point.';
  return 'Arrows move 0.1 m, with Shift 1 m. Shift and a press adds one more. Alt while dragging: nothing draws the hand.';
}

function helpForFingers(selection: Selection): string {
  if (selection.length === 0) return 'Press a skater. Rest a finger on the ice and drag for several.';
  if (leadOf(selection).actId !== null)
    return 'Drag the lozenge to what starts this act. Two presses on a route split it.';
  return 'Drag to move. Pull the full round out for a route. Rest a finger on another to select both.';
}
