import {
  type Act,
  bankCone,
  bankSpreadOf,
  feetOf,
  type IcePoint,
  isNone,
  levelOf,
  PUCK_ROWS,
  puckModelOf,
  saucerOf,
} from '@icewright/engine';
import { sheetPoint } from '../ice/sheet-point.ts';
import type { DrillLine } from './drill-line.ts';
import type { ActStep, LineWalk } from './line-walk.ts';
import { mirrorBounce, takingPlaceOf } from './pass-places.ts';
import { rimWay } from './rim-way.ts';
import { type PlayedPass, playedPass, puckWay } from './run-reading.ts';
import { wayBeyondCut } from './way-beyond-cut.ts';

type Owned = Extract<DrillLine, { kind: 'pass' }>;
type PassAct = Extract<Act, { kind: 'pass' }>;

/** Two-sided 95 % of a normal spread, in standard deviations. */
const SURELY_SDS = 1.96;
const PUCK = puckModelOf();

/** One pass: as it was played, or before that as the plan has it. Null when nobody is there to take it. */
export const passLine = (walk: LineWalk, step: ActStep, act: PassAct): DrillLine | null => {
  const { of, at } = step;
  const number = walk.passesTo.get(act.toSpot) ?? 0;
  walk.passesTo.set(act.toSpot, number + 1);
  const pass = walk.run ? playedPass(walk.run, of.spot, of.act) : null;
  if (pass && walk.run) {
    const wayM = act.way === 'rim' ? puckWay(walk.run, pass) : pass.wayM;
    const line = lineOf(walk, step, act, wayM, act.way === 'bank' ? halfWedgeOf(walk, pass) : undefined);
    const meantM = act.way === 'drop' ? null : wayBeyondCut(walk.run, walk.rink, pass, act.way);
    return meantM === null ? line : { ...line, meant: meantM.map(sheetPoint) };
  }
  const to = takingPlaceOf(walk.plan, walk.places, act.toSpot, number);
  if (!to) return null;
  return lineOf(walk, step, act, plannedWay(walk, act, at, to));
};

const plannedWay = (walk: LineWalk, act: PassAct, at: IcePoint, to: IcePoint): readonly IcePoint[] => {
  if (act.way === 'bank') return [at, mirrorBounce(at, to, walk.rink), to];
  return act.way === 'rim' ? rimWay(walk.rink.boards, at, to) : [at, to];
};

const lineOf = (
  walk: LineWalk,
  { of }: ActStep,
  act: PassAct,
  wayM: readonly IcePoint[],
  halfWedgeM?: number,
): Owned => {
  const line = {
    ...of,
    kind: 'pass' as const,
    legs: wayM.map(sheetPoint),
    way: act.way,
    words: WORDS[act.way],
  };
  if (act.way !== 'saucer') return halfWedgeM === undefined ? line : { ...line, halfWedgeM };
  const saucer = saucerOf(PUCK, act.speedMps, PUCK_ROWS.saucerHeightM.value);
  if (isNone(saucer)) return line;
  const said =
    walk.lengths === 'feet' ? `${feetOf(saucer.carryM).toFixed(0)} ft` : `${saucer.carryM.toFixed(1)} m`;
  return { ...line, airM: saucer.carryM, words: `saucer ${said}` };
};

const WORDS = { direct: '', bank: 'bank', saucer: 'saucer', rim: 'rim', drop: 'drop' } as const;

/** Half the fan of a pass off the boards where it is taken, metres (95 %), by the spread of boards and passer. */
const halfWedgeOf = (walk: LineWalk, { event, takenS, wayM }: PlayedPass): number | undefined => {
  const [from, first] = wayM;
  if (!walk.level || !from || !first || wayM.length < 3) return undefined;
  const pass = {
    launchRad: Math.atan2(first.yM - from.yM, first.xM - from.xM),
    launchSpeedMps: event.speedMps,
    arrivalS: takenS - event.timeS,
    bounces: wayM.slice(1, -1),
  };
  const spread = bankSpreadOf(levelOf(walk.level).model.passDirectionSdRad);
  return SURELY_SDS * bankCone(walk.rink.boards, PUCK, from, pass, spread).atMeetSdM;
};
