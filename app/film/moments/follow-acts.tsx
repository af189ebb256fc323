import { type Follow, type Game, newId } from '@icewright/book';
import { Act } from '../../parts/act.tsx';
import { edit, endStep } from '../../shell/book.ts';
import { useKeys } from '../../shell/keys.ts';
import { FOLLOW_STEPS, followSaid } from './follow-words.ts';
import type { MomentPlace } from './new-moment.ts';

/** What came of the chosen moment: a press says it of the picture that is shown, and the list times it. */
export function FollowActs({
  gameId,
  momentId,
  startS,
  follows,
  here,
  onSaid,
}: {
  readonly gameId: string;
  readonly momentId: string;
  readonly startS: number;
  readonly follows: Game['follows'];
  /** The frame that is shown; absent where there is no picture. */
  readonly here?: () => MomentPlace;
  /** Says under the picture what was written: the list may be below the fold. */
  readonly onSaid?: ((said: string) => void) | undefined;
}) {
  const game = edit(gameId);
  const own = Object.entries(follows)
    .filter(([, one]) => one.moment === momentId)
    .sort(([, a], [, b]) => a.frameIndex - b.frameIndex);
  const add = (step: Follow['step']) => {
    if (!here) return;
    const { frameIndex, filmTimeS } = here();
    const said = followSaid(step);
    if (filmTimeS < startS)
      return onSaid?.(
        `“${said}” cannot have come of it before it was: go on to the picture where it is seen.`,
      );
    onSaid?.(`Of the chosen moment came: ${said}, after ${(filmTimeS - startS).toFixed(1)} s.`);
    endStep(gameId);
    game.set(['follows', newId<'follow'>()], { moment: momentId, step, frameIndex, filmTimeS });
    endStep(gameId);
  };
  useKeys(
    here
      ? FOLLOW_STEPS.map(({ step, said }, i) => ({
          keys: `${i + 1}`,
          says: `of the chosen moment came: ${said}`,
          act: () => add(step),
        }))
      : [],
  );
  return (
    <div className="follow">
      <p className="q2">What came of it {here && <span className="q3">press when it is seen</span>}</p>
      {own.length > 0 && (
        <ol className="follow-steps">
          {own.map(([id, one]) => (
            <li key={id}>
              <b className="num">{sinceWords(one.filmTimeS - startS)}</b>{' '}
              <span className="w">{followSaid(one.step)}</span>{' '}
              <button
                type="button"
                className="quiet"
                aria-label={`Take out: ${followSaid(one.step)}`}
                onClick={() => {
                  endStep(gameId);
                  game.remove(['follows', id]);
                  endStep(gameId);
                }}
              >
                take out
              </button>
            </li>
          ))}
        </ol>
      )}
      {here && (
        <p className="follow-acts">
          {FOLLOW_STEPS.map(({ step, said }, i) => (
            <Act key={step} onPress={() => add(step)}>
              {said} <kbd>{i + 1}</kbd>
            </Act>
          ))}
        </p>
      )}
    </div>
  );
}

const sinceWords = (seconds: number): string => `${seconds < 0 ? '−' : '+'}${Math.abs(seconds).toFixed(1)} s`;
