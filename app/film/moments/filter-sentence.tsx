import { type Game, inOrder, type Moment, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { memo } from 'react';
import { named } from '../../parts/named.ts';
import { type Choice, Sentence, type SlotLine } from '../../parts/sentence.tsx';
import { skaterWords } from '../people-words.ts';
import { type ListedMoment, type MomentFilter, seenValues } from './filter-moments.ts';
import { FOLLOW_STEPS, followSaid } from './follow-words.ts';
import { verdictSaid } from './moment-glyph.tsx';

const ANY = '';

/** What the list shows, as a sentence whose words can be changed. Read anew only when the moments or the filter changed. */
export const FilterSentence = memo(function FilterSentence(props: {
  readonly all: readonly ListedMoment[];
  readonly shownCount: number;
  readonly filter: MomentFilter;
  readonly onFilter: (filter: MomentFilter) => void;
  readonly team: Team;
  readonly follows: Game['follows'];
}) {
  const { all, filter, onFilter, team } = props;
  const set = (field: keyof MomentFilter, value: string) => {
    const { [field]: _, ...rest } = filter;
    onFilter(
      value === ANY ? rest : { ...rest, [field]: field === 'period' ? Number(value) : (value as never) },
    );
  };
  const line = (
    label: string,
    field: keyof MomentFilter,
    anyone: string,
    choices: readonly Choice<string>[],
  ): SlotLine => ({
    label,
    choices: [{ value: ANY, said: anyone }, ...choices],
    value: String(filter[field] ?? ANY),
    onChoose: value => set(field, value),
  });
  const usedHabits = new Set(all.map(([, one]) => one.habit));
  const cameSteps = new Set(Object.values(props.follows).map(({ step }) => step));
  const habits = inOrder(team.habits)
    .filter(([id]) => usedHabits.has(id))
    .map(([value, one]) => ({ value, said: named(one.title, 'habit') }));
  const verdicts = (['done', 'missed', 'cannotSee'] as const).map(value => ({
    value,
    said: verdictSaid(value),
  }));
  const skaters = seenValues(all, 'skater').map(value => ({ value, said: skaterWords(value, team) }));
  const situation = [
    line('Strength', 'strength', 'any', plain(seenValues(all, 'strength'))),
    line('Period', 'period', 'any', plain(seenValues(all, 'period').map(String))),
    line(
      'Our unit',
      'unit',
      'any',
      seenValues(all, 'unit').map(value => ({ value, said: unitWords(value, team) })),
    ),
    line('Marked by', 'by', 'anybody', plain(seenValues(all, 'by'))),
    line(
      'Of which came',
      'came',
      'anything',
      FOLLOW_STEPS.filter(({ step }) => cameSteps.has(step)).map(({ step, said }) => ({ value: step, said })),
    ),
  ].filter(({ choices }) => choices.length > 1);
  return (
    <div className="moment-filter">
      <Sentence
        slots={{
          habit: [line('Habit', 'habit', 'every habit', habits)],
          verdict: [line('Seen', 'verdict', 'done, missed or not seen', verdicts)],
          who: [line('Who', 'skater', 'anybody', skaters)],
          situation,
        }}
      >
        {slot => (
          <>
            <b className="num">{props.shownCount}</b>{' '}
            {props.shownCount < all.length
              ? `of ${all.length} moments`
              : all.length === 1
                ? 'moment'
                : 'moments'}
            : {slot('habit', filter.habit ? titleOf(filter.habit, team) : 'every habit')},{' '}
            {slot('verdict', filter.verdict ? verdictSaid(filter.verdict) : 'done, missed or not seen')}, by{' '}
            {slot('who', filter.skater ? skaterWords(filter.skater as Id<'skater'>, team) : 'anybody')}
            {situation.length > 0 && <>, {slot('situation', situationWords(filter, team))}</>}.
          </>
        )}
      </Sentence>
    </div>
  );
});

export const unitWords = (id: Moment['unit'], team: Team): string =>
  id === undefined ? '' : named(team.units[id]?.title ?? 'a unit no longer here', 'unit');

const titleOf = (id: string, team: Team): string =>
  named(team.habits[id as Id<'habit'>]?.title ?? 'a habit no longer here', 'habit');

const plain = (values: readonly string[]): Choice<string>[] => values.map(value => ({ value, said: value }));

const situationWords = (filter: MomentFilter, team: Team): string => {
  const said = [
    filter.strength,
    filter.period === undefined ? undefined : `period ${filter.period}`,
    filter.unit === undefined ? undefined : `with ${unitWords(filter.unit as Moment['unit'], team)}`,
    filter.by === undefined ? undefined : `marked by ${filter.by}`,
    filter.came === undefined ? undefined : `of which came: ${followSaid(filter.came)}`,
  ].filter(Boolean);
  return said.length === 0 ? 'at any time' : said.join(', ');
};
