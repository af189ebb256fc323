import type { Drill } from '@icewright/book';
import {
  GAME_CHANGE_S,
  gameFlowOf,
  gameIceSqM,
  ICE_PER_SKATER_SQM,
  type Id,
  isNone,
  type Rink,
  type SmallGame,
  skatersOfGames,
} from '@icewright/engine';
import { Act } from '../../parts/act.tsx';
import { areaSaid, countSaid, type Lengths, numberSaid } from '../../parts/figures.ts';
import { Reading } from '../../parts/reading.tsx';
import type { WhoIsHere } from '../../parts/who-is-here.ts';
import type { Write } from '../write.ts';
import { GameFields } from './game-fields.tsx';
import './games.css';

/** Every small game of the drill: what is played, on how much ice, and how often each comes to play. */
export function GamePanel(props: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly here: WhoIsHere;
  readonly onHere: (here: WhoIsHere) => void;
  readonly lengths: Lengths;
  readonly onKeep: (writes: Write[]) => void;
  readonly onPick: (game: Id<'game'>) => void;
}) {
  const { drill, here, onKeep } = props;
  const shares = skatersOfGames(drill, here.skaters);
  const games = (Object.entries(drill.games) as unknown as [Id<'game'>, SmallGame][]).sort(
    ([, a], [, b]) => a.rank - b.rank,
  );
  return games.map(([id, game]) => (
    <section key={id} className="sec game-panel">
      <h2>
        Small game <span className="q3">{countSaid(shares[id] ?? 0, 'skater')} for it</span>
      </h2>
      <GameFields id={id} game={game} drill={drill} here={here} onHere={props.onHere} onKeep={onKeep} />
      <GameFigures {...props} game={game} skaters={shares[id] ?? 0} />
      <p className="game-acts">
        <Act onPress={() => props.onPick(id)}>Show its corners</Act>
        <Act onPress={() => onKeep([{ path: ['games', id], value: undefined }])}>Take it off</Act>
      </p>
    </section>
  ));
}

function GameFigures({
  drill,
  rink,
  game,
  skaters,
  lengths,
}: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly game: SmallGame;
  readonly skaters: number;
  readonly lengths: Lengths;
}) {
  const atOnce = game.usCount + game.themCount;
  const iceSqM = gameIceSqM(game, rink);
  const flow = gameFlowOf(game, skaters, drill.minutes);
  return (
    <dl className="flow-figures">
      {atOnce > 0 && (
        <div>
          <dt className="q3">ice for each</dt>
          <dd>
            <Reading
              value={areaSaid(iceSqM / atOnce, lengths)}
              warm={iceSqM / atOnce < ICE_PER_SKATER_SQM.value}
              why={
                <>
                  <b>{areaSaid(iceSqM, lengths)} inside the boards</b> for {atOnce} who play at once; goalies
                  not counted. Under {areaSaid(ICE_PER_SKATER_SQM.value, lengths)} it is crowded:{' '}
                  {ICE_PER_SKATER_SQM.source}.
                </>
              }
            />
          </dd>
        </div>
      )}
      {isNone(flow) ? (
        <div>
          <dt className="q3">shifts each</dt>
          <dd>{flow.reason === 'nobodyPlays' ? 'nobody plays' : 'one shift is longer than the minutes'}</dd>
        </div>
      ) : (
        <>
          <div>
            <dt className="q3">shifts each</dt>
            <dd>
              <Reading
                value={numberSaid(flow.meanGoes)}
                estimate
                why={
                  <>
                    <b>
                      {flow.goCount} shifts in {countSaid(drill.minutes, 'minute')}
                    </b>
                    , {numberSaid(GAME_CHANGE_S.value, 0)} s to change; the fewest {flow.fewestGoes}, the most{' '}
                    {flow.mostGoes}. {flow.usCount} of us and {flow.themCount} of them share them.
                  </>
                }
              />
            </dd>
          </div>
          <div>
            <dt className="q3">work : rest</dt>
            <dd>
              <Reading
                value={flow.restRatio === null ? '–' : `1 : ${numberSaid(flow.restRatio)}`}
                estimate
                why={
                  <>
                    <b>{numberSaid(game.shiftS, 0)} s a shift</b>
                    {flow.restS !== null && <>, {numberSaid(flow.restS, 0)} s between two shifts</>}. A shift
                    of international men is 44 s of play in 86 s, with two minutes and more between shifts.
                  </>
                }
              />
            </dd>
          </div>
        </>
      )}
    </dl>
  );
}
