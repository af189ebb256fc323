import type { Drill } from '@icewright/book';
import { type Finding, findingSentence } from '@icewright/engine';
import type { Lengths } from '../parts/figures.ts';
import { inUnitsOf, numberSaid } from '../parts/figures.ts';
import { Reading } from '../parts/reading.tsx';

/** What the coach must know before the whistle. Pressing one shows its moment and place. */
export function FindingsPanel(props: {
  readonly drill: Drill;
  readonly findings: readonly Finding[];
  readonly issues: readonly string[];
  /** Nobody on the ice has anything to do yet, so nothing was looked for. */
  readonly isStill: boolean;
  readonly lengths: Lengths;
  readonly onLook: (finding: Finding) => void;
}) {
  const { findings, issues, isStill } = props;
  const toLookAt = findings.filter(finding => finding.weight === 'look').length;
  return (
    <section className="sec drill-findings">
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
      {!isStill && issues.length === 0 && findings.length === 0 && (
        <p className="q2">Nothing stands in the way of this rep. It is an estimate: look at the ice first.</p>
      )}
      <ol className="findings">
        {findings.map((finding, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the number is the flag on the ice
          <li key={index} className={finding.weight}>
            <button type="button" className="flag-number" onClick={() => props.onLook(finding)}>
              {index + 1}
              <span className="vh">, show it on the ice</span>
            </button>
            <p>
              {findingSentence(finding, props.drill, props.lengths)}{' '}
              <Reading
                value={`${numberSaid(finding.timeS)} s`}
                estimate={finding.status === 'estimate'}
                why={
                  <>
                    <b>
                      {inUnitsOf(props.lengths, finding.value, finding.unit)} against{' '}
                      {inUnitsOf(props.lengths, finding.threshold, finding.unit)}
                    </b>
                    , {finding.status}. {finding.source}
                  </>
                }
              />
            </p>
          </li>
        ))}
      </ol>
    </section>
  );
}

function summary(look: number, know: number, issues: number): string {
  if (issues > 0) return 'not playable';
  if (look + know === 0) return 'none';
  return [look > 0 && `${look} to look at`, know > 0 && `${know} to know`].filter(Boolean).join(', ');
}
