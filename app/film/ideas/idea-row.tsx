import { type Drill, emptyDrill, type Team } from '@icewright/book';
import { hasTouch, type Idea, type RinkChoice } from '@icewright/engine';
import { useMemo } from 'react';
import { Act, ActLink } from '../../parts/act.tsx';
import { DrillPicture } from '../../parts/drill-picture.tsx';
import { lengthSaid, numberSaid } from '../../parts/figures.ts';
import { Reading } from '../../parts/reading.tsx';
import { isRosterEmpty } from '../../parts/who-is-here.ts';
import { addressOfDrill } from '../../shell/addresses.ts';
import { findingsSaid, likenessSaid, rateSaid, SHAPE_SAID, termsSaid, versionSaid } from './idea-words.ts';

/** One idea: its picture, what comes of it, what it costs, and the act that keeps it. */
export function IdeaRow(props: {
  readonly idea: Idea;
  readonly team: Team;
  readonly rink: RinkChoice;
  /** Of how many the share that moves is told. */
  readonly skaters: number;
  readonly onTake: () => void;
  /** The drill it has become. */
  readonly takenAs: string | undefined;
  /** Why it cannot be taken yet. */
  readonly notNow: string | undefined;
}) {
  const { idea, team, rink } = props;
  const drill = useMemo(
    () =>
      ({
        ...emptyDrill({ title: SHAPE_SAID[idea.shape], level: team.level, rink, madeAt: EARLY }),
        ...idea.plan,
      }) as Drill,
    [idea, team.level, rink],
  );
  const moving = idea.movingRatio * props.skaters;
  return (
    <li className="idea">
      <h3>
        <span className="w">{SHAPE_SAID[idea.shape]}</span>
        {props.takenAs === undefined ? (
          <Act onPress={props.onTake} notNow={props.notNow}>
            Take it
          </Act>
        ) : (
          <ActLink to={addressOfDrill(props.takenAs)}>Open what was taken</ActLink>
        )}
      </h3>
      <DrillPicture
        drill={drill}
        upright={false}
        postcard
        idPrefix={`idea-${idea.shape}`}
        lengths={team.lengths}
      />
      <p>{rateSaid(idea)}</p>
      <p className="idea-figures">
        <span>
          {idea.likeness !== null && 'people stand '}
          <Reading
            estimate
            value={idea.likeness === null ? 'nobody stands' : lengthSaid(idea.likeness.placesM, team.lengths)}
            why={likenessSaid(idea, team.lengths)}
          />{' '}
          {idea.likeness === null ? 'where somebody stood' : 'from where they stood'}
        </span>
        <span>
          <Reading
            estimate
            value={numberSaid(idea.repsPerMinute)}
            why={`Reps a minute over eight minutes, with ${isRosterEmpty(team) ? 'a full team of 20 skaters, as nobody is on the roster yet' : 'the skaters and goalies of the team'}, when the next starts as soon as one has ended.`}
          />{' '}
          reps a minute
        </span>
        <span>
          <Reading
            estimate
            value={`${numberSaid(moving)} of ${props.skaters}`}
            why="Who moves inside a rep, on the mean of the block."
          />{' '}
          move
        </span>
        <span>
          <Reading
            value={String(idea.partCount)}
            why={`Its order among the three: ${termsSaid(idea)}, in metres of likeness; less is better. The weights are estimates of ours.${hasTouch(idea) ? ' Two touch in it: it stands after those in which nobody does.' : ''}`}
          />{' '}
          parts
        </span>
      </p>
      <p className="q2">
        {findingsSaid(idea)} {versionSaid('Simpler', idea.simpler)} {versionSaid('Harder', idea.harder)}
      </p>
    </li>
  );
}

/** A picture is no document: its day says nothing. */
const EARLY = '2000-01-01T00:00:00Z';
