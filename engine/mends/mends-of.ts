import type { DrillPlan } from '../drill/drill.ts';
import { playableOf } from '../drill/playable.ts';
import type { Rink } from '../rink/rink.ts';
import { runMemory } from '../run/recorder.ts';
import { type RunOptions, runDrill } from '../run/run-drill.ts';
import type { Finding, Run } from '../run/run-result.ts';
import type { Level } from '../skater/level.ts';
import type { ActId } from '../units/ids.ts';
import type { Mend, NoMend } from './mend.ts';
import { mendCandidatesOf } from './mend-candidates.ts';
import { MEND_EASES_TO } from './mend-rows.ts';
import { planAfter } from './plan-after.ts';

export interface MendAsked {
  readonly plan: DrillPlan;
  readonly rink: Rink;
  readonly level: Level;
  /** Skaters of their own instead of the level's, as the run with the finding had them. */
  readonly models?: NonNullable<RunOptions['models']>;
  /** One of the findings of the plan's own run. */
  readonly finding: Finding;
  /** Ids for an act and a puck that a mend may add; not in the plan yet. */
  readonly newAct: ActId;
  readonly newPuck: string;
  /** What else is found in a plan besides its run: of its flow. A mend brings nothing new to look at there either. */
  readonly more?: (plan: DrillPlan, run: Run) => readonly Finding[];
}

/**
 * One suggested mend for a finding: the smallest of the changes thought of (metres, seconds, m/s; sizes in `mend-rows.ts`) after which, in a run
 * of its own, the finding is gone, nothing new is to be looked at, and whoever got a pass, shot or caught somebody
 * still does. `noMend` when none of at most 40 does, or when the plan cannot be run. Nothing is changed: the caller applies the writes.
 */
export const mendOf = (asked: MendAsked): Mend | NoMend => {
  const search = mendSearch(asked);
  let step = search.next();
  while (!step.done) step = search.next();
  return step.value;
};

/** As `mendOf`, one run a step, so that a screen stays quick and can stop in between. Yields how many have been tried, from 0. */
export function* mendSearch(asked: MendAsked): Generator<number, Mend | NoMend, void> {
  const { plan, rink, level, finding } = asked;
  const playable = playableOf(plan, rink, level);
  if (playable.kind !== 'playable') return { kind: 'noMend', reason: 'nothingToTry', triedCount: 0 };
  const setting = asked.models === undefined ? {} : { models: asked.models };
  const run = runDrill(playable, setting);
  const more = asked.more ?? (() => []);
  const before = outcomeOf(run, more(plan, run));
  const candidates = mendCandidatesOf({ ...asked, playable, run });
  // Only what is tried is written over: the candidates are read from the run with the finding.
  const memory = runMemory();
  let triedCount = 0;
  let eased: Mend | undefined;
  for (const { says, writes } of candidates) {
    yield triedCount;
    triedCount++;
    const after = planAfter(plan, writes);
    const tried = playableOf(after, rink, level);
    if (tried.kind !== 'playable') continue;
    const again = runDrill(tried, { ...setting, memory });
    const found = more(after, again);
    const outcome = outcomeOf(again, found);
    if (!isWell(finding, before, outcome)) continue;
    const mend = { kind: 'mend', finding, says, writes } as const;
    if (isGone(finding, before, outcome)) return mend;
    const easesTo = easedTo(finding, [...again.findings, ...found]);
    if (easesTo === undefined || shortOf(finding, easesTo) > leastShort(finding, eased)) continue;
    eased = { ...mend, easesTo };
  }
  if (eased) return eased;
  return { kind: 'noMend', reason: triedCount > 0 ? 'noneHelps' : 'nothingToTry', triedCount };
}

/** How often each finding and each thing that is to happen is in a run, by what it is and whom it is about. */
interface Outcome {
  readonly findings: ReadonlyMap<string, number>;
  readonly looks: ReadonlyMap<string, number>;
  readonly happened: ReadonlyMap<string, number>;
}

const outcomeOf = (run: Run, more: readonly Finding[]): Outcome => {
  const findings = [...run.findings, ...more];
  return {
    findings: counted(findings.map(keyOf)),
    looks: counted(findings.filter(({ weight }) => weight === 'look').map(keyOf)),
    happened: counted(
      run.events.flatMap(event =>
        isToHappen(event.kind) && 'spot' in event ? `${event.kind} ${event.spot}` : [],
      ),
    ),
  };
};

const isToHappen = (kind: string): boolean => kind === 'receive' || kind === 'shot' || kind === 'caught';

/** The same finding in another run: of the same kind, of the same people, in the same act. Whichever line stands longest, it is the one that stands too long. */
const keyOf = ({ kind, spots, act }: Finding): string =>
  kind === 'lineStandsTooLong' ? kind : [kind, ...[...spots].sort(), act ?? ''].join(' ');

const counted = (keys: readonly string[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
};

const isGone = (finding: Finding, before: Outcome, after: Outcome): boolean =>
  (after.findings.get(keyOf(finding)) ?? 0) < (before.findings.get(keyOf(finding)) ?? 0);

/** Nothing new is to be looked at, and what was to happen still does. */
const isWell = (finding: Finding, before: Outcome, after: Outcome): boolean =>
  [...after.looks].every(([look, count]) => count <= (before.looks.get(look) ?? 0)) &&
  [...before.happened].every(
    ([what, count]) => (after.happened.get(what) ?? 0) >= count || isWhatIsMended(what, finding),
  );

/** The value of the same finding after a change, of what is only worth knowing; undefined of what must go, or is measured otherwise now. */
const easedTo = (finding: Finding, after: readonly Finding[]): number | undefined =>
  finding.weight === 'know'
    ? after.find(one => keyOf(one) === keyOf(finding) && one.unit === finding.unit)?.value
    : undefined;

const shortOf = ({ threshold }: Finding, value: number): number => Math.abs(value - threshold);

/** A change eases when it takes away a quarter of what is lacking, and more than the one before. */
const leastShort = (finding: Finding, eased: Mend | undefined): number =>
  eased?.easesTo === undefined
    ? EASES_TO * shortOf(finding, finding.value)
    : shortOf(finding, eased.easesTo) - 1e-9;

const EASES_TO = MEND_EASES_TO.value;

/** The catch is what a mend of contact takes away. */
const isWhatIsMended = (what: string, { kind, spots }: Finding): boolean =>
  kind === 'contactBelowAge' && what === `caught ${spots[1]}`;
