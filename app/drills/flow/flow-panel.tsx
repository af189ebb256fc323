import type { Drill, Team } from '@icewright/book';
import type { FlowResult, NoFlow, Run } from '@icewright/engine';
import { Act } from '../../parts/act.tsx';
import { countSaid, numberSaid } from '../../parts/figures.ts';
import { isRosterEmpty } from '../../parts/who-is-here.ts';
import type { Write } from '../write.ts';
import './flow.css';
import { FlowFields } from './flow-fields.tsx';
import { FlowFigures } from './flow-figures.tsx';
import { missingSaid, sitsOutSaid, withHowManySaid } from './flow-words.ts';
import { linesDrawn } from './flow-writes.ts';
import { NearTheGame } from './near-the-game.tsx';
import type { Flowing } from './use-flow.ts';

/** The whole block of the drill: how reps follow each other, and what that gives everybody. */
export function FlowPanel(props: {
  readonly id: string;
  readonly drill: Drill;
  readonly flowing: Flowing;
  readonly run: Run | null;
  readonly team: Team;
  readonly onKeep: (writes: Write[]) => void;
}) {
  const { drill, flowing, run, team, onKeep } = props;
  const { flow } = flowing;
  if (flow === null || flow === 'noSkaterDrawn') return null;
  return (
    <section className="sec flow-panel">
      <h2>
        In {countSaid(drill.minutes, 'minute')} <span className="q3">{headSaid(flow)}</span>
      </h2>
      <FlowFields id={props.id} drill={drill} here={flowing.here} onHere={flowing.onHere} onKeep={onKeep} />
      {isRosterEmpty(team) && (
        <p className="q2">
          Nobody is on the roster yet: counted for {countSaid(flowing.here.skaters, 'skater')}, a full team
          unless you say otherwise.
        </p>
      )}
      {typeof flow === 'string' ? (
        <p className="q2">{NO_FLOW_SAID[flow]}</p>
      ) : (
        <>
          <FlowFigures
            drill={drill}
            flow={flow}
            missing={flowing.missing}
            lengths={team.lengths}
            more={
              drill.from !== undefined &&
              run !== null && <NearTheGame drill={drill} from={drill.from} run={run} team={team} />
            }
          />
          <p className="q2">
            {sitsOutSaid(drill, flow)} {withHowManySaid(flowing.everybody)}{' '}
            {flowing.missing !== null && missingSaid(drill, flow, flowing.missing)}
          </p>
          <LinesDrawn drill={drill} flow={flow} onKeep={onKeep} />
        </>
      )}
    </section>
  );
}

/** Where more are here than the drawing shows, it can be made to show them. */
function LinesDrawn(props: {
  readonly drill: Drill;
  readonly flow: FlowResult;
  readonly onKeep: (writes: Write[]) => void;
}) {
  const writes = linesDrawn(props.drill, props.flow);
  if (writes.length === 0) return null;
  const counts = props.flow.lines
    .filter(line => line.end === 0)
    .map(line => `${props.drill.spots[line.spot]?.role ?? '?'} ${line.skaterCount}`);
  return (
    <p className="q2 flow-lines">
      Lines at the whistle: {counts.join(', ')}. <Act onPress={() => props.onKeep(writes)}>Draw them so</Act>
    </p>
  );
}

const headSaid = (flow: FlowResult | NoFlow): string =>
  typeof flow === 'string'
    ? ''
    : `${countSaid(flow.repCount, 'rep')}, one every ${numberSaid(flow.everyS)} s`;

const NO_FLOW_SAID: Readonly<Record<Exclude<NoFlow, 'noSkaterDrawn'>, string>> = {
  nobodyHere: 'Nobody is here.',
  nothingHappens: 'Nothing happens in a rep yet, so there is nothing to count.',
  repLongerThanBlock: 'One rep takes longer than these minutes.',
};
