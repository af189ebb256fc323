import { changesFor, type FreeQuantity, type Outcome, type TuneAnswer } from '@icewright/engine';
import { Act } from '../../parts/act.tsx';
import { type Lengths, numberSaid } from '../../parts/figures.ts';
import { Sentence } from '../../parts/sentence.tsx';
import type { People } from '../people/people-of.ts';
import type { Hand } from '../use-hand.ts';
import { type FreeWords, freeWords } from './free-words.ts';
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
  const { free, answer } = tune;
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
      {answer !== null && tune.range !== null && (
        <TuneCurveView
          free={free}
          words={words}
          answer={answer}
          range={tune.range}
          wantedRatio={tune.wantedRatio}
          onWanted={tune.onWanted}
        />
      )}
      {tune.failure !== null && <p className="warm">It could not be looked for: {tune.failure}</p>}
      {answer === null ? (
        <p className="tune-answer">
          <Act notNow={tune.doneRatio === null ? undefined : 'it is being looked for'} onPress={tune.onAsk}>
            Look for it
          </Act>
        </p>
      ) : (
        <div className="tune-answer">
          <p className={tune.isStale ? 'q3' : ''}>
            <AnswerSaid
              answer={answer}
              words={words}
              free={free}
              wantedRatio={tune.wantedRatio}
              isStale={tune.isStale}
            />
          </p>
          <AnswerAct hand={hand} tune={tune} free={free} words={words} />
        </div>
      )}
    </section>
  );
}

const TENTHS = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];

export const inTen = (ratio: number): string => `${Number((ratio * 10).toFixed(1))}`;

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

function AnswerSaid(props: {
  readonly answer: TuneAnswer;
  readonly words: FreeWords;
  readonly free: FreeQuantity;
  readonly wantedRatio: number;
  readonly isStale: boolean;
}) {
  const { answer, words, free, wantedRatio } = props;
  const was = props.isStale ? 'was: ' : '';
  const figure = (value: number) => <b className="est">{words.figure(value)}</b>;
  switch (answer.kind) {
    case 'reached':
      return (
        <>
          {was}For {inTen(wantedRatio)} in 10 {words.does} {figure(answer.value)} ±{' '}
          {numberSaid(words.shown(answer.plusMinus), words.unit === '%' ? 0 : 1)} {words.unit}. Now{' '}
          {words.figure(free.now)}.
        </>
      );
    case 'jumps':
      return (
        <>
          {was}It jumps over {inTen(wantedRatio)} in 10 at {figure(answer.above.value)} {words.unit}:{' '}
          {inTen(answer.below.rate.rateRatio)} on one side, {inTen(answer.above.rate.rateRatio)} on the other.
        </>
      );
    case 'cannotBeReached':
      return (
        <>
          {was}
          {inTen(wantedRatio)} in 10 cannot be reached this way. It stays between{' '}
          {inTen(answer.lowest.rate.rateRatio)} in 10, at {figure(answer.lowest.value)}, and{' '}
          {inTen(answer.highest.rate.rateRatio)}, at {figure(answer.highest.value)} {words.unit}.
        </>
      );
  }
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
  if (tune.answer?.kind !== 'reached') return null;
  const { value } = tune.answer;
  const isThere = Math.abs(value - free.now) < 1e-3;
  return (
    <Act
      notNow={isThere ? 'it stands there' : undefined}
      onPress={() => hand.keep(changesFor(hand.kept, free, value).map(change => ({ ...change })))}
    >
      {words.act}
    </Act>
  );
}
