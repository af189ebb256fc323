import { changesFor, type FreeQuantity, type Outcome, planAfter } from '@icewright/engine';
import { useMemo } from 'react';
import { Act } from '../../parts/act.tsx';
import type { Lengths } from '../../parts/figures.ts';
import { Sentence } from '../../parts/sentence.tsx';
import { firstNewFinding } from '../library/new-findings.ts';
import type { People } from '../people/people-of.ts';
import type { Hand } from '../use-hand.ts';
import { type FreeWords, freeWords } from './free-words.ts';
import { inTen, TuneAnswerSaid } from './tune-answer-said.tsx';
import { TuneCurveView } from './tune-curve-view.tsx';
import { freeKeyOf, type Tune, useTune } from './use-tune.ts';

/** What has to move so that the wanted comes as often as the coach wants it. */
export function TunePanel(props: {
  readonly hand: Hand;
  readonly outcome: Outcome | null;
  readonly people: People;
  readonly lengths: Lengths;
}) {
  const { hand, outcome, lengths } = props;
  const { drill } = hand;
  const tune = useTune(drill, outcome, props.people);
  const { free, found } = tune;
  if (free === null) return null;
  const words = freeWords(free, drill, lengths);
  return (
    <section className="sec tune">
      <h2>
        <TuneWord tune={tune} /> <span className="q3">how many in 10 come out so, by what may move</span>
      </h2>
      <Sentence
        slots={{
          free: [
            {
              label: 'may move',
              value: freeKeyOf(free),
              choices: tune.quantities.map(one => ({
                value: freeKeyOf(one),
                said: freeWords(one, drill, lengths).said,
              })),
              onChoose: key => {
                const chosen = tune.quantities.find(one => freeKeyOf(one) === key);
                if (chosen) tune.onFree(chosen);
              },
            },
          ],
          wanted: [
            {
              label: 'in 10 reps',
              value: `${tune.wantedRatio}`,
              choices: TENTHS.map(ratio => ({ value: `${ratio}`, said: inTen(ratio) })),
              onChoose: ratio => tune.onWanted(Number(ratio)),
            },
          ],
        }}
      >
        {slot => (
          <>
            Change {slot('free', words.said)} until it comes in{' '}
            {slot('wanted', `${inTen(tune.wantedRatio)} in 10`)}.
          </>
        )}
      </Sentence>
      {found !== null && (
        <TuneCurveView
          free={free}
          words={words}
          answer={found.answer}
          range={found.free}
          wantedRatio={tune.wantedRatio}
          onWanted={tune.onWanted}
        />
      )}
      {tune.failure !== null && <p className="warm">It could not be looked for: {tune.failure}</p>}
      {found === null ? (
        <p className="tune-answer">
          <Act notNow={tune.doneRatio === null ? undefined : 'it is being looked for'} onPress={tune.onAsk}>
            Look for it
          </Act>
        </p>
      ) : (
        <div className="tune-answer">
          <p className={tune.isStale ? 'q3' : ''}>
            <TuneAnswerSaid found={found} words={words} now={free.now} isStale={tune.isStale} />
          </p>
          <AnswerAct hand={hand} tune={tune} free={free} words={words} />
        </div>
      )}
    </section>
  );
}

const TENTHS = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

function TuneWord({ tune }: { readonly tune: Tune }) {
  if (tune.doneRatio === null) return <span>Tune</span>;
  return (
    <button
      type="button"
      className="running-word"
      style={{ '--done': tune.doneRatio } as React.CSSProperties}
      onClick={tune.onStop}
    >
      Tune<span className="vh">, looking for it, press to stop</span>
    </button>
  );
}

function AnswerAct(props: {
  readonly hand: Hand;
  readonly tune: Tune;
  readonly free: FreeQuantity;
  readonly words: FreeWords;
}) {
  const { hand, tune, free, words } = props;
  if (tune.isStale)
    return (
      <Act notNow={tune.doneRatio === null ? undefined : 'it is being looked for'} onPress={tune.onAsk}>
        Look again
      </Act>
    );
  if (tune.found?.answer.kind !== 'reached') return null;
  return <MoveAct hand={hand} free={free} value={tune.found.answer.value} words={words} />;
}

/** Writes the answer; what would be new to look at there is said before. */
function MoveAct(props: {
  readonly hand: Hand;
  readonly free: FreeQuantity;
  readonly value: number;
  readonly words: FreeWords;
}) {
  const { hand, free, value, words } = props;
  const isThere = Math.abs(value - free.now) < 1e-3;
  const { changes, worse } = useMemo(() => {
    const written = changesFor(hand.kept, free, value);
    return {
      changes: written,
      worse: isThere ? null : firstNewFinding(hand.kept, planAfter(hand.kept, written)),
    };
  }, [hand.kept, free, value, isThere]);
  return (
    <>
      <Act
        notNow={isThere ? 'it stands there' : undefined}
        onPress={() => hand.keep(changes.map(change => ({ ...change })))}
      >
        {words.act}
      </Act>
      {worse !== null && <p className="q2 tune-worse">There it has something new to look at: {worse}.</p>}
    </>
  );
}
