import type { Game, Team } from '@icewright/book';
import { useId, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { edit, endStep } from '../../shell/book.ts';
import { CHANGES, type ChangeField, changesOf, choicesOf, numberRange } from './changes-of.ts';
import type { ListedMoment } from './filter-moments.ts';
import { removeMoments } from './remove-moments.ts';
import './change-shown.css';

/** One change to all the moments that the list shows: one step of undo, however many they are. */
export function ChangeShown({
  gameId,
  game,
  shown,
  team,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly shown: readonly ListedMoment[];
  readonly team: Team;
}) {
  const [isOpen, setOpen] = useState(false);
  const [field, setField] = useState<ChangeField>('unit');
  const [said, setSaid] = useState('');
  const many = `${shown.length} ${shown.length === 1 ? 'moment' : 'moments'}`;
  const write = (value: unknown) => {
    const change = edit(gameId);
    endStep(gameId);
    change.transact(() => {
      for (const [id] of shown) {
        const path = ['moments', id, field];
        if (value === undefined) change.remove(path);
        else change.set(path, value);
      }
    });
    endStep(gameId);
    setSaid(`${many} changed. Undo puts it back.`);
  };
  const takeOut = () => {
    removeMoments(
      gameId,
      game,
      shown.map(([id]) => id),
    );
    setSaid(`${many} taken out. Undo puts it back.`);
  };
  return (
    <div className="change-shown">
      <Act opens={isOpen} onPress={() => setOpen(!isOpen)}>
        Change all {shown.length} shown
      </Act>
      {isOpen && (
        <div className="opened-below">
          <div className="change-line">
            <label>
              <span className="q2">Set</span>{' '}
              <select value={field} onChange={event => setField(event.target.value as ChangeField)}>
                {Object.entries(CHANGES).map(([key, words]) => (
                  <option key={key} value={key}>
                    {words}
                  </option>
                ))}
              </select>
            </label>{' '}
            <ChangeTo key={field} field={field} team={team} many={many} onWrite={write} />
          </div>
          <p className="take-out-line">
            <Act bare onPress={takeOut} notNow={shown.length === 0 ? 'nothing is shown' : undefined}>
              Take {many} out
            </Act>
          </p>
        </div>
      )}
      {said !== '' && (
        <span className="q2 opened-below" role="status">
          {said}
        </span>
      )}
    </div>
  );
}

/** What it is set to. As it is, until something else is said: nothing is wiped by a press too many. */
function ChangeTo({
  field,
  team,
  many,
  onWrite,
}: {
  readonly field: ChangeField;
  readonly team: Team;
  readonly many: string;
  /** Undefined: not said any more. */
  readonly onWrite: (value: unknown) => void;
}) {
  const [typed, setTyped] = useState<readonly string[]>([]);
  const toId = useId();
  const choices = choicesOf(field, team);
  const range = numberRange(field);
  const change = changesOf(field, typed);
  const set = (i: number, value: string) => {
    const next = [...typed];
    next[i] = value;
    setTyped(next);
  };
  return (
    <>
      <span className="q2" id={toId}>
        to
      </span>{' '}
      {choices ? (
        <select aria-labelledby={toId} value={typed[0] ?? ''} onChange={event => set(0, event.target.value)}>
          <option value="">as it is</option>
          {choices.map(([key, words]) => (
            <option key={key} value={key}>
              {words}
            </option>
          ))}
        </select>
      ) : (
        (range ? range.says : ['']).map((says, i) => (
          <input
            key={says}
            {...(says === '' ? { 'aria-labelledby': toId } : { 'aria-label': says })}
            {...(range ? { type: 'number', min: 0, max: range.max, step: range.step } : { maxLength: 40 })}
            value={typed[i] ?? ''}
            placeholder="as it is"
            onChange={event => event.target.validity.valid && set(i, event.target.value)}
          />
        ))
      )}{' '}
      <Act onPress={() => change && onWrite(change.value)} notNow={change ? undefined : 'it stays as it is'}>
        Change {many}
      </Act>
    </>
  );
}
