import { kept } from '../film/moments/who-marks.ts';
import { Act } from '../parts/act.tsx';
import { edit, endStep } from '../shell/book.ts';
import { type TwoAnswers, twoAnswersSaid } from './two-answers.ts';
import './two-answers.css';

/** What was said and what is measured, which of the two counts, and the one act that settles it. */
export function TwoAnswersLine(props: {
  readonly gameId: string;
  readonly momentId: string;
  readonly two: TwoAnswers;
}) {
  const { gameId, momentId, two } = props;
  const settle = (counts: TwoAnswers['counts']) => {
    endStep(gameId);
    edit(gameId).set(['moments', momentId, 'settled'], {
      counts,
      by: kept(),
      settledAt: new Date().toISOString(),
    });
    endStep(gameId);
  };
  return (
    <p className={two.settledBy === undefined ? 'two-answers' : 'two-answers q2'} data-testid="two-answers">
      <span>{twoAnswersSaid(two)}</span>{' '}
      {two.counts === 'measure' && (
        <Act onPress={() => settle('word')}>
          Count what {two.wordBy === '' || two.wordBy === kept() ? 'I' : two.wordBy} said
        </Act>
      )}
      {(two.counts === 'word' || two.settledBy === undefined) && (
        <Act onPress={() => settle('measure')}>Count the measure</Act>
      )}
    </p>
  );
}
