import type { Drill } from '@icewright/book';
import {
  type Finding,
  isSameWant,
  type Mend,
  type MendEffect,
  mendSentence,
  type NoMend,
  type Outcome,
  type RateInterval,
  type Rink,
} from '@icewright/engine';
import { type KeyboardEvent, useRef, useState } from 'react';
import type { Lengths } from '../../parts/figures.ts';
import { useChildrenInView } from '../../parts/use-in-view.ts';
import { wantClause } from '../many/habit-wants.ts';
import type { People } from '../people/people-of.ts';
import type { Hand } from '../use-hand.ts';
import { afterWrites } from '../write.ts';
import { FindingRow } from './finding-row.tsx';
import { isSameDrill } from './is-same-drill.ts';
import { effectSaid } from './mend-effect-words.ts';
import { rateIn, useMendEffects, type Wanted } from './use-mend-effects.ts';
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
  /** What is wanted of the drill; null when nothing can be yet. */
  readonly wanted: Wanted | null;
  readonly more?: MoreFindings;
}) {
  const { findings, issues, isStill, hand, lengths } = props;
  const { drill } = hand;
  const { wanted } = props;
  const list = useRef<HTMLOListElement>(null);
  const [done, setDone] = useState<Done | null>(null);
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
  const effectOf = useMendEffects({ drill, mends, inView, wanted, bySpot: props.people.bySpot });
  const want = wanted && wantClause(wanted.outcome, drill, wanted.habitWants);
  const toLookAt = findings.filter(finding => finding.weight === 'look').length;
  const mended = (mend: Mend) => {
    const effect = effectOf(mend) ?? null;
    const before = wanted?.tally ? rateIn(wanted.tally) : undefined;
    const said = mendSentence(mend, drill, lengths);
    setDone({ said, after: afterWrites(drill, mend.writes), outcome: wanted?.outcome, before, effect });
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
        {done !== null && isSameDrill(drill, done.after) && (
          <>
            Done: {done.said} {doneSaid(done, wanted, want)} Undo puts it back.
          </>
        )}
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
            effect={effectIn(mends[index], effectOf)}
            want={want}
            lengths={lengths}
            onLook={() => props.onLook(finding, index + 1)}
            onMend={mended}
          />
        ))}
      </ol>
    </section>
  );
}

/** A mend that was done, and what was known of what is wanted then. */
interface Done {
  readonly said: string;
  readonly after: Drill;
  readonly outcome: Outcome | undefined;
  readonly before: RateInterval | null | undefined;
  readonly effect: MendEffect | null;
}

/** What it did to what is wanted: as the page counts it now, until that is known as it was foretold. */
function doneSaid({ outcome, before, effect }: Done, wanted: Wanted | null, want: string | null): string {
  if (wanted === null || want === null || outcome === undefined) return '';
  if (!isSameWant(outcome, wanted.outcome)) return '';
  const { tally } = wanted;
  const known = before !== undefined && tally !== null ? { before, after: rateIn(tally) } : effect;
  return known === null ? '' : effectSaid(known, want, true);
}

const effectIn = (
  mend: Mend | NoMend | undefined,
  effectOf: ReturnType<typeof useMendEffects>,
): MendEffect | null | undefined => (mend?.kind === 'mend' ? effectOf(mend) : undefined);

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
