import type { Drill } from '@icewright/book';
import { lineWords, type Run, type RunEvent } from '@icewright/engine';
import { numberSaid } from '../parts/figures.ts';
import { roleOf } from './act-words.ts';

/** What happens in the rep, in order; pressing one goes to its moment. */
export function EventsPanel(props: {
  readonly drill: Drill;
  readonly run: Run;
  readonly onSeek: (timeS: number) => void;
}) {
  const { drill, run } = props;
  const shown = run.events.flatMap(event => {
    const said = eventSaid(drill, event);
    return said === null ? [] : [{ timeS: event.timeS, said }];
  });
  if (shown.length === 0) return null;
  return (
    <section className="sec">
      <h2>
        In this rep <span className="q3">{numberSaid(run.durationS)} s</span>
      </h2>
      <ol className="rep-events">
        {shown.map(({ timeS, said }) => (
          <li key={`${timeS} ${said}`}>
            <button type="button" onClick={() => props.onSeek(timeS)}>
              <span className="est">{numberSaid(timeS)} s</span> {said}
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}

function eventSaid(drill: Drill, event: RunEvent): string | null {
  switch (event.kind) {
    case 'pass':
      return `${roleOf(drill, event.spot)} passes to ${roleOf(drill, event.to)}`;
    case 'receive':
      return `${roleOf(drill, event.spot)} has it`;
    case 'intercept':
      return `${roleOf(drill, event.spot)} cuts the pass`;
    case 'bounce':
      return `off the ${event.off ?? 'boards'}`;
    case 'shot':
      return `${roleOf(drill, event.spot)} shoots`;
    case 'goal':
      return 'in the net';
    case 'save':
      return `${roleOf(drill, event.spot)} stops it`;
    case 'wide':
      return 'wide';
    case 'turnsRound':
      return `${roleOf(drill, event.spot)} turns to ${event.to}`;
    case 'pickUp':
      return `${roleOf(drill, event.spot)} picks a puck up`;
    case 'leave':
      return `${roleOf(drill, event.spot)} leaves the puck`;
    case 'steal':
      return `${roleOf(drill, event.spot)} wins it from ${roleOf(drill, event.from)}`;
    case 'loose':
      return `loose off ${roleOf(drill, event.spot)}`;
    case 'puckCrosses':
      return `puck over ${lineWords(event.line, drill)}`;
    case 'caught':
      return `${roleOf(drill, event.by)} has caught ${roleOf(drill, event.spot)}`;
    default:
      return null;
  }
}
