import type { Game, Team } from '@icewright/book';
import { type FlowSetting, IDEA_SHAPES, type Id, type Idea, judgeStandard } from '@icewright/engine';
import { useLocation } from 'wouter';
import { NOT_WRITTEN_SAID, writtenStandardOf } from '../../habits/written-standard.ts';
import { Act, ActLink } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { rosterOf } from '../../parts/who-is-here.ts';
import { addressOfHabit } from '../../shell/addresses.ts';
import { drillSceneOf } from '../drill-scene.ts';
import { clockText } from '../film-clock.ts';
import { sheetOfGame } from '../fit-of-freeze.ts';
import type { Desk } from '../freeze-desk.ts';
import type { FreezeView } from '../freeze-view.ts';
import { gameTitle } from '../game-words.ts';
import { IdeaRow } from './idea-row.tsx';
import { NO_PROBLEM_SAID, SHAPE_SAID } from './idea-words.ts';
import { takeIdea } from './take-idea.ts';
import { useTaken } from './taken-ideas.ts';
import { useIdeas } from './use-ideas.ts';
import './ideas.css';

/** What the reps of an idea are counted for: who is counted on the drill's own page, for as long as a new drill is planned. */
const flowFor = (team: Team): FlowSetting => {
  const { beyondLines, ...roster } = rosterOf(team);
  return { roster, minutes: NEW_DRILL_MIN, beyondLines };
};

const NEW_DRILL_MIN = 8;

/** How do I practise that? Three drills for this picture and its habit, computed. */
export function IdeasSection(props: {
  readonly gameId: string;
  readonly game: Game;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
}) {
  const { game, team, view, desk } = props;
  const [, go] = useLocation();
  const { isComputing, ideas, none, start, stop } = useIdeas();
  const { freeze } = view;
  const habit = freeze.habit && team.habits[freeze.habit];
  const standard = habit && writtenStandardOf(habit);
  const scene = view.ice && drillSceneOf(freeze, view.ice);
  const notNow =
    scene === undefined
      ? 'the pins must hold the picture first'
      : habit === undefined
        ? 'say first which habit this picture is about'
        : standard === undefined
          ? NOT_WRITTEN_SAID
          : undefined;
  const rink = sheetOfGame(game, team);
  const ask = () => {
    if (isComputing) return stop();
    if (scene === undefined || standard === undefined) return;
    const judgedId = view.ice && judgeStandard(view.ice.scene, standard).who[0];
    start({
      scene,
      attacks: freeze.attacks,
      standard,
      rink,
      level: team.level,
      flow: flowFor(team),
      judgedId,
    });
  };
  const titleOf = ({ shape }: Pick<Idea, 'shape'>) =>
    `${named(habit?.title ?? '', 'habit')}: ${SHAPE_SAID[shape].toLocaleLowerCase()}`;
  const taken = useTaken(team, desk.freezeId, ideas.map(titleOf));
  const said = `${gameTitle(game)}, ${clockText(freeze.filmTimeS, 1)}`;
  return (
    <section className="sec ideas">
      <h2>
        <span>
          How to practise it <span className="q3">three drills for this picture, computed</span>
        </span>
        <Act working={isComputing} notNow={notNow} onPress={ask}>
          {isComputing ? `Stop, ${ideas.length} of 3` : ideas.length > 0 ? 'Think again' : 'Three ideas'}
        </Act>
      </h2>
      {habit && standard === undefined && (
        <p className="q2">
          This habit is judged {NOT_WRITTEN_SAID}. A drill is for what a standard says.{' '}
          <ActLink bare to={addressOfHabit(freeze.habit as string)}>
            Write it
          </ActLink>
        </p>
      )}
      {none !== null && <p className="q2">{NO_PROBLEM_SAID[none]}</p>}
      <p className="vh" role="status">
        {isComputing ? 'Playing drills' : ideas.length > 0 ? `${ideas.length} ideas, the best first` : ''}
      </p>
      <ol className="idea-list">
        {ideas.map(idea => (
          <IdeaRow
            key={idea.shape}
            idea={idea}
            team={team}
            rink={rink}
            skaters={flowFor(team).roster.skaters}
            takenAs={taken(titleOf(idea))}
            notNow={isComputing ? 'their order is not known before all three are there' : undefined}
            onTake={() => {
              if (habit === undefined) return;
              const id = takeIdea(
                idea,
                {
                  title: titleOf(idea),
                  says: habit.says,
                  habit: freeze.habit as Id<'habit'>,
                  rink,
                  from: {
                    kind: 'freeze',
                    game: props.gameId as Id<'document'>,
                    freeze: desk.freezeId as Id<'freeze'>,
                    said,
                  },
                },
                team,
              );
              go(`/drills/${id}`);
            }}
          />
        ))}
        {isComputing &&
          IDEA_SHAPES.slice(ideas.length).map(shape => (
            <li key={shape} className="idea idea-coming q3">
              {SHAPE_SAID[shape]}: being played
            </li>
          ))}
      </ol>
    </section>
  );
}
