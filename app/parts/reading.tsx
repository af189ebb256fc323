import { type ReactNode, useId, useState } from 'react';
import { ActLink } from './act.tsx';
import { Slip } from './slip.tsx';

/**
 * A computed figure with its ±. Pressing it answers *why* in a slip below, which pushes the page, and leads to the
 * defaults with their sources.
 * Upright is measured or has a source; sloping is an estimate.
 */
export function Reading(props: {
  readonly value: string;
  readonly plusMinus?: string | undefined;
  readonly estimate?: boolean;
  readonly warm?: boolean;
  readonly big?: boolean;
  readonly why: ReactNode;
}) {
  const [isAsked, setAsked] = useState(false);
  const id = useId();
  const look = [
    'why',
    'b',
    props.estimate && 'est',
    props.warm && 'warm',
    props.big && 'big',
    isAsked && 'is-hover',
  ];
  return (
    <>
      <button
        type="button"
        className={look.filter(Boolean).join(' ')}
        aria-expanded={isAsked}
        aria-controls={id}
        onClick={() => setAsked(!isAsked)}
      >
        {props.value}
        <span className="vh">, why?</span>
      </button>
      {props.plusMinus !== undefined && <span className="pm"> {props.plusMinus}</span>}
      {isAsked && (
        <Slip id={id} onClose={() => setAsked(false)}>
          {props.why}{' '}
          <ActLink bare to="/figures">
            What the figures rest on
          </ActLink>
        </Slip>
      )}
    </>
  );
}
