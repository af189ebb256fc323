import type { Drill } from '@icewright/book';
import type { Finding, SpotId } from '@icewright/engine';
import { Act } from '../parts/act.tsx';
import { countSaid } from '../parts/figures.ts';

/**
 * Where the page is narrow the acts and findings stand below the board: this line beside it leads there. It keeps its room while there
 * is nothing to lead to, or the ice would slip from under the hand that sets the first skater on it.
 */
export function BelowLine(props: {
  readonly drill: Drill;
  readonly chosen: SpotId | null;
  readonly findings: readonly Finding[];
}) {
  const spot = props.chosen === null ? undefined : props.drill.spots[props.chosen];
  return (
    <p className="below-line">
      {spot !== undefined && <Act onPress={() => show('.chosen-spot')}>What {spot.role} does</Act>}
      {props.findings.length > 0 && (
        <Act onPress={() => show('.drill-findings')}>{countSaid(props.findings.length, 'finding')}</Act>
      )}
    </p>
  );
}

function show(selector: string): void {
  document.querySelector(selector)?.scrollIntoView({ block: 'start', behavior: 'auto' });
}
