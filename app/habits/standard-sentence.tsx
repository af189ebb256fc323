import type { LineId, Standard, Trigger, Who, Whom, Zone } from '@icewright/engine';
import { type Lengths, lengthSaid } from '../parts/figures.ts';
import { Sentence, type SlotLine } from '../parts/sentence.tsx';
import {
  withCount,
  withLimit,
  withLine,
  withMustBe,
  withTrigger,
  withWho,
  withWhom,
  withZone,
} from './changed-standard.ts';
import {
  LINES,
  MUST_BE,
  type MustBe,
  saidOf,
  TRIGGERS,
  triggerSaid,
  WHO,
  WHOM,
  ZONES,
} from './standard-words.ts';

const LIMITS_M = [0, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];
const COUNTS = [1, 2, 3, 4, 5, 6];
const COUNT_WORDS = ['none', 'one', 'two', 'three', 'four', 'five', 'six'];

/** The standard as a sentence whose parts can be chosen. Built from menus: what it says is what will be judged. */
export function StandardSentence(props: {
  readonly standard: Standard;
  readonly lengths: Lengths;
  readonly onChange: (standard: Standard) => void;
}) {
  const { standard, lengths, onChange } = props;
  return (
    <Sentence slots={slotsOf(standard, lengths, onChange)}>
      {slot => (
        <>
          When {slot('when', triggerSaid(standard.when))},{' '}
          {standard.kind === 'numbers' ? (
            <>
              at least {slot('count', COUNT_WORDS[standard.atLeastCount] ?? String(standard.atLeastCount))} of
              us must be {slot('must', saidOf(ZONES, standard.zone), false, '.')}
            </>
          ) : standard.kind === 'within' ? (
            <>
              our {slot('who', saidOf(WHO, standard.who))} must be {slot('must', 'within')}{' '}
              {slot('limit', lengthSaid(standard.withinM, lengths), true)} of{' '}
              {slot('whom', saidOf(WHOM, standard.whom), false, '.')}
            </>
          ) : (
            <>
              our {slot('who', saidOf(WHO, standard.who))} must be{' '}
              {slot('must', `${saidOf(MUST_BE, standard.kind)} ${saidOf(WHOM, standard.whom)}`)}, give or take{' '}
              {slot('limit', lengthSaid(standard.withinM, lengths), true)}.
            </>
          )}
        </>
      )}
    </Sentence>
  );
}

function slotsOf(
  standard: Standard,
  lengths: Lengths,
  onChange: (standard: Standard) => void,
): Record<string, SlotLine[]> {
  const must: SlotLine = {
    label: 'must be',
    choices: MUST_BE,
    value: standard.kind,
    onChoose: value => onChange(withMustBe(standard, value as MustBe)),
  };
  const when: SlotLine[] = [
    {
      label: 'when',
      choices: TRIGGERS,
      value: standard.when.at,
      onChoose: value => onChange(withTrigger(standard, value as Trigger['at'])),
    },
  ];
  if (standard.when.at === 'puckCrosses') {
    when.push({
      label: 'line',
      choices: LINES,
      value: standard.when.line,
      onChoose: value => onChange(withLine(standard, value as LineId)),
    });
  }
  if (standard.kind === 'numbers') {
    const zone: SlotLine = {
      label: 'where',
      choices: ZONES,
      value: standard.zone,
      onChoose: value => onChange(withZone(standard, value as Zone)),
    };
    const count: SlotLine = {
      label: 'at least',
      choices: COUNTS.map(value => ({ value: String(value), said: COUNT_WORDS[value]! })),
      value: String(standard.atLeastCount),
      onChoose: value => onChange(withCount(standard, Number(value))),
    };
    return { when, must: [must, zone], count: [count] };
  }
  const whom: SlotLine = {
    label: 'whom',
    choices: WHOM,
    value: standard.whom,
    onChoose: value => onChange(withWhom(standard, value as Whom)),
  };
  const who: SlotLine = {
    label: 'our',
    choices: WHO,
    value: standard.who,
    onChoose: value => onChange(withWho(standard, value as Who)),
  };
  const limits = [...new Set([...LIMITS_M, standard.withinM])].sort((a, b) => a - b);
  const limit: SlotLine = {
    label: standard.kind === 'within' ? 'within' : 'give or take',
    choices: limits.map(value => ({ value: String(value), said: lengthSaid(value, lengths) })),
    value: String(standard.withinM),
    onChoose: value => onChange(withLimit(standard, Number(value))),
  };
  return { when, who: [who], must: [must, whom], whom: [whom], limit: [limit] };
}
