import { numberSaid } from '../../parts/figures.ts';
import type { FreeWords } from './free-words.ts';
import type { Found } from './use-tune.ts';

/** What was found, in the words of the question it answers. */
export function TuneAnswerSaid(props: {
  readonly found: Found;
  readonly words: FreeWords;
  /** As the drill has it. */
  readonly now: number;
  readonly isStale: boolean;
}) {
  const { words } = props;
  const { answer, wantedRatio } = props.found;
  const was = props.isStale ? 'asked before: ' : '';
  const wanted = inTen(wantedRatio);
  const figure = (value: number) => (
    <>
      <b className="est">{words.figure(value)}</b> {words.unit}
    </>
  );
  switch (answer.kind) {
    case 'reached':
      return (
        <>
          {was}For {wanted} in 10 {words.does} <b className="est">{words.figure(answer.value)}</b> ±{' '}
          {numberSaid(words.shown(answer.plusMinus), words.unit === '%' ? 0 : 1)} {words.unit}. Now{' '}
          {words.figure(props.now)}.{seldom(answer)}
        </>
      );
    case 'jumps':
      return (
        <>
          {was}It jumps over {wanted} in 10 at {figure(answer.above.value)}:{' '}
          {inTen(answer.below.rate.rateRatio)} on one side, {inTen(answer.above.rate.rateRatio)} on the other.
        </>
      );
    case 'cannotBeReached': {
      const { lowest, highest } = answer;
      const [low, high] = [inTen(lowest.rate.rateRatio), inTen(highest.rate.rateRatio)];
      return (
        <>
          {was}
          {wanted} in 10 cannot be reached this way.{' '}
          {high === '0' && 'It never comes, wherever it is looked for.'}
          {low === '10' && 'It always comes, wherever it is looked for.'}
          {low === high && low !== '10' && high !== '0' && `It stays at ${low} in 10.`}
          {leapsOver(props.found) && low !== high && (
            <>
              It is {low} in 10 at {figure(lowest.value)} and {high} at {figure(highest.value)}, and on the
              way between too few reps come to it.
            </>
          )}
          {!leapsOver(props.found) && low !== high && (
            <>
              It stays between {low} in 10, at {figure(lowest.value)}, and {high}, at {figure(highest.value)}.
            </>
          )}
          {!leapsOver(props.found) && fewCome(props.found)}
        </>
      );
    }
    case 'neverAsked':
      return (
        <>
          {was}
          {wanted} in 10 cannot be looked for this way: wherever it is tried, hardly a rep comes to the
          question.
        </>
      );
  }
}

export const inTen = (ratio: number): string => `${Number((ratio * 10).toFixed(1))}`;

/** The rate is of the reps that come to the question: how many these are. */
const seldom = ({
  trialCount,
  repCount,
}: {
  readonly trialCount: number;
  readonly repCount: number;
}): string => (trialCount === repCount ? '' : ` Of ${repCount} reps there ${trialCount} come to it.`);

/** The wanted rate lies between those that are had, and what lies between is left out. */
const leapsOver = ({ answer, wantedRatio }: Found): boolean =>
  answer.kind === 'cannotBeReached' &&
  answer.lowest.rate.rateRatio < wantedRatio &&
  answer.highest.rate.rateRatio > wantedRatio;

/** Values that are no answer, because too few reps come to the question. */
const fewCome = ({ answer }: Found): string => {
  const few = answer.curve.filter(point => point.trialCount < answer.leastAskedRatio * point.repCount).length;
  return few === 0
    ? ''
    : ` Left out: ${few} of ${answer.curve.length} values tried, where too few reps come to it.`;
};
