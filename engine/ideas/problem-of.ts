import type { FreezeScene, FreezeSkater } from '../drill/plan-from-freeze.ts';
import type { Standard, Who } from '../habit/standard.ts';
import { isDefenderRole, isForwardRole } from '../habit/who.ts';
import { LINE_IDS, type LineId } from '../rink/lines.ts';
import type { Rink } from '../rink/rink.ts';
import type { End, Side } from '../units/ends.ts';
import { type None, noneBecause } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import { ROOM_BEFORE_LINE } from './ideas-rows.ts';

/** The problem of a picture: who had to do something about whom, and which way the puck goes. We attack plusX. */
export interface Problem {
  readonly standard: Standard;
  /** Those the standard speaks of, the nearest to it first. */
  readonly workers: readonly FreezeSkater[];
  /** Who has the puck, or is nearest to it. */
  readonly carrier: FreezeSkater;
  /** The net the carrier goes to. */
  readonly goesTo: End;
  readonly others: readonly FreezeSkater[];
  /** The line over which the standard is asked, or the next one on the carrier's way. */
  readonly line: LineId;
  /** The end where the turned picture was, so that places can be turned back. */
  readonly attacks: End;
  readonly scene: FreezeScene;
}

export type NoProblem = 'nobodyOfTheStandard' | 'nobodyWithThePuck' | 'noPuck';

/**
 * What a picture asks of a standard's people. Metres, turned so that we attack plusX. Of several who may be meant whoever the judgement of
 * the picture names, `judgedId`, is taken, so that a drill speaks of the same person; where it names nobody, the nearest, as a coach would. None: no puck in the picture, nobody at it, or nobody of those the standard speaks of. Our own reading.
 */
export const problemOf = (
  scene: FreezeScene,
  attacks: End,
  standard: Standard,
  rink: Rink,
  judgedId?: string,
): Problem | None<NoProblem> => {
  if (!scene.puck) return noneBecause('noPuck');
  const turn = attacks === 'plusX' ? 1 : -1;
  const turned = (pointM: IcePoint): IcePoint => ({ xM: turn * pointM.xM + 0, yM: turn * pointM.yM + 0 });
  const skaters = scene.skaters.map(skater => ({
    ...skater,
    atM: turned(skater.atM),
    ...(skater.ghostM && { ghostM: turned(skater.ghostM) }),
  }));
  const puckM = turned(scene.puck.atM);
  const people = skaters.filter(skater => skater.kind === 'skater');
  const carrier = people.find(skater => skater.id === scene.puck?.carrier) ?? nearestTo(people, puckM)[0];
  if (!carrier) return noneBecause('nobodyWithThePuck');
  const workers = workersOf(standard, people, carrier, puckM, rink, judgedId);
  if (workers.length === 0) return noneBecause('nobodyOfTheStandard');
  const goesTo = wayOf(standard, carrier.side);
  return {
    standard,
    workers,
    carrier,
    goesTo,
    others: skaters.filter(each => each.id !== carrier.id && !workers.some(worker => worker.id === each.id)),
    line: lineOf(standard, goesTo, carrier.atM.xM, rink),
    attacks,
    scene: {
      skaters,
      puck: { atM: puckM, ...(scene.puck.carrier !== undefined && { carrier: scene.puck.carrier }) },
    },
  };
};

/** Theirs come at our net, ours go to theirs. */
const wayOf = (standard: Standard, carrierSide: Side): End =>
  standard.when.at === 'theyShoot' || carrierSide === 'them' ? 'minusX' : 'plusX';

const lineOf = (standard: Standard, goesTo: End, fromXM: number, rink: Rink): LineId => {
  if (standard.when.at === 'puckCrosses') return standard.when.line;
  const sign = goesTo === 'minusX' ? -1 : 1;
  const ahead = LINE_IDS.map(id => ({ id, aheadM: sign * (rink.lines[id].centreXM - fromXM) }))
    .filter(({ aheadM }) => aheadM >= ROOM_BEFORE_LINE_M)
    .sort((a, b) => a.aheadM - b.aheadM);
  return ahead[0]?.id ?? (goesTo === 'minusX' ? 'goalLineMinusX' : 'goalLinePlusX');
};

/** A line nearer than this is over before anything can come of it: three strides. */
const ROOM_BEFORE_LINE_M = ROOM_BEFORE_LINE.value;

const workersOf = (
  standard: Standard,
  people: readonly FreezeSkater[],
  carrier: FreezeSkater,
  puckM: IcePoint,
  rink: Rink,
  judgedId: string | undefined,
): readonly FreezeSkater[] => {
  const ours = people.filter(skater => skater.side === 'us' && skater.id !== carrier.id);
  if (standard.kind === 'numbers') return nearestTo(ours, puckM).slice(0, standard.atLeastCount);
  const ourNetM = { xM: -rink.layout.goalLineXM, yM: 0 };
  const judged = ours.filter(skater => skater.id === judgedId);
  if (judged.length > 0 && IS_OF_ONE[standard.who]) return judged;
  const forwards = ours.filter(skater => isForwardRole(skater.role));
  const defenders = ours.filter(skater => isDefenderRole(skater.role));
  switch (standard.who) {
    case 'firstForwardBack':
      return nearestTo(forwards, ourNetM).slice(0, 1);
    case 'nearestDefender':
      return nearestTo(defenders, standard.whom === 'ourNet' ? ourNetM : puckM).slice(0, 1);
    case 'puckCarrier':
      return carrier.side === 'us' ? [carrier] : [];
    case 'everyForward':
      return nearestTo(forwards, puckM);
    case 'everyDefender':
      return nearestTo(defenders, puckM);
    case 'allOfUs':
      return nearestTo(ours, puckM);
    case 'anyOfUs':
      return nearestTo(ours, puckM).slice(0, 1);
  }
};

/** Whether a standard speaks of one person, of several who may be meant. */
const IS_OF_ONE: Readonly<Record<Who, boolean>> = {
  firstForwardBack: true,
  nearestDefender: true,
  anyOfUs: true,
  puckCarrier: false,
  everyForward: false,
  everyDefender: false,
  allOfUs: false,
};

const nearestTo = (people: readonly FreezeSkater[], toM: IcePoint): FreezeSkater[] =>
  [...people].sort((a, b) => awayFrom(a, toM) - awayFrom(b, toM));

const awayFrom = (skater: FreezeSkater, toM: IcePoint): number =>
  Math.hypot(skater.atM.xM - toM.xM, skater.atM.yM - toM.yM);
