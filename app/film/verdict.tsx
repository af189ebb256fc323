import type { Game, Moment, Team } from '@icewright/book';
import { inOrder } from '@icewright/book';
import { judgeStandard } from '@icewright/engine';
import { hasSay, twoAnswersOf } from '../habits/two-answers.ts';
import { TwoAnswersLine } from '../habits/two-answers-line.tsx';
import { NOT_WRITTEN_SAID, writtenStandardOf } from '../habits/written-standard.ts';
import { ActLink } from '../parts/act.tsx';
import { named } from '../parts/named.ts';
import { addressOfHabit } from '../shell/addresses.ts';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { skaterWords } from './people-words.ts';
import { ANSWER, judgedWords } from './standard-words.ts';

/** What was seen: the habit in the coach's words, what the person said, and what the standard answers on this picture. */
export function Verdict({
  gameId,
  desk,
  view,
  team,
  game,
  isBlind,
}: {
  readonly gameId: string;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
  readonly game: Game;
  /** Somebody judges the moments blind: neither the first pair of eyes nor the standard is heard. */
  readonly isBlind: boolean;
}) {
  if (isBlind) return <PutAway habit={desk.freeze.habit && team.habits[desk.freeze.habit]} />;
  return <Heard {...{ gameId, desk, view, team, game }} />;
}

/** What is left of the head of a freeze while somebody judges blind. */
function PutAway({ habit }: { readonly habit: Team['habits'][keyof Team['habits']] | '' | undefined }) {
  return (
    <section className="verdict">
      {habit && <p className="w">{named(habit.title, 'habit')}</p>}
      <p className="q2">
        What was said of this picture, and what the standard answers, is put away while moments are judged a
        second time.
      </p>
    </section>
  );
}

function Heard({
  gameId,
  desk,
  view,
  team,
  game,
}: {
  readonly gameId: string;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
  readonly game: Game;
}) {
  const { freeze } = view;
  const habit = freeze.habit && team.habits[freeze.habit];
  const [momentId, tagged] = taggedBy(game, desk.freezeId, freeze.habit) ?? [];
  const standard = habit ? writtenStandardOf(habit) : undefined;
  const judged = standard && view.ice ? judgeStandard(view.ice.scene, standard) : undefined;
  const isOfHabit = tagged?.habit === freeze.habit;
  const two = tagged && isOfHabit ? twoAnswersOf(tagged, judged) : undefined;
  return (
    <section className="verdict">
      <label className="freeze-habit">
        <span className="vh">Habit that this freeze is about</span>
        <select
          value={freeze.habit ?? ''}
          onChange={event => desk.write.set('habit', event.target.value || undefined)}
        >
          <option value="">Which habit is this about?</option>
          {inOrder(team.habits)
            .filter(([id, one]) => one.kept || id === freeze.habit)
            .map(([id, one]) => (
              <option key={id} value={id}>
                {named(one.title, 'habit')}
              </option>
            ))}
        </select>
      </label>
      <input
        className="freeze-title w"
        aria-label="What this picture shows"
        placeholder="What this picture shows"
        data-book="words"
        maxLength={200}
        value={freeze.title}
        onChange={event => desk.write.set('title', event.target.value)}
      />
      {tagged && (
        <p className="v">
          {!isOfHabit && `Marked for “${named(team.habits[tagged.habit]?.title ?? '', 'habit')}”: `}
          <span className={tagged.verdict === 'missed' ? 'warm b' : 'b'}>{SAID[tagged.verdict]}</span>
          {tagged.skater ? ` by ${skaterWords(tagged.skater, team)}` : ''}
          {tagged.by === '' ? '' : `, said ${tagged.by}`}.
        </p>
      )}
      {standard && judged && (
        <p className="v" data-testid="verdict" data-answer={judged.answer}>
          <span className={judged.answer === 'no' ? 'warm b' : 'b'}>{ANSWER[judged.answer]}</span>, by the
          standard. {judgedWords(standard, judged, view)}
          {tagged &&
            isOfHabit &&
            tagged.verdict !== 'cannotSee' &&
            !hasSay(judged) &&
            ' What was said counts.'}
        </p>
      )}
      {momentId && two && <TwoAnswersLine gameId={gameId} momentId={momentId} two={two} />}
      {habit && !standard && (
        <p className="v">
          Judged {NOT_WRITTEN_SAID}.{' '}
          <ActLink bare to={addressOfHabit(freeze.habit as string)}>
            Write it
          </ActLink>
        </p>
      )}
      {standard && !judged && <p className="v">The standard can be judged once the pins hold the picture.</p>}
    </section>
  );
}

/** The moment that this freeze was made for; of several the one of the freeze's own habit. */
function taggedBy(game: Game, freezeId: string, habit: Moment['habit'] | undefined) {
  const all = Object.entries(game.moments).filter(([, one]) => one.freeze === freezeId);
  return all.find(([, one]) => one.habit === habit) ?? all[0];
}

const SAID = { done: 'Done', missed: 'Missed', cannotSee: 'Cannot see' } as const;
