import type { DrillPlan } from '../drill/drill.ts';
import type { Finding } from '../run/run-result.ts';
import type { SpotId } from '../units/ids.ts';
import type { PlayedFlow } from './flow-result.ts';
import { PUCK_BACK_S, RETURN_MPS } from './flow-rows.ts';
import type { RepFacts, SpotFacts } from './rep-facts.ts';

/**
 * Skaters that are missing: for a spot that stands empty in some rep (value: those here; threshold: those the rep takes), or for a
 * beat that a line cannot keep because nobody is back yet (value: those of the line and the lines it feeds; threshold: those it would take).
 * When the next rep starts at the end of the one before, waiting for somebody is no fault. At most one finding.
 */
export const findTooFewSkaters = (plan: DrillPlan, rep: RepFacts, flow: PlayedFlow): readonly Finding[] => {
  const { source, status } = RETURN_MPS;
  const common = {
    kind: 'tooFewSkaters',
    weight: 'look',
    timeS: 0,
    unit: 'skaters',
    status,
    source,
  } as const;
  const empty = flow.unfilled[0];
  if (empty !== undefined)
    return [
      {
        ...common,
        ...placeOf(plan, empty.spot),
        value: flow.setting.roster.skaters,
        threshold: Math.max(flow.lines.length, flow.setting.roster.skaters + 1),
      },
    ];
  const next = plan.flow?.next;
  if (next === undefined || next.on === 'end') return [];
  const late = [...flow.lines].sort((a, b) => b.lateCount - a.lateCount)[0];
  if (late === undefined || late.lateCount === 0) return [];
  const group = groupOf(rep.spots, late.spot);
  const wantedS = next.on === 'every' ? next.seconds : flow.everyS;
  const turnS = wantedS * (plan.flow?.ends === 'byTurns' ? 2 : 1);
  const busyS = group.reduce((sum, facts) => sum + facts.freeS + facts.backS, 0);
  const here = flow.lines
    .filter(line => line.end === late.end && group.some(facts => facts.spot === line.spot))
    .reduce((sum, line) => sum + line.skaterCount, 0);
  const needed = Math.max(here + 1, Math.ceil(busyS / turnS));
  return [{ ...common, ...placeOf(plan, late.spot), value: here, threshold: needed }];
};

/**
 * Pucks that lie ready (in heaps and with coaches) against those that are out at once before one is back. Pucks that a skater
 * starts with are brought by everybody of that line. At most one finding; value: pucks out at once; threshold: pucks ready.
 */
export const findTooFewPucks = (plan: DrillPlan, rep: RepFacts, flow: PlayedFlow): readonly Finding[] => {
  const lying = Object.values(plan.pucks).filter(
    puck => !puck.ownerSpot || plan.spots[puck.ownerSpot]?.kind !== 'skater',
  );
  const first = lying[0];
  if (!first || rep.takenPuckCount === 0) return [];
  const have = lying.reduce((sum, puck) => sum + puck.count, 0);
  const everyS = flow.everyS * (plan.flow?.ends === 'byTurns' ? 2 : 1);
  const repsOut = Math.min(flow.repCount, Math.ceil((rep.durationS + PUCK_BACK_S.value) / everyS));
  const out = repsOut * rep.takenPuckCount;
  if (have >= out) return [];
  return [
    {
      kind: 'tooFewPucks',
      weight: 'know',
      timeS: 0,
      atM: first.atM,
      spots: [],
      value: out,
      threshold: have,
      unit: 'pucks',
      status: PUCK_BACK_S.status,
      source: PUCK_BACK_S.source,
    },
  ];
};

/** The spots whose skaters mix with those of this one, whichever way they go. */
const groupOf = (spots: readonly SpotFacts[], from: SpotId): readonly SpotFacts[] => {
  const ids = new Set([from]);
  for (let size = 0; size < ids.size; ) {
    size = ids.size;
    for (const facts of spots)
      if (ids.has(facts.spot) || ids.has(facts.goesTo)) ids.add(facts.spot).add(facts.goesTo);
  }
  return spots.filter(facts => ids.has(facts.spot));
};

const placeOf = (plan: DrillPlan, spot: SpotId) => ({ atM: plan.spots[spot]!.atM, spots: [spot] });
