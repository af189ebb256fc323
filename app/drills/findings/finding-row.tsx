import type { Drill } from '@icewright/book';
import {
  type Finding,
  MEND_CHANGES_DRILL,
  type Mend,
  type MendEffect,
  mendSentence,
  type NoMend,
} from '@icewright/engine';
import { useId } from 'react';
import { Act } from '../../parts/act.tsx';
import { type Lengths, numberSaid, percentSaid } from '../../parts/figures.ts';
import { Reading } from '../../parts/reading.tsx';
import { againstSaid, findingWords, placeSaid } from './finding-words.ts';
import { effectSaid, effectWords, intervalSaid } from './mend-effect-words.ts';

/** One finding: its flag, what and why, and what would mend it. */
export function FindingRow(props: {
  readonly drill: Drill;
  readonly finding: Finding;
  /** The number of its flag. */
  readonly number: number;
  readonly isChosen: boolean;
  readonly mend: Mend | NoMend | undefined;
  /** What it does to what is wanted of the drill; undefined or null when that is not known. */
  readonly effect: MendEffect | null | undefined;
  readonly want: string | null;
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

function MendLine(props: Parameters<typeof FindingRow>[0]) {
  const { drill, mend, lengths, onMend, number, effect, want } = props;
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
  const does = effect && want !== null ? effectSaid(effect, want, false) : '';
  return (
    <>
      <p className="mend">
        <span>{mendSentence(mend, drill, lengths)}</span>
        <Act
          label={`Do it: ${mendSentence(mend, drill, lengths)} It mends finding ${number}. ${does}`.trim()}
          onPress={() => onMend(mend)}
        >
          Do it
        </Act>
      </p>
      {effect && want !== null && <EffectLine effect={effect} want={want} />}
    </>
  );
}

/** What it does to the drill besides. */
function EffectLine({ effect, want }: { readonly effect: MendEffect; readonly want: string }) {
  const words = effectWords(effect, want, false);
  return (
    <p className="mend-effect q2">
      {words.warning !== '' && <b className="b warm">{words.warning}</b>}
      {words.before}
      {words.figure !== '' && effect.after && (
        <Reading
          value={words.figure}
          estimate
          why={
            <>
              <b>{intervalSaid(effect.after)}</b> after it
              {effect.before && <>, {intervalSaid(effect.before)} before</>}: of reps with the same people and
              luck. More than {percentSaid(MEND_CHANGES_DRILL.value)} apart it is another drill:{' '}
              {MEND_CHANGES_DRILL.source}.
            </>
          }
        />
      )}
      {words.after}
    </p>
  );
}

function provenanceSaid({ status, source }: Finding): string {
  const words = { estimate: 'An estimate', sourced: 'From a source', derived: 'Worked out' }[status];
  return `${words}: ${source}.`;
}
