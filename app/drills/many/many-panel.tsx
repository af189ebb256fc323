import type { Drill } from '@icewright/book';
import {
  atOtherLine,
  findLineOf,
  isSameWant,
  LINE_IDS,
  type LineId,
  lineWords,
  outcomeRate,
  wantKeyOf,
} from '@icewright/engine';
import { type ReactNode, useEffect, useRef } from 'react';
import { Act } from '../../parts/act.tsx';
import { hundredthsOf, percentSaid } from '../../parts/figures.ts';
import { Reading } from '../../parts/reading.tsx';
import { Sentence, type SlotLine } from '../../parts/sentence.tsx';
import { useIsInView } from '../../parts/use-in-view.ts';
import { whoSaid } from '../people/who-said.ts';
import { wantWords } from './habit-wants.ts';
import { ManyMore } from './many-more.tsx';
import { ManyWhy } from './many-why.tsx';
import { MANY_REPS } from './play-many.ts';
import type { Many } from './use-many.ts';

/** How often the drill gives what is wanted, over a thousand reps with people who differ. */
export function ManyPanel(props: {
  readonly drill: Drill;
  readonly many: Many;
  /** Who skates the reps, in words that can be changed. */
  readonly children: ReactNode;
}) {
  const { drill, many } = props;
  const { wanted, tally, onInView } = many;
  const section = useRef<HTMLElement>(null);
  const isInView = useIsInView(section);
  useEffect(() => onInView(isInView), [isInView, onInView]);
  const counted = tally?.outcomes[0];
  const rate = counted && tally && outcomeRate(counted, tally.repCount);
  return (
    <section className="sec many" ref={section}>
      <h2>
        <ManyWord many={many} />{' '}
        <span className="q3">
          {MANY_REPS.toLocaleString('en-GB')} reps, {whoSaid(drill, many.people)}
        </span>
      </h2>
      {props.children}
      {wanted === null && (
        <p className="q2">
          Nothing here comes out one way or the other yet: add a pass, a chase, or somebody who comes back.
        </p>
      )}
      {wanted !== null && (
        <div className="many-figure">
          {rate && tally && counted ? (
            <span className={many.isStale ? 'many-rate stale' : 'many-rate'}>
              <Reading
                value={percentSaid(rate.rateRatio)}
                estimate
                why={<ManyWhy drill={drill} people={many.people} tally={tally} counted={counted} />}
              />
            </span>
          ) : (
            <span className="many-none q3" aria-hidden>
              …
            </span>
          )}
          <div>
            <WantSentence drill={drill} many={many} />
            {rate && counted && (
              <p className="q2">
                95 % interval {Math.round(rate.lowerRatio * 100)} to {Math.round(rate.upperRatio * 100)}.
                {counted.unaskedCount > 0 && (
                  <>
                    {' '}
                    <b className="b">
                      {counted.unaskedCount} of {tally.repCount} reps do not come to that:
                    </b>{' '}
                    {wantWords(counted.outcome, drill, many.habitWants).unasked}.
                  </>
                )}
              </p>
            )}
            {counted && !rate && (
              <p className="q2">
                No rep comes to that: {wantWords(counted.outcome, drill, many.habitWants).unasked}.
              </p>
            )}
          </div>
        </div>
      )}
      {many.failure !== null && <p className="warm">The reps could not be played: {many.failure}</p>}
      {counted && tally && <OutcomeBar drill={drill} many={many} />}
      {tally && <ManyMore drill={drill} tally={tally} />}
    </section>
  );
}

/** The word the line runs under while reps are played; pressed again, it stops. */
function ManyWord({ many }: { readonly many: Many }) {
  if (many.doneRatio !== null)
    return (
      <button
        type="button"
        className="running-word"
        style={{ '--done': many.doneRatio } as React.CSSProperties}
        onClick={many.onStop}
      >
        Many-run
        <span className="vh">, {Math.round(many.doneRatio * 100)} % played, press to stop</span>
      </button>
    );
  if (many.isStopped)
    return (
      <span>
        Many-run <Act onPress={many.onStart}>Go on</Act>
      </span>
    );
  return <span>Many-run</span>;
}

function WantSentence({ drill, many }: { readonly drill: Drill; readonly many: Many }) {
  const { wanted, outcomes, onWant } = many;
  if (wanted === null) return null;
  const words = wantWords(wanted, drill, many.habitWants);
  const line = findLineOf(wanted);
  const counted = many.tally?.outcomes.find(one => isSameWant(one.outcome, wanted));
  const asked = (many.tally?.repCount ?? 0) - (counted?.unaskedCount ?? 0);
  const want: SlotLine = {
    label: 'wanted',
    value: wantKeyOf(wanted),
    choices: outcomes.map(one => ({
      value: wantKeyOf(one),
      said: wantWords(one, drill, many.habitWants).want,
    })),
    onChoose: key => {
      const chosen = outcomes.find(one => wantKeyOf(one) === key);
      if (chosen) onWant(chosen);
    },
  };
  const lines: SlotLine = {
    label: 'line',
    value: line ?? '',
    choices: LINE_IDS.map(id => ({ value: id, said: lineWords(id, drill) })),
    onChoose: id => onWant(atOtherLine(wanted, id as LineId)),
  };
  return (
    <Sentence slots={{ want: [want], line: [lines] }}>
      {slot => (
        <>
          {counted !== undefined && counted.unaskedCount > 0 && asked > 0
            ? `of the ${asked} reps that come to it`
            : 'of reps'}{' '}
          {slot('want', words.want, false, line === undefined ? '.' : '')}
          {line !== undefined && (
            <>
              {' '}
              {words.beforeLine} {slot('line', lineWords(line, drill), false, '.')}
            </>
          )}
        </>
      )}
    </Sentence>
  );
}

/** In time, otherwise, not: one bar, with its words and figures below. */
function OutcomeBar({ drill, many }: { readonly drill: Drill; readonly many: Many }) {
  const { tally } = many;
  const counted = tally?.outcomes[0];
  if (!tally || !counted) return null;
  const words = wantWords(counted.outcome, drill, many.habitWants);
  const asked = tally.repCount - counted.unaskedCount;
  if (asked === 0) return null;
  const no = asked - counted.yes.count - counted.other.count;
  const shown = [
    { key: 'yes', said: words.yes, count: counted.yes.count },
    { key: 'other', said: words.other, count: counted.other.count },
    { key: 'no', said: words.no, count: no },
  ].filter(part => part.said !== '');
  const hundredths = hundredthsOf(shown.map(part => part.count));
  const parts = shown.map((part, i) => ({ ...part, hundredths: hundredths[i] ?? 0 }));
  return (
    <div className={many.isStale ? 'many-parts is-stale' : 'many-parts'}>
      <div className="many-bar" aria-hidden>
        {parts.map(part => (
          <span key={part.key} className={part.key} style={{ flexGrow: part.count / asked }} />
        ))}
      </div>
      <ul className="many-legend">
        {parts.map(part => (
          <li key={part.key}>
            <i className={`swatch ${part.key}`} aria-hidden /> {part.said}{' '}
            <b className="est">{part.hundredths}</b>
          </li>
        ))}
      </ul>
    </div>
  );
}
