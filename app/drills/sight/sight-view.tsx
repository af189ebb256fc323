import type { Drill } from '@icewright/book';
import type { Lengths, Rink, Run, SpotId } from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { ChoiceField } from '../../parts/field.tsx';
import { spotsOf } from '../route-writes.ts';
import { type Eye, eyeOf, type Seat } from './seat.ts';
import { SightCanvas } from './sight-canvas.tsx';
import { SightWords } from './sight-words.tsx';

/** Degrees the head turns by key. */
const TURN_RAD = Math.PI / 24;
const STRAIGHT = { turnRad: 0, downRad: 0 };

export default function SightView(props: {
  readonly drill: Drill;
  readonly run: Run;
  readonly rink: Rink;
  readonly timeS: number;
  readonly chosen: SpotId | null;
  readonly lengths: Lengths;
}) {
  const { drill, run, rink, timeS } = props;
  const skaters = spotsOf(drill).filter(([id]) => run.tracks.some(track => track.spot === id));
  const first = props.chosen ?? skaters.find(([, spot]) => spot.kind === 'skater')?.[0] ?? skaters[0]?.[0];
  const [wanted, setWanted] = useState<Seat>(
    first === undefined ? { from: 'stand' } : { from: 'skater', spot: first, looks: 'ahead' },
  );
  const [head, setHead] = useState(STRAIGHT);
  const [aspect, setAspect] = useState(16 / 9);
  const isThere = wanted.from !== 'skater' || skaters.some(([id]) => id === wanted.spot);
  const seat: Seat = isThere ? wanted : { from: 'stand' };
  const sit = (next: Seat): void => {
    setWanted(next);
    setHead(STRAIGHT);
  };
  const sample = Math.max(0, Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz)));
  const straight = eyeOf(seat, rink, run, sample, drill.level);
  const eye: Eye = {
    ...straight,
    turnRad: straight.turnRad + head.turnRad,
    downRad: Math.max(-0.6, Math.min(1.2, straight.downRad + head.downRad)),
  };
  const self = seat.from === 'skater' ? seat.spot : null;
  return (
    <>
      <div className="sight-seats">
        {skaters.length > 0 && (
          <ChoiceField
            label="eyes of"
            value={seat.from === 'skater' ? (seat.spot as string) : ''}
            choices={[
              ...(seat.from === 'skater' ? [] : [{ value: '', said: 'nobody on the ice' }]),
              ...skaters.map(([id, spot]) => ({ value: id as string, said: spot.role })),
            ]}
            onChange={spot =>
              spot !== '' &&
              sit({
                from: 'skater',
                spot: spot as SpotId,
                looks: seat.from === 'skater' ? seat.looks : 'ahead',
              })
            }
          />
        )}
        {seat.from === 'skater' && (
          <>
            <Act isOn={seat.looks === 'ahead'} onPress={() => sit({ ...seat, looks: 'ahead' })}>
              looks ahead
            </Act>
            <Act isOn={seat.looks === 'puck'} onPress={() => sit({ ...seat, looks: 'puck' })}>
              looks at the puck
            </Act>
          </>
        )}
        <Act isOn={seat.from === 'bench'} onPress={() => sit({ from: 'bench' })}>
          from the bench
        </Act>
        <Act isOn={seat.from === 'stand'} onPress={() => sit({ from: 'stand' })}>
          from the stand
        </Act>
      </div>
      <SightCanvas
        drill={drill}
        rink={rink}
        run={run}
        sample={sample}
        eye={eye}
        hidden={self}
        onAspect={setAspect}
        onTurn={(turns, downs) =>
          setHead(({ turnRad, downRad }) => ({
            turnRad: turnRad + turns * TURN_RAD,
            downRad: Math.max(-1, Math.min(1, downRad + downs * TURN_RAD)),
          }))
        }
        onStraight={() => setHead(STRAIGHT)}
      />
      <SightWords
        drill={drill}
        run={run}
        sample={sample}
        eye={eye}
        aspect={aspect}
        self={self}
        lengths={props.lengths}
      />
    </>
  );
}
