import { inOrder, type Moment, type Team, type VttCue } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { verdictSaid } from './moment-glyph.tsx';

/** Cues that do not say what they are of: one habit and one verdict for all of them. */
export function CuesDoor({
  cues,
  team,
  onTake,
  onLeave,
}: {
  readonly cues: readonly VttCue[];
  readonly team: Team;
  readonly onTake: (meaning: Pick<Moment, 'habit' | 'verdict'>) => void;
  readonly onLeave: () => void;
}) {
  const habits = inOrder(team.habits);
  const [habit, setHabit] = useState(habits[0]?.[0]);
  const [verdict, setVerdict] = useState<Moment['verdict']>('done');
  const waits = habit === undefined ? 'there is no habit yet: write one first, under Habits' : undefined;
  return (
    <span className="slip-acts">
      <select
        aria-label="Habit of all of them"
        value={habit ?? ''}
        onChange={event => setHabit(event.target.value as Moment['habit'])}
      >
        {habits.map(([id, one]) => (
          <option key={id} value={id}>
            {named(one.title, 'habit')}
          </option>
        ))}
      </select>{' '}
      <select
        aria-label="What was seen in all of them"
        value={verdict}
        onChange={event => setVerdict(event.target.value as Moment['verdict'])}
      >
        {(['done', 'missed', 'cannotSee'] as const).map(one => (
          <option key={one} value={one}>
            {verdictSaid(one)}
          </option>
        ))}
      </select>{' '}
      <Act onPress={() => habit && onTake({ habit, verdict })} notNow={waits}>
        Take {countSaid(cues.length, 'cue')}
      </Act>{' '}
      <Act bare onPress={onLeave}>
        Cancel
      </Act>
      {waits && <span className="q3"> {waits}</span>}
    </span>
  );
}
