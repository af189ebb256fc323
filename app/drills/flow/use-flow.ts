import type { Drill, Team } from '@icewright/book';
import {
  everybodyGoesWith,
  type Finding,
  type FlowResult,
  type FlowSetting,
  findSmallGame,
  flowOf,
  isNone,
  type NoFlow,
  type Rink,
  type Run,
  withMissing,
} from '@icewright/engine';
import { useEffect, useMemo, useState } from 'react';
import { rosterOf, type WhoIsHere } from '../../parts/who-is-here.ts';
import { usePlayedSpots } from '../use-played-spots.ts';

export interface Flowing {
  readonly here: WhoIsHere;
  readonly onHere: (here: WhoIsHere) => void;
  /** The block, or why there is none; null while the drill has no run. */
  readonly flow: FlowResult | NoFlow | null;
  readonly missing: FlowResult | null;
  readonly everybody: { readonly least: number; readonly most: number | null } | null;
  /** The run with what is wrong with its flow after its own findings, so that list and flags have one numbering. */
  readonly run: Run | null;
  /** All findings, also where there is no run: of the rep, of the block, of the small games. */
  readonly findings: readonly Finding[];
  /** Those of them that are not of the rep: they stand after the rep's. */
  readonly blockFindings: readonly Finding[];
}

/** How many fewer the comparison has. */
export const MISSING = 2;

/** Plays the block of the drill as it stands, for the team's roster unless told otherwise; anew at every move of the hand. */
export function useFlow(drill: Drill, rink: Rink, run: Run | null, team: Team): Flowing {
  const { skaters } = team;
  const roster = useMemo(() => rosterOf({ skaters }), [skaters]);
  const [told, setTold] = useState<WhoIsHere | null>(null);
  const here = told ?? roster;
  const { pucks, gear, games, minutes, flow: beat } = drill;
  const spots = usePlayedSpots(drill.spots);
  const hasGoalie = Object.values(spots).some(spot => spot.kind === 'goalie');
  const asked = `${here.skaters} ${here.goalies} ${here.beyondLines} ${minutes}`;
  const gameFindings = useMemo(
    () => findSmallGame({ spots, pucks, gear, games }, rink, here.skaters),
    [spots, pucks, gear, games, rink, here.skaters],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: `asked` stands for who is here and for how long
  const played = useMemo(() => {
    if (run === null) return NOT_YET;
    const plan = { spots, pucks, gear, games, ...(beat === undefined ? {} : { flow: beat }) };
    const setting: FlowSetting = {
      // Without a goalie in the drawing nobody is shot at.
      roster: { skaters: here.skaters, goalies: hasGoalie ? here.goalies : 0 },
      minutes,
      beyondLines: here.beyondLines,
    };
    const flow = flowOf(plan, run, setting);
    if (isNone(flow)) return { ...NOT_YET, flow: flow.reason, run };
    const missing = withMissing(plan, run, setting, MISSING);
    return {
      flow,
      missing: isNone(missing) ? null : missing,
      ask: () => everybodyGoesWith(plan, run, setting),
      found: flow.findings,
      run: flow.findings.length === 0 ? run : { ...run, findings: [...run.findings, ...flow.findings] },
    };
  }, [spots, pucks, gear, games, beat, run, asked]);
  // Asked when the hand rests: it plays the block several times over.
  const [everybody, setEverybody] = useState<Flowing['everybody']>(null);
  useEffect(() => {
    const wait = setTimeout(() => {
      const range = played.ask?.() ?? null;
      setEverybody(range === null || isNone(range) ? null : range);
    }, HAND_RESTS_MS);
    return () => clearTimeout(wait);
  }, [played]);
  const counted = played.run;
  const findings = useMemo(() => [...(counted?.findings ?? []), ...gameFindings], [counted, gameFindings]);
  const { found } = played;
  const blockFindings = useMemo(() => [...found, ...gameFindings], [found, gameFindings]);
  const shown = useMemo(
    () => (counted === null || gameFindings.length === 0 ? counted : { ...counted, findings }),
    [counted, gameFindings, findings],
  );
  const { flow, missing } = played;
  return useMemo(
    () => ({ here, onHere: setTold, flow, missing, everybody, run: shown, findings, blockFindings }),
    [here, flow, missing, everybody, shown, findings, blockFindings],
  );
}

const HAND_RESTS_MS = 250;

const NOT_YET = { flow: null, missing: null, ask: null, found: [] as readonly Finding[], run: null };
