import { type Game, inOrder, type Team } from '@icewright/book';
import { useId, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { edit, endStep } from '../../shell/book.ts';
import type { ListedMoment } from './filter-moments.ts';
import { removeMoments } from './remove-moments.ts';
import { STRENGTHS } from './situation-fields.tsx';

type Field = 'habit' | 'verdict' | 'skater' | 'unit' | 'strength' | 'period' | 'by';

const SAID: Readonly<Record<Field, string>> = {
  habit: 'habit',
  verdict: 'what was seen',
  skater: 'who',
  unit: 'our unit',
  strength: 'strength',
  period: 'period',
  by: 'marked by',
};

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
  const [field, setField] = useState<Field>('unit');
  const [value, setValue] = useState('');
  const [said, setSaid] = useState('');
  const toId = useId();
  const choices = choicesOf(field, team);
  const many = `${shown.length} ${shown.length === 1 ? 'moment' : 'moments'}`;
  const say = (done: string) => setSaid(`${done} Undo puts it back.`);
  const apply = () => {
    const change = edit(gameId);
    const kept = field === 'period' ? Number(value) : value;
    endStep(gameId);
    change.transact(() => {
      for (const [id] of shown) {
        const path = ['moments', id, field];
        if (value === '' && field !== 'by') change.remove(path);
        else change.set(path, kept);
      }
    });
    endStep(gameId);
    say(`${many} changed.`);
  };
  const takeOut = () => {
    removeMoments(
      gameId,
      game,
      shown.map(([id]) => id),
    );
    say(`${many} taken out.`);
  };
  const isMust = field === 'habit' || field === 'verdict';
  return (
    <div className="change-shown">
      <Act opens={isOpen} onPress={() => setOpen(!isOpen)}>
        Change all {shown.length} shown
      </Act>
      {isOpen && (
        <p className="change-line">
          <label>
            <span className="q2">Set</span>{' '}
            <select
              value={field}
              onChange={event => {
                setField(event.target.value as Field);
                setValue('');
              }}
            >
              {Object.entries(SAID).map(([key, words]) => (
                <option key={key} value={key}>
                  {words}
                </option>
              ))}
            </select>
          </label>{' '}
          <span className="q2" id={toId}>
            to
          </span>{' '}
          {choices === undefined ? (
            <input
              aria-labelledby={toId}
              value={value}
              maxLength={40}
              onChange={event => setValue(event.target.value)}
            />
          ) : (
            <select aria-labelledby={toId} value={value} onChange={event => setValue(event.target.value)}>
              <option value="">{isMust ? 'choose' : 'not said'}</option>
              {choices.map(([key, words]) => (
                <option key={key} value={key}>
                  {words}
                </option>
              ))}
            </select>
          )}{' '}
          <Act onPress={apply} notNow={isMust && value === '' ? 'choose what to set it to' : undefined}>
            Change {many}
          </Act>{' '}
          <Act onPress={takeOut} notNow={shown.length === 0 ? 'nothing is shown' : undefined}>
            Take {many} out
          </Act>
        </p>
      )}
      {said !== '' && (
        <span className="q2" role="status">
          {said}
        </span>
      )}
    </div>
  );
}

/** Undefined: free words. */
function choicesOf(field: Field, team: Team): (readonly [string, string])[] | undefined {
  switch (field) {
    case 'habit':
      return inOrder(team.habits).map(([id, one]) => [id, named(one.title, 'habit')]);
    case 'verdict':
      return [
        ['done', 'done'],
        ['missed', 'missed'],
        ['cannotSee', 'cannot see'],
      ];
    case 'skater':
      return inOrder(team.skaters).map(([id, one]) => [id, `${one.number} ${one.name}`]);
    case 'unit':
      return inOrder(team.units).map(([id, one]) => [id, named(one.title, 'unit')]);
    case 'strength':
      return STRENGTHS.map(one => [one, one]);
    case 'period':
      return ['1', '2', '3', '4'].map(one => [one, one === '4' ? 'overtime' : one]);
    case 'by':
      return undefined;
  }
}
