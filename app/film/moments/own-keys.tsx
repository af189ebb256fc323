import { inOrder, type MomentKey, type Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { isMarking, keyWords } from './key-words.ts';
import { KeysTable } from './keys-table.tsx';

/** The coach's own keys: one press keeps the seconds around it. */
export function OwnKeys({
  team,
  onPress,
  saysHowItStands = false,
}: {
  readonly team: Team;
  /** By finger or mouse, as the key does. */
  readonly onPress: (key: MomentKey) => void;
  /** Keys without a habit say how the game stands from then on: where the game runs, not on its film. */
  readonly saysHowItStands?: boolean;
}) {
  const [isChanging, setChanging] = useState(false);
  const keys = inOrder(team.momentKeys);
  return (
    <section className="sec own-keys" aria-label="Keys of your own">
      <h2>
        Keys of your own <span className="q3">one press keeps the seconds around it</span>
      </h2>
      {keys.length === 0 && !isChanging && <p className="q2">None yet: a letter, a habit, what was seen.</p>}
      {isChanging ? (
        <KeysTable team={team} keys={keys} />
      ) : (
        <ul className="key-list">
          {keys
            .filter(([, one]) => saysHowItStands || isMarking(one))
            .map(([id, one]) => (
              <li key={id}>
                <button type="button" className="key-press" onClick={() => onPress(one)}>
                  <kbd>{one.key.toUpperCase()}</kbd> <span className="w">{keyWords(one, team)}</span>
                </button>
              </li>
            ))}
        </ul>
      )}
      <Act opens={isChanging} onPress={() => setChanging(!isChanging)}>
        {isChanging ? 'Done' : keys.length === 0 ? 'Make a key' : 'Change keys'}
      </Act>
    </section>
  );
}
