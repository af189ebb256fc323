import type { Drill, Practice, Team } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { BareSheet, DrillPicture } from '../parts/drill-picture.tsx';
import { Empty } from '../parts/empty.tsx';
import { clockAfter, clockSaid, type Lengths } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { useWidth } from '../parts/use-width.ts';
import { clockLabelsOf } from './clock-labels.ts';
import { endsSaid } from './ends-said.ts';
import type { Schedule, TimedBlock } from './schedule.ts';
import { handClasses, useReorder } from './use-reorder.ts';

/** A block this short has no room for a picture: its name stands on end. */
const NARROW_MINUTES = 4;

/** The practice over time: minutes across on the graduated rule, the sheet upright. On a phone the time runs down. */
export function PlanOverTime(props: {
  readonly team: Team;
  readonly practice: Practice;
  readonly schedule: Schedule;
  readonly drills: ReadonlyMap<string, Drill>;
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
  readonly onMove: (id: string, toIndex: number) => void;
  readonly onMinutes: (id: string, minutes: number) => void;
  readonly onAdd: () => void;
}) {
  const { team, practice, schedule, drills, chosen, onChoose, onMinutes } = props;
  const isNarrow = useIsNarrow(760);
  const ids = schedule.blocks.map(({ id }) => id);
  const { hand, handle, onKeyDown } = useReorder(ids, isNarrow ? 'down' : 'across', props.onMove);
  if (ids.length === 0) {
    return (
      <Empty says="An empty sheet of ice. Put the drill of the habit that needs it most first.">
        <Act onPress={props.onAdd}>Add a block</Act>
      </Empty>
    );
  }
  const span = Math.max(schedule.iceMinutes, schedule.usedMinutes);
  const clockOf = (minute: number) => clockSaid(clockAfter(practice.starts, minute), team.clockFace);
  return (
    <div className="plan-frame">
      {!isNarrow && <Rail team={team} drills={[...drills.values()]} />}
      {!isNarrow && <Axis span={span} iceMinutes={schedule.iceMinutes} clockOf={clockOf} />}
      <ol className={isNarrow ? 'plan-down' : 'plan'} data-list>
        {schedule.blocks.map(timed => (
          <li
            key={timed.id}
            data-item={timed.id}
            className={classOf(timed, chosen, hand, ids)}
            style={
              isNarrow
                ? carriedBy(hand?.id === timed.id ? hand.byPx : 0)
                : placeOf(timed, span, hand?.id === timed.id ? hand.byPx : 0)
            }
          >
            <button
              type="button"
              className="block-head"
              aria-pressed={chosen === timed.id}
              aria-describedby="plan-keys"
              onClick={() => onChoose(timed.id)}
              onKeyDown={event => {
                onKeyDown(timed.id)(event);
                const by = event.key === '+' ? 1 : event.key === '-' ? -1 : 0;
                if (by !== 0) onMinutes(timed.id, timed.block.minutes + by);
              }}
              {...handle(timed.id)}
            >
              <span className="block-time">
                <b className="b">{clockSaid(timed.startsClock, team.clockFace)}</b>{' '}
                <span className="q3">{timed.block.minutes} min</span>
              </span>
              <span className="block-title w">{named(timed.block.title, 'block')}</span>
            </button>
            <BlockPicture
              timed={timed}
              drills={drills}
              lengths={team.lengths}
              isNarrow={isNarrow}
              onChoose={onChoose}
            />
            <div className="block-words">
              {timed.block.leads !== '' && <p className="q2">{timed.block.leads}</p>}
              {timed.block.says !== '' && <p className="w block-says">{timed.block.says}</p>}
              {timed.block.pucks !== '' && <p className="q3">{timed.block.pucks}</p>}
            </div>
          </li>
        ))}
      </ol>
      <p className="cap" id="plan-keys">
        <span className="by-key">
          Drag a block by its head, or <kbd>Alt</kbd> with the arrows, to move it; <kbd>+</kbd> and{' '}
          <kbd>-</kbd> for its minutes.
        </span>
        <span className="by-finger">Hold a block by its head and drag it to move it.</span>
      </p>
    </div>
  );
}

/** Names the rows to its right, and the thirds of the upright sheets. */
function Rail({ team, drills }: { readonly team: Team; readonly drills: readonly Drill[] }) {
  const [far, near] = endsSaid(drills);
  return (
    <div className="rail" aria-hidden="true">
      <div className="rail-sheet">
        <BareSheet rink={team.rink} />
        <span className="w far">{far}</span>
        <span className="w middle">middle</span>
        <span className="w near">{near}</span>
      </div>
      <p className="cap">
        leads
        <br />
        says
        <br />
        pucks
      </p>
    </div>
  );
}

function BlockPicture(props: {
  readonly timed: TimedBlock;
  readonly drills: ReadonlyMap<string, Drill>;
  readonly lengths: Lengths;
  readonly isNarrow: boolean;
  readonly onChoose: (id: string) => void;
}) {
  const { timed, drills } = props;
  const { drill: drillId } = timed.block;
  const drill = drillId === undefined ? undefined : drills.get(drillId);
  if (drillId === undefined) return <div className="block-picture none" />;
  if (drill === undefined) {
    return (
      <div className="block-picture none">
        <p className="cap">The drill is not here.</p>
      </div>
    );
  }
  return (
    <div className="block-picture">
      <DrillPicture
        drill={drill}
        upright={!props.isNarrow}
        idPrefix={`plan-${timed.id}`}
        lengths={props.lengths}
      />
    </div>
  );
}

/** A figure of a clock time on the rule, and the gap after it, in letters of the page. */
const FIGURE_LETTERS = 0.36;
const GAP_LETTERS = 0.5;

function Axis(props: {
  readonly span: number;
  readonly iceMinutes: number;
  readonly clockOf: (minute: number) => string;
}) {
  const { span, iceMinutes } = props;
  const [ref, width] = useWidth<HTMLDivElement>();
  const longest = Math.max(props.clockOf(0).length, props.clockOf(iceMinutes).length);
  const labelLetters = longest * FIGURE_LETTERS + GAP_LETTERS;
  const letterPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  const roomMinutes = width === 0 ? 0 : (span * labelLetters * letterPx) / width;
  const { minutes, step } = clockLabelsOf(span, iceMinutes, roomMinutes);
  const marks = Array.from({ length: Math.floor(span / step) + 1 }, (_, index) => index * step);
  return (
    <div className="axis" aria-hidden="true" ref={ref}>
      {minutes.map(minute => (
        <span
          key={minute}
          className={
            minute === 0 ? 'b' : minute === iceMinutes ? 'b last' : minute % (2 * step) === 0 ? 'even' : 'odd'
          }
          style={{ left: `${(minute / span) * 100}%` }}
        >
          {props.clockOf(minute)}
        </span>
      ))}
      {marks.map((minute, index) => (
        <i
          key={minute}
          className={index % 2 === 0 ? 'full' : 'open'}
          style={{
            left: `${(minute / span) * 100}%`,
            width: `${(Math.min(step, span - minute) / span) * 100}%`,
          }}
        />
      ))}
      {span > iceMinutes && <i className="ice-ends" style={{ left: `${(iceMinutes / span) * 100}%` }} />}
    </div>
  );
}

const placeOf = ({ startMinute, block }: TimedBlock, span: number, byPx: number) => ({
  left: `${(startMinute / span) * 100}%`,
  width: `${(block.minutes / span) * 100}%`,
  ...(byPx === 0 ? {} : { transform: `translateX(${byPx}px)` }),
});

const carriedBy = (byPx: number) => (byPx === 0 ? undefined : { transform: `translateY(${byPx}px)` });

function classOf(
  { id, block }: TimedBlock,
  chosen: string | null,
  hand: { readonly id: string; readonly toIndex: number } | null,
  ids: readonly string[],
): string {
  const names = ['block', ...handClasses(id, hand, ids)];
  if (block.minutes <= NARROW_MINUTES) names.push('slim');
  if (id === chosen) names.push('chosen');
  return names.join(' ');
}
