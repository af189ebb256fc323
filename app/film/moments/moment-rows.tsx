import type { Moment } from '@icewright/book';
import { memo } from 'react';
import { answerOf } from '../../habits/chance.ts';
import { isChance } from '../../habits/is-chance.ts';
import { TwoAnswersLine } from '../../habits/two-answers-line.tsx';
import { writtenStandardOf } from '../../habits/written-standard.ts';
import { Reading } from '../../parts/reading.tsx';
import { clockText } from '../film-clock.ts';
import { rinkOfSheet } from '../fit-of-freeze.ts';
import { skaterWords } from '../people-words.ts';
import { unitWords } from './filter-sentence.tsx';
import { MomentEdit, type MomentEditing } from './moment-edit.tsx';
import { MomentGlyph, verdictSaid } from './moment-glyph.tsx';

export interface RowActs extends MomentEditing {
  readonly onChoose: (id: string) => void;
  /** Absent where there is no picture to freeze. */
  readonly onFreeze?: (freezeId: string, momentId: string) => void;
  /** The chosen one opens below its row; otherwise somewhere else on the page. */
  readonly opensBelow: boolean;
}

/** One moment of the timetable. Drawn again only when it changed: a game may have a thousand and more. */
export const MomentRows = memo(function MomentRows(
  props: RowActs & { readonly id: string; readonly moment: Moment; readonly isChosen: boolean },
) {
  const { id, moment, team, isChosen, onChoose, onFreeze, opensBelow } = props;
  const { freeze } = moment;
  const situation = situationWords(props);
  const two = twoOf(props);
  return (
    <>
      <tr aria-selected={isChosen} onClick={() => onChoose(id)}>
        <td>
          <button
            type="button"
            className="row-handle"
            aria-expanded={opensBelow ? isChosen : undefined}
            onClick={() => onChoose(id)}
          >
            {clockText(moment.filmTimeS, 1)}
          </button>
        </td>
        <td className="w">{team.habits[moment.habit]?.title ?? 'a habit no longer here'}</td>
        <td className="nw">
          <MomentGlyph verdict={moment.verdict} />{' '}
          <span className={moment.verdict === 'missed' ? 'warm' : ''}>
            {isChance(moment) ? verdictSaid(moment.verdict) : 'theirs'}
          </span>
        </td>
        <td>{skaterWords(moment.skater, team)}</td>
        <td className="q2">
          {situation !== '' && <span className="q3">{situation}</span>} {moment.note}{' '}
          {freeze !== undefined && onFreeze && (
            <button
              type="button"
              className="frz"
              onClick={event => {
                event.stopPropagation();
                onFreeze(freeze, id);
              }}
            >
              freeze
            </button>
          )}
        </td>
        <td className="r">
          {moment.costGoals > 0 && (
            <Reading
              value={moment.costGoals.toFixed(2)}
              estimate
              why="Goals this miss is thought to cost: the coach's own estimate, from the habit, or written here."
            />
          )}
          {moment.costGoals > 0 && <span className="cost-unit q3"> goals</span>}
        </td>
        <td className="q3">{moment.by}</td>
      </tr>
      {two && (
        <tr className="moment-two">
          <td aria-hidden="true" />
          <td colSpan={6}>
            <TwoAnswersLine gameId={props.gameId} momentId={id} two={two} />
          </td>
        </tr>
      )}
      {isChosen && opensBelow && (
        <tr className="moment-edit">
          <td colSpan={7}>
            <MomentEdit {...props} />
          </td>
        </tr>
      )}
    </>
  );
}, isSame);

type Props = Parameters<typeof situationWords>[0] & { readonly isChosen: boolean };

/** The acts are made anew with every look at the page, and do the same; only a chosen moment needs the newest. */
function isSame(before: Props, after: Props): boolean {
  if (before.isChosen || after.isChosen) return false;
  const isSameFreeze = freezeIn(before) === freezeIn(after) && before.game.rink === after.game.rink;
  return (
    before.moment === after.moment && before.team === after.team && before.id === after.id && isSameFreeze
  );
}

const freezeIn = ({ moment, game }: Pick<Props, 'moment' | 'game'>) =>
  moment.freeze && game.freezes[moment.freeze];

/** Only where a freeze was made can anything be measured otherwise than it was said. */
function twoOf({ moment, game, team }: Pick<Props, 'moment' | 'game' | 'team'>) {
  const habit = team.habits[moment.habit];
  if (!freezeIn({ moment, game }) || !habit || !isChance(moment)) return undefined;
  return answerOf(game, moment, writtenStandardOf(habit), rinkOfSheet(team.rink)).two;
}

const situationWords = ({
  moment,
  team,
}: RowActs & { readonly id: string; readonly moment: Moment }): string =>
  [
    moment.strength,
    moment.period === undefined ? '' : moment.period > 3 ? 'overtime' : `period ${moment.period}`,
    moment.score === undefined ? '' : `${moment.score.us}:${moment.score.them}`,
    unitWords(moment.unit, team),
  ]
    .filter(Boolean)
    .join(', ');
