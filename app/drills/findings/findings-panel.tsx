import type { Drill } from '@icewright/book';
import { type Finding, type Mend, mendSentence, type Rink } from '@icewright/engine';
import { type KeyboardEvent, useRef, useState } from 'react';
import type { Lengths } from '../../parts/figures.ts';
import { useChildrenInView } from '../../parts/use-in-view.ts';
import type { People } from '../people/people-of.ts';
import type { Hand } from '../use-hand.ts';
import { afterWrites } from '../write.ts';
import { FindingRow } from './finding-row.tsx';
import { isSameDrill } from './is-same-drill.ts';
import { type MoreFindings, useMends } from './use-mends.ts';
import './findings.css';

/**
 * What the coach must know before the whistle, each with the one change that would mend it. A flag pressed here, on the ice or in the
 * score is chosen in all three and the rep goes to its time.
 */
export function FindingsPanel(props: {
  readonly hand: Hand;
  /** Something is in a hand just now, though what is shown here may be a moment older. */
  readonly isHolding: boolean;
  readonly people: People;
  readonly rink: Rink;
  readonly findings: readonly Finding[];
  readonly issues: readonly string[];
  /** The findings belong to an earlier state of the drill. */
  readonly isStale: boolean;
  /** Nobody on the ice has anything to do yet, so nothing was looked for. */
  readonly isStill: boolean;
  /** A small game and nothing that anybody is told to do: no rep is computed. */
  readonly isGameAlone: boolean;
  readonly lengths: Lengths;
  /** Number of the chosen flag, from 1; null when none is. */
  readonly chosen: number | null;
  readonly onLook: (finding: Finding, number: number) => void;
  readonly more?: MoreFindings;
}) {
  const { findings, issues, isStill, hand, lengths } = props;
  const { drill } = hand;
  const list = useRef<HTMLOListElement>(null);
  const [done, setDone] = useState<{ readonly said: string; readonly after: Drill } | null>(null);
  const inView = useChildrenInView(list, findings.length);
  const mends = useMends({
    drill,
    rink: props.rink,
    models: props.people.inOneRep,
    findings,
    isAtRest: !props.isHolding && !props.isStale,
    inView,
    more: props.more,
  });
  const toLookAt = findings.filter(finding => finding.weight === 'look').length;
  const mended = (mend: Mend) => {
    setDone({ said: mendSentence(mend, drill, lengths), after: afterWrites(drill, mend.writes) });
    hand.keep(mend.writes);
    // The act pressed goes away with its finding: the hand stays in the list.
    list.current?.closest<HTMLElement>('section')?.focus();
  };
  return (
    <section className="sec drill-findings" tabIndex={-1} aria-label="Findings">
      <h2>
        Findings{' '}
        <span className="q3">
          {isStill ? 'nothing to look for yet' : summary(toLookAt, findings.length - toLookAt, issues.length)}
        </span>
      </h2>
      {issues.map(issue => (
        <p key={issue} className="issue">
          <b className="b warm">Cannot run yet:</b> {issue}
        </p>
      ))}
      {isStill && (
        <p className="q2">Nothing moves yet: choose somebody on the ice and say what comes first.</p>
      )}
      <p role="status" className="mend-done">
        {done !== null && isSameDrill(drill, done.after) && <>Done: {done.said} Undo puts it back.</>}
      </p>
      {!isStill && issues.length === 0 && findings.length === 0 && (
        <p className="q2">
          {props.isGameAlone
            ? 'No rep is computed in a small game: it is played as it comes. Its ice, its nets and who is here were looked at, and nothing is wrong with those.'
            : 'Nothing stands in the way of this rep. It is an estimate: look at the ice first.'}
        </p>
      )}
      <ol className="findings" ref={list} onKeyDown={event => goAlong(event, list.current)}>
        {findings.map((finding, index) => (
          <FindingRow
            // biome-ignore lint/suspicious/noArrayIndexKey: the number is the flag on the ice
            key={index}
            drill={drill}
            finding={finding}
            number={index + 1}
            isChosen={props.chosen === index + 1}
            mend={mends[index]}
            lengths={lengths}
            onLook={() => props.onLook(finding, index + 1)}
            onMend={mended}
          />
        ))}
      </ol>
    </section>
  );
}

/** Up and down lead from flag to flag; Enter presses the one that has the focus. */
function goAlong(event: KeyboardEvent, list: HTMLOListElement | null): void {
  const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (by === undefined || list === null) return;
  event.preventDefault();
  event.stopPropagation();
  const flags = [...list.querySelectorAll<HTMLButtonElement>('.flag-number')];
  const row = (event.target as Element).closest('li');
  const here = flags.findIndex(flag => row?.contains(flag));
  flags[Math.min(flags.length - 1, Math.max(0, here + by))]?.focus();
}

function summary(look: number, know: number, issues: number): string {
  if (issues > 0) return 'not playable';
  if (look + know === 0) return 'none';
  return [look > 0 && `${look} to look at`, know > 0 && `${know} to know`].filter(Boolean).join(', ');
}
