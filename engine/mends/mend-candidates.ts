import type { MendCandidate, MendCase } from './mend.ts';
import { cuesChanged, holdsLess } from './mend-cues.ts';
import { goesLater, goesSooner, heapsGreater, staysAtOneEnd } from './mend-flows.ts';
import { gapsInstead, gapsOther, linesTurned } from './mend-keepers.ts';
import { passOf, passSpeeds, passWays } from './mend-passes.ts';
import { isRouteAct, spotOf, startsMoved } from './mend-places.ts';
import { pucksBrought } from './mend-pucks.ts';
import { broughtIn, effortsLess, routesBent, routesEnded } from './mend-routes.ts';
import { MOST_TRIES } from './mend-rows.ts';
import { actLater, startsShifted } from './mend-times.ts';

/**
 * The changes that may make a finding go, the smallest first (sizes in metres of moving one thing, see `mend-rows.ts`), no more than
 * `MOST_TRIES`. Which kinds of change are thought of for which finding is our own choice. Empty when none fits.
 */
export const mendCandidatesOf = (of: MendCase): readonly MendCandidate[] =>
  [...candidatesOf(of)].sort((a, b) => a.size - b.size).slice(0, MOST_TRIES.value);

const candidatesOf = (of: MendCase): readonly MendCandidate[] => {
  const [who, other] = of.finding.spots;
  switch (of.finding.kind) {
    case 'receiverCannotGetThere':
    case 'passDiesShort':
      return [...passSpeeds(of), ...actLater(of, other), ...startsMoved(of, who), ...startsMoved(of, other)];
    case 'laneShut':
      return [
        ...passWays(of),
        ...passSpeeds(of),
        ...actLater(of, other),
        ...startsMoved(of, other),
        ...startsMoved(of, passOf(of)?.act.toSpot),
      ];
    case 'noBankPass':
      return [...passSpeeds(of), ...passWays(of), ...startsMoved(of, who)];
    case 'cueNeverFires':
      return cuesChanged(of);
    case 'twoActsAtOnce':
      return [...cuesChanged(of), ...holdsLess(of), ...routeBeforeEnded(of)];
    case 'noPuckToPlay':
    case 'puckLeftBehind':
      return pucksBrought(of, who);
    case 'tooFewPucks':
      return who === undefined ? heapsGreater(of) : pucksBrought(of, who);
    case 'pathsCrossTooFast':
    case 'bodiesTouch':
      return [who, other].flatMap(spot => [
        ...startsShifted(of, spot),
        ...startsMoved(of, spot),
        ...routesBent(of, spot),
        ...effortsLess(of, spot),
      ]);
    case 'tooFastIntoBoards':
    case 'throughNet':
      return [...routesEnded(of, who), ...routesBent(of, who), ...effortsLess(of, who)];
    case 'offTheIce':
      return broughtIn(of, who);
    case 'gapNotHeld':
      return [
        ...startsMoved(of, who),
        ...gapsOther(of),
        ...startsShifted(of, other),
        ...effortsLess(of, other),
      ];
    case 'shotAcrossGroup':
      return [
        ...linesTurned(of, who),
        ...startsMoved(of, who),
        ...startsShifted(of, who),
        ...startsMoved(of, other),
      ];
    case 'contactBelowAge':
      return [...startsMoved(of, who), ...effortsLess(of, who), ...gapsInstead(of, who)];
    case 'lineStandsTooLong':
      return goesSooner(of);
    case 'tooFewSkaters':
      return who === undefined ? [] : goesLater(of);
    case 'goalieHasNoTime':
      return [...goesLater(of), ...actLater(of, who)];
    case 'lineInTheWay':
      return [...linesTurned(of, who), ...startsMoved(of, who), ...routesBent(of, other)];
    case 'repThroughGame':
      return staysAtOneEnd(of);
    // A small game is the coach's own to set: its edges and nets are dragged.
    case 'gameOffTheIce':
    case 'gameTooCrowded':
    case 'netOutsideGame':
    case 'netNearBoards':
      return [];
  }
};

/** The route before the act of the finding, ended sooner. */
const routeBeforeEnded = (of: MendCase): readonly MendCandidate[] => {
  const spot = spotOf(of, of.finding.spots[0]);
  const at = spot?.acts.findIndex(({ id }) => id === of.finding.act) ?? -1;
  const before = spot?.acts[at - 1];
  if (!spot || !isRouteAct(before)) return [];
  return routesEnded({ ...of, finding: { ...of.finding, act: before.id } }, spot.id).filter(
    ({ says }) => says.verb === 'endSooner',
  );
};
