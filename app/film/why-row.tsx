import { type ReactNode, useId, useState } from 'react';
import { ActLink } from '../parts/act.tsx';
import { Slip } from '../parts/slip.tsx';

/**
 * A line of a table with one figure that answers *why*. The answer opens as a line of its own below, as wide as the
 * table, so that no column is squeezed by it. Upright is measured or has a source; sloping is an estimate.
 */
export function WhyRow({
  columns,
  why,
  value,
  plusMinus,
  estimate,
  warm,
  className,
  testId,
  isSelected,
  children,
}: {
  readonly columns: number;
  readonly why: ReactNode;
  readonly value: string;
  readonly plusMinus?: string | undefined;
  readonly estimate?: boolean;
  readonly warm?: boolean;
  readonly className?: string;
  readonly testId?: string;
  readonly isSelected?: boolean;
  /** The cells, with the figure where it belongs. */
  readonly children: (figure: ReactNode) => ReactNode;
}) {
  const [isAsked, setAsked] = useState(false);
  const id = useId();
  const look = ['why', 'b', estimate && 'est', warm && 'warm', isAsked && 'is-hover'];
  const figure = (
    <>
      <button
        type="button"
        className={look.filter(Boolean).join(' ')}
        aria-expanded={isAsked}
        aria-controls={id}
        onClick={() => setAsked(!isAsked)}
      >
        {value}
        <span className="vh">, why?</span>
      </button>
      {plusMinus !== undefined && <span className="pm"> {plusMinus}</span>}
    </>
  );
  return (
    <>
      <tr className={className} data-testid={testId} aria-selected={isSelected}>
        {children(figure)}
      </tr>
      {isAsked && (
        <tr className="why-row">
          <td colSpan={columns}>
            <Slip id={id} onClose={() => setAsked(false)}>
              {why}{' '}
              <ActLink bare to="/figures">
                What the figures rest on
              </ActLink>
            </Slip>
          </td>
        </tr>
      )}
    </>
  );
}
