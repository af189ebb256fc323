import { type Game, inOrder, type Moment, type Team } from '@icewright/book';
import { PutInMeeting } from '../../meeting/put-in-meeting.tsx';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { edit } from '../../shell/book.ts';
import { SkaterOptions } from '../skater-options.tsx';
import type { ListedMoment } from './filter-moments.ts';
import { FollowActs } from './follow-acts.tsx';
import type { MomentPlace } from './new-moment.ts';
import { SituationFields } from './situation-fields.tsx';
import { WhereOnIce } from './where-on-ice.tsx';

/** What the list needs to open a moment below itself. */
export interface MomentEditing {
  readonly gameId: string;
  readonly team: Team;
  readonly game: Game;
  readonly onRemove: (id: string) => void;
  /** The initials that were written: they stand at the next moment too. */
  readonly onBy: (by: string) => void;
  /** The frame that is shown; absent where there is no picture. */
  readonly here?: () => MomentPlace;
  /** Says under the picture what a press here has done. */
  readonly onSaid?: (said: string) => void;
  /** Plays the seconds of moments; absent where there is no film. */
  readonly onPlay?: ((moments: readonly ListedMoment[]) => void) | undefined;
}

export function MomentEdit({
  gameId,
  id,
  moment,
  team,
  game,
  onRemove,
  onBy,
  here,
  onSaid,
  onPlay,
}: MomentEditing & { readonly id: string; readonly moment: Moment }) {
  const change = edit(gameId);
  const at = (field: string) => ['moments', id, field];
  return (
    <>
      <div className="moment-fields">
        <label>
          <span className="q2">Habit</span>
          <select value={moment.habit} onChange={event => change.set(at('habit'), event.target.value)}>
            {inOrder(team.habits).map(([habitId, one]) => (
              <option key={habitId} value={habitId}>
                {named(one.title, 'habit')}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span className="q2">Seen</span>
          <select value={moment.verdict} onChange={event => change.set(at('verdict'), event.target.value)}>
            <option value="done">done</option>
            <option value="missed">missed</option>
            <option value="cannotSee">cannot see</option>
          </select>
        </label>
        <label>
          <span className="q2">Who</span>
          <select
            value={moment.skater ?? ''}
            onChange={event =>
              event.target.value === ''
                ? change.remove(at('skater'))
                : change.set(at('skater'), event.target.value)
            }
          >
            <SkaterOptions team={team} />
          </select>
        </label>
        <label className="grow">
          <span className="q2">What was seen</span>
          <input
            data-book="words"
            value={moment.note}
            maxLength={400}
            onChange={event => change.text(at('note'), event.target.value)}
          />
        </label>
        <label>
          <span className="q2">Cost, goals</span>
          <input
            type="number"
            min={0}
            max={5}
            step={0.01}
            value={moment.costGoals}
            onChange={event =>
              event.target.validity.valid && change.set(at('costGoals'), Number(event.target.value))
            }
          />
        </label>
        <label>
          <span className="q2">By</span>
          <input
            className="by-entry"
            data-book="words"
            value={moment.by}
            maxLength={40}
            onChange={event => {
              change.text(at('by'), event.target.value);
              onBy(event.target.value);
            }}
          />
        </label>
        <SituationFields gameId={gameId} id={id} moment={moment} team={team} />
        {onPlay && (
          <Act onPress={() => onPlay([[id, moment]])}>
            Play its seconds <kbd>P</kbd>
          </Act>
        )}
        <PutInMeeting team={team} gameId={gameId} game={game} chosen={[{ kind: 'moment', id }]} />
        <Act onPress={() => onRemove(id)}>Take out</Act>
      </div>
      <div className="moment-more">
        <FollowActs
          gameId={gameId}
          momentId={id}
          startS={moment.filmTimeS}
          follows={game.follows}
          {...(here ? { here } : {})}
          onSaid={onSaid}
        />
        <WhereOnIce gameId={gameId} id={id} moment={moment} game={game} team={team} />
      </div>
    </>
  );
}
