import { inOrder, type Skater, type Team } from '@icewright/book';
import { OWN_SPEED_SD_RATIO } from '@icewright/engine';
import { useState } from 'react';
import { numberSaid } from '../parts/figures.ts';
import { named } from '../parts/named.ts';
import { Reading } from '../parts/reading.tsx';
import { timedSprintOf } from '../parts/timed-model.ts';
import { edit, endStep } from './book.ts';
import { gatesOf, gatesSaid } from './gate-words.ts';
import './timed-skating.css';

/** Sprints of the team by gates, and the top speed and time constant that fit them: drills can be skated by these people. */
export function TimedSkating({ team, teamId }: { readonly team: Team; readonly teamId: string }) {
  const skaters = inOrder(team.skaters).filter(([, { position }]) => position !== 'G');
  if (skaters.length === 0) return null;
  return (
    <section className="sec timed-skating">
      <h2>
        Timed skating <span className="q3">a drill can be skated by those who are timed</span>
      </h2>
      <p className="q2">
        A sprint in full gear from a standing start, by gates: metres and seconds, as in{' '}
        <i>5 m 1.45, 10 m 2.25, 20 m 3.62</i>. Three distances or more; several sprints may stand one after
        the other.
      </p>
      {skaters.map(([id, skater]) => (
        <TimedRow key={id} id={id} skater={skater} teamId={teamId} />
      ))}
    </section>
  );
}

function TimedRow({ id, skater, teamId }: { id: string; skater: Skater; teamId: string }) {
  const kept = gatesSaid(skater.timed);
  const [typed, setTyped] = useState<string | null>(null);
  const [whyNot, setWhyNot] = useState<string | null>(null);
  const who = `${skater.number} ${named(skater.name, 'skater')}`;
  const keep = () => {
    if (typed === null) return;
    const read = gatesOf(typed);
    if (read.kind === 'refused') return setWhyNot(read.said);
    setWhyNot(null);
    setTyped(null);
    if (gatesSaid(read.gates) === kept) return;
    endStep(teamId);
    const path = ['skaters', id, 'timed'];
    if (read.gates === undefined) edit(teamId).remove(path);
    else edit(teamId).set(path, read.gates);
    endStep(teamId);
  };
  return (
    <div className="timed-row">
      <label>
        <span className="timed-who">{who}</span>
        <input
          className="entry"
          aria-label={`Gates of ${who}`}
          placeholder="not timed"
          value={typed ?? kept}
          maxLength={1000}
          onChange={event => setTyped(event.target.value)}
          onBlur={keep}
          onKeyDown={event => event.key === 'Enter' && keep()}
        />
      </label>
      <Fitted skater={skater} />
      {whyNot !== null && (
        <p className="cap warm" role="status">
          {whyNot}
        </p>
      )}
    </div>
  );
}

function Fitted({ skater }: { readonly skater: Skater }) {
  if (skater.timed === undefined) return null;
  const sprint = timedSprintOf(skater.timed);
  if (sprint === null)
    return (
      <p className="cap warm" role="status">
        No skater’s sprint fits these times: look at them again.
      </p>
    );
  const { standardErrors: errors } = sprint;
  return (
    <p className="timed-fit">
      <Reading
        estimate
        value={`${numberSaid(sprint.topSpeedMps)} m/s`}
        plusMinus={errors === null ? undefined : `± ${numberSaid(1.96 * errors[0])}`}
        why={
          <>
            Top speed and time constant of the sprint law by least squares over {sprint.timesCount} times, the
            start shifted in time (Stenroth, Vartiainen and Karjalainen 2020). τ {numberSaid(sprint.tauS, 2)}{' '}
            s{errors === null ? '' : ` ± ${numberSaid(1.96 * errors[1], 2)} s`}.{' '}
            {errors === null ? 'With three times nothing is left to tell their ± by. ' : '± holds 95 %. '}
            In many reps both spread by {numberSaid(OWN_SPEED_SD_RATIO.value * 100)} % from rep to rep.
          </>
        }
      />{' '}
      <span className="q3">top speed, τ {numberSaid(sprint.tauS, 2)} s</span>
    </p>
  );
}
