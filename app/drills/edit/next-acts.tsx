import type { DrillAct, DrillSpot } from '@icewright/book';
import type { SpotId } from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { newActId, spotsOf } from '../route-writes.ts';
import type { Hand } from '../use-hand.ts';
import type { Aim } from './aim.ts';
import { newAct, newActWrite } from './new-act.ts';
import { pickedAct, type Selection } from './selection.ts';

interface Next {
  readonly kind: DrillAct['kind'];
  readonly said: string;
  readonly needsOther?: true;
}

/** What comes next for a spot, as it is said after its role: in the order a coach thinks of them. */
const USUAL: readonly Next[] = [
  { kind: 'skate', said: 'skates' },
  { kind: 'carry', said: 'carries' },
  { kind: 'pass', said: 'passes', needsOther: true },
  { kind: 'shoot', said: 'shoots' },
  { kind: 'hold', said: 'holds' },
  { kind: 'chase', said: 'chases', needsOther: true },
  { kind: 'gap', said: 'keeps a gap', needsOther: true },
];

const OTHERS: readonly Next[] = [
  { kind: 'pickUp', said: 'picks a puck up' },
  { kind: 'leave', said: 'leaves the puck' },
  { kind: 'steal', said: 'goes for the puck', needsOther: true },
  { kind: 'screen', said: 'stands in the lane', needsOther: true },
  { kind: 'stop', said: 'stops' },
  { kind: 'turn', said: 'turns tight' },
  { kind: 'pivot', said: 'pivots' },
  { kind: 'face', said: 'faces the puck' },
];

/** The line of words that adds an act to who is selected; the rarer ones when asked for. */
export function NextActs(props: {
  readonly hand: Hand;
  readonly spotId: SpotId;
  readonly spot: DrillSpot;
  readonly onSelect: (selection: Selection) => void;
  readonly onAim: (aim: Aim) => void;
}) {
  const { hand, spotId, spot } = props;
  const { drill } = hand;
  const [showsAll, setShowsAll] = useState(false);
  const isAlone = spotsOf(drill).length < 2;
  const add = (kind: DrillAct['kind']) => {
    const act = newAct(drill, spotId, kind);
    if (act === null) return;
    const id = newActId();
    hand.keep([newActWrite(spotId, id, act)]);
    props.onSelect([pickedAct(spotId, id)]);
    props.onAim({ spotId, actId: id });
  };
  return (
    <fieldset className="add-acts next-acts">
      <legend>then {spot.role}</legend>
      {(showsAll ? [...USUAL, ...OTHERS] : USUAL).map(({ kind, said, needsOther }) => (
        <Act
          key={kind}
          notNow={needsOther && isAlone ? 'there is nobody else on the ice' : undefined}
          onPress={() => add(kind)}
        >
          {said}
        </Act>
      ))}
      <Act bare opens={showsAll} onPress={() => setShowsAll(!showsAll)}>
        {showsAll ? 'Fewer' : 'More'}
      </Act>
    </fieldset>
  );
}
