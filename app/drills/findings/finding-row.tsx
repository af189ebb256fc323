import type { Drill } from '@icewright/book';
import { type Finding, type Mend, mendSentence, type NoMend } from '@icewright/engine';
import { useId } from 'react';
import { Act } from '../../parts/act.tsx';
import { type Lengths, numberSaid } from '../../parts/figures.ts';
import { Reading } from '../../parts/reading.tsx';
import { againstSaid, findingWords, placeSaid } from './finding-words.ts';

/** One finding: its flag, what and why, and what would mend it. */
export function FindingRow(props: {
  readonly drill: Drill;
  readonly finding: Finding;
  /** The number of its flag. */
  readonly number: number;
  readonly isChosen: boolean;
  readonly mend: Mend | NoMend | undefined;
  readonly lengths: Lengths;
  readonly onLook: () => void;
  readonly onMend: (mend: Mend) => void;
}) {
  const { drill, finding, lengths } = props;
  const words = findingWords(finding, drill, lengths);
  const saidId = useId();
  const time = `${numberSaid(finding.timeS)} s`;
  return (
    <li className={[finding.weight, props.isChosen && 'is-chosen'].filter(Boolean).join(' ')}>
      <button
        type="button"
        className="flag-number"
        aria-pressed={props.isChosen}
        aria-describedby={saidId}
        onClick={props.onLook}
      >
        {props.number}
        <span className="vh">, show it on the ice</span>
      </button>
      <div>
        <p>
          <b className="b" id={saidId}>
            {words.what}
          </b>
          {words.before}
          {words.figure === '' && ' '}
          <Reading
            value={words.figure === '' ? time : words.figure}
            estimate={finding.status === 'estimate'}
            why={
              <>
                <b>{againstSaid(finding, lengths)}</b>, {time} into the rep,{' '}
                {placeSaid(finding.atM, lengths, drill)}. {provenanceSaid(finding)}
              </>
            }
          />
          {words.after}
        </p>
        <MendLine {...props} />
      </div>
    </li>
  );
}

function MendLine({ drill, mend, lengths, onMend, number }: Parameters<typeof FindingRow>[0]) {
  if (mend === undefined) return <p className="mend q3 is-looking">Trying what would mend it</p>;
  if (mend.kind === 'noMend') {
    return (
      <p className="mend q3">
        {mend.reason === 'nothingToTry'
          ? 'No single change is known for this.'
          : `No mend: none of ${mend.triedCount} single changes tried takes it away and leaves the rest well.`}
      </p>
    );
  }
  return (
    <p className="mend">
      <span>{mendSentence(mend, drill, lengths)}</span>
      <Act
        label={`Do it: ${mendSentence(mend, drill, lengths)} It mends finding ${number}.`}
        onPress={() => onMend(mend)}
      >
        Do it
      </Act>
    </p>
  );
}

function provenanceSaid({ status, source }: Finding): string {
  const words = { estimate: 'An estimate', sourced: 'From a source', derived: 'Worked out' }[status];
  return `${words}: ${source}.`;
}
