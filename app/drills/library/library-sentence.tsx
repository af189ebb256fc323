import { inOrder, type Team } from '@icewright/book';
import { type IceShare, LEVEL_IDS, type LevelId, levelOf } from '@icewright/engine';
import { named } from '../../parts/named.ts';
import { Sentence } from '../../parts/sentence.tsx';
import type { LibraryQuery } from './library-query.ts';

export const ICE_SAID: Readonly<Record<IceShare, string>> = {
  whole: 'the whole sheet',
  half: 'half the ice',
  zone: 'one end zone',
  middle: 'the middle zone',
};

const ANY_KEY = 'any';
const SKATERS = [4, 6, 8, 10, 12, 16] as const;
const MINUTES = [5, 8, 10, 12, 15] as const;

/** What is looked for, as one sentence with slots; the words typed stand beside it. */
export function LibrarySentence(props: {
  readonly team: Team;
  readonly query: LibraryQuery;
  readonly onQuery: (query: LibraryQuery) => void;
}) {
  const { team, query, onQuery } = props;
  const habits = inOrder(team.habits).filter(([, habit]) => habit.kept);
  const put = <Key extends keyof LibraryQuery>(key: Key, value: LibraryQuery[Key]) =>
    onQuery({ ...query, [key]: value });
  const habit = query.habit === null ? undefined : team.habits[query.habit as never];
  return (
    <Sentence
      slots={{
        habit: [
          {
            label: 'habit served',
            value: query.habit ?? ANY_KEY,
            choices: [
              { value: ANY_KEY, said: 'any habit' },
              ...habits.map(([id, each]) => ({ value: id as string, said: named(each.title, 'habit') })),
            ],
            onChoose: value => put('habit', value === ANY_KEY ? null : value),
          },
        ],
        ice: [
          {
            label: 'ice there is',
            value: query.ice ?? ANY_KEY,
            choices: [
              { value: ANY_KEY, said: 'any ice' },
              ...(['half', 'zone', 'middle'] as const).map(ice => ({ value: ice, said: ICE_SAID[ice] })),
            ],
            onChoose: value => put('ice', value === ANY_KEY ? null : (value as IceShare)),
          },
        ],
        skaters: [
          {
            label: 'skaters at once, at most',
            value: query.skaters === null ? ANY_KEY : `${query.skaters}`,
            choices: [
              { value: ANY_KEY, said: 'any number' },
              ...SKATERS.map(count => ({ value: `${count}`, said: `${count} skaters` })),
            ],
            onChoose: value => put('skaters', value === ANY_KEY ? null : Number(value)),
          },
        ],
        minutes: [
          {
            label: 'minutes, at most',
            value: query.minutes === null ? ANY_KEY : `${query.minutes}`,
            choices: [
              { value: ANY_KEY, said: 'any time' },
              ...MINUTES.map(count => ({ value: `${count}`, said: `${count} minutes` })),
            ],
            onChoose: value => put('minutes', value === ANY_KEY ? null : Number(value)),
          },
        ],
        level: [
          {
            label: 'level',
            value: query.level ?? ANY_KEY,
            choices: [
              { value: ANY_KEY, said: 'any level' },
              ...LEVEL_IDS.map(id => ({ value: id, said: levelOf(id).words })),
            ],
            onChoose: value => put('level', value === ANY_KEY ? null : (value as LevelId)),
          },
        ],
      }}
    >
      {slot => (
        <>
          For {slot('habit', habit === undefined ? 'any habit' : named(habit.title, 'habit'))}, on{' '}
          {slot('ice', query.ice === null ? 'any ice' : ICE_SAID[query.ice])}, with{' '}
          {slot('skaters', query.skaters === null ? 'any number' : `at most ${query.skaters} skaters`)}, in{' '}
          {slot('minutes', query.minutes === null ? 'any time' : `at most ${query.minutes} minutes`)}, for{' '}
          {slot('level', query.level === null ? 'any level' : levelOf(query.level).words)}.
        </>
      )}
    </Sentence>
  );
}
