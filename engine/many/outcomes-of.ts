import type { Act, ActKind, DrillPlan, Spot } from '../drill/drill.ts';
import { attackedEndOf } from '../drill/playing-end.ts';
import { isPuckAct } from '../drill/puck-start.ts';
import type { LineId } from '../rink/lines.ts';
import type { Side } from '../units/ends.ts';
import type { ActId, SpotId } from '../units/ids.ts';
import { LEVEL_WITHIN_M } from './many-rows.ts';
import type { Outcome } from './outcome.ts';

/**
 * What can be wanted of this drill, the likeliest first: whoever goes the way of the puck without it is level with it, whoever is chased
 * is caught, the puck is won back, each pass arrives, each act has its cue in time. Empty when nothing in the drill can come
 * out one way or the other. Lines are those at which the question mostly matters; `atOtherLine` asks it elsewhere.
 */
export const outcomesOf = (plan: DrillPlan): readonly Outcome[] => {
  const spots = (Object.entries(plan.spots) as [SpotId, Spot][]).sort(([, a], [, b]) => a.rank - b.rank);
  const acts = spots.flatMap(([id, spot]) =>
    (Object.entries(spot.acts) as [ActId, Act][])
      .sort(([, a], [, b]) => a.rank - b.rank)
      .map(([actId, act]) => ({ id, spot, actId, act })),
  );
  const hasPuck = Object.values(plan.pucks).some(puck => puck.count > 0);
  const carrier = acts.find(({ act }) => act.kind === 'carry' || act.kind === 'shoot')?.spot;
  const carrierSide = carrier?.side;
  const level: Outcome[] = spots
    .filter(([, spot]) => hasPuck && runsWithoutPuck(spot))
    .sort(([, a], [, b]) => rankOfRunner(a, carrierSide) - rankOfRunner(b, carrierSide))
    .map(([spot]) => ({
      kind: 'levelWithPuck',
      spot,
      atLine: blueLineBefore(carrier),
      withinM: LEVEL_WITHIN_M.value,
    }));
  const caught: Outcome[] = acts.flatMap(({ id, act }) =>
    act.kind === 'chase' || act.kind === 'steal'
      ? [
          {
            kind: 'caughtBefore',
            spot: act.whom,
            by: id,
            line: blueLineBefore(plan.spots[act.whom]),
          } as const,
        ]
      : [],
  );
  const regained: Outcome[] =
    hasPuck && caught.length > 0 && carrier !== undefined
      ? [
          {
            kind: 'puckRegained',
            side: carrier.side === 'us' ? 'them' : 'us',
            beforeLine: blueLineBefore(carrier),
          },
        ]
      : [];
  const passes: Outcome[] = acts
    .filter(({ act }) => act.kind === 'pass')
    .map(({ id, actId }) => ({ kind: 'passArrives', spot: id, act: actId }));
  const cues: Outcome[] = acts
    .filter(({ act }) => act.cue !== undefined && act.cue.on !== 'whistle' && act.cue.on !== 'after')
    .map(({ id, actId }) => ({ kind: 'cueInTime', spot: id, act: actId }));
  return [...caught, ...level, ...regained, ...passes, ...cues];
};

const MOVES: readonly ActKind[] = ['skate', 'chase', 'gap', 'steal', 'screen'];

const runsWithoutPuck = (spot: Spot): boolean => {
  const kinds = Object.values(spot.acts).map(act => act.kind);
  return (
    spot.kind === 'skater' &&
    kinds.some(kind => MOVES.includes(kind)) &&
    !kinds.some(kind => kind === 'carry' || kind === 'shoot')
  );
};

/** First who comes back against those who carry, free of any pass and of any gap; then the others. */
const rankOfRunner = (spot: Spot, carrierSide: Side | undefined): number => {
  const kinds = Object.values(spot.acts).map(act => act.kind);
  const isWithCarrier = spot.side === carrierSide ? 4 : 0;
  const playsPuck = kinds.some(isPuckAct) ? 2 : 0;
  return isWithCarrier + playsPuck + (kinds.includes('gap') ? 1 : 0);
};

/** The blue line before the net that this spot attacks; that of plusX where nobody does. */
const blueLineBefore = (spot: Spot | undefined): LineId =>
  spot === undefined || attackedEndOf(spot) === 'plusX' ? 'blueLinePlusX' : 'blueLineMinusX';
