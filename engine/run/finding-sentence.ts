import type { DrillPlan } from '../drill/drill.ts';
import { feetOf } from '../units/feet.ts';
import type { SpotId } from '../units/ids.ts';
import type { Finding } from './run-result.ts';

export type Lengths = 'metres' | 'feet';

/**
 * A finding as one plain sentence with its figures, for screens and print. Roles name the spots; lengths in metres or
 * feet, speeds in m/s or ft/s, times in seconds.
 */
export const findingSentence = (finding: Finding, plan: DrillPlan, lengths: Lengths = 'metres'): string => {
  const [who, other] = finding.spots.map(spot => roleOf(plan, spot));
  const length = (valueM: number): string =>
    lengths === 'feet' ? `${feetOf(valueM).toFixed(0)} ft` : `${valueM.toFixed(1)} m`;
  const speed = (valueMps: number): string =>
    lengths === 'feet' ? `${feetOf(valueMps).toFixed(0)} ft/s` : `${valueMps.toFixed(1)} m/s`;
  const area = (valueSqM: number): string =>
    lengths === 'feet' ? `${(feetOf(feetOf(valueSqM))).toFixed(0)} sq ft` : `${valueSqM.toFixed(0)} m²`;
  const seconds = (valueS: number): string => `${valueS.toFixed(valueS < 1 ? 2 : 1)} s`;
  switch (finding.kind) {
    case 'receiverCannotGetThere':
      return `${who} does not get to the pass from ${other}: it goes by ${length(finding.value)} away, the stick reaches ${length(finding.threshold)}.`;
    case 'laneShut':
      return `${who} shuts the lane: the stick is on the pass from ${other} ${seconds(-finding.value)} before it is past.`;
    case 'noBankPass':
      return `No way off the boards from ${who} to ${other} at this speed, with one bounce or with two.`;
    case 'cueNeverFires':
      return other
        ? `${who} waits for a cue from ${other} that does not come, ${seconds(finding.value)} to the end of the rep.`
        : `${who} waits for a cue that does not come, ${seconds(finding.value)} to the end of the rep.`;
    case 'twoActsAtOnce':
      return `${who} is to do two things at once: the cue comes ${seconds(finding.value)} before the act under way has ended.`;
    case 'noPuckToPlay':
      return `${who} has no puck to play at ${seconds(finding.timeS)}.`;
    case 'pathsCrossTooFast':
      return `${who} and ${other} cross too fast: within reach of each other at ${speed(finding.value)}, ${speed(finding.threshold)} is the limit here.`;
    case 'tooFastIntoBoards':
      return `${who} comes too near the boards: ${length(finding.value)} left at ${speed(finding.speedMps ?? 0)}, ${length(finding.threshold)} needed to stop.`;
    case 'gapNotHeld':
      return `${who} does not hold the gap to ${other}, who goes at ${speed(finding.speedMps ?? 0)}: ${length(finding.value)} at ${seconds(finding.timeS)}, ${length(finding.threshold)} wanted.`;
    case 'bodiesTouch':
      return `${who} and ${other} touch at ${seconds(finding.timeS)}: ${length(finding.value)} from middle to middle.`;
    case 'throughNet':
      return other
        ? `${who} skates through the crease of ${other} at ${seconds(finding.timeS)}.`
        : `${who} skates through the net at ${seconds(finding.timeS)}.`;
    case 'passDiesShort':
      return `The pass from ${other} is too weak: the puck stops ${length(finding.value)} short of ${who}.`;
    case 'puckLeftBehind':
      return finding.act
        ? `A puck lies ${length(finding.value)} from ${who}, who waits for one: nobody fetches it.`
        : `The puck that ${who} had last stays behind, ${length(finding.value)} from the nearest skater.`;
    case 'tooFewPucks':
      if (finding.spots.length === 0)
        return `Too few pucks for this flow: ${finding.value} are out at once, ${finding.threshold} ${finding.threshold === 1 ? 'lies' : 'lie'} ready.`;
      return `${finding.value} pucks are needed, ${finding.threshold} ${finding.threshold === 1 ? 'is' : 'are'} there: none for ${listed(finding.spots.map(spot => roleOf(plan, spot)))}.`;
    case 'shotAcrossGroup':
      return `The puck of ${other} goes ${length(finding.value)} past those at ${who} at ${speed(finding.speedMps ?? 0)}: ${length(finding.threshold)} is the room another group needs.`;
    case 'contactBelowAge':
      return finding.value > 0
        ? `${who} and ${other} come together at ${speed(finding.value)}: mind that body checking is not for this level. Your federation's rules decide.`
        : `${who} pins ${other} at the boards: mind that body checking is not for this level. Your federation's rules decide.`;
    case 'lineStandsTooLong':
      return finding.unit === 's'
        ? `The ${who} line stands too long: ${seconds(finding.value)} between two reps, ${seconds(finding.threshold)} at most after one so short.`
        : `Only ${finding.value.toFixed(1)} skaters move at once, ${finding.threshold.toFixed(1)} in an ordinary practice; the ${who} line stands longest.`;
    case 'tooFewSkaters':
      if (who === undefined)
        return `Too few skaters for the small game: ${finding.value} for it, ${finding.threshold} play at once.`;
      return `Too few skaters for this flow at ${who}: ${finding.value} here, it takes ${finding.threshold}.`;
    case 'goalieHasNoTime':
      return `The goalie has no time: ${seconds(finding.value)} between two shots, ${seconds(finding.threshold)} to be ready again.`;
    case 'lineInTheWay':
      return `The ${who} line waits in the way of ${other}: ${length(finding.value)} from it, ${length(finding.threshold)} is the least.`;
    case 'gameOffTheIce':
      return `The small game reaches ${length(finding.value)} over the boards.`;
    case 'gameTooCrowded':
      return `The small game is crowded: ${area(finding.value)} of ice for each skater, ${area(finding.threshold)} is little enough.`;
    case 'netOutsideGame':
      return `A net of the small game stands ${length(finding.value)} outside it.`;
    case 'netNearBoards':
      return `A net of the small game stands ${length(Math.max(0, finding.value))} from the boards, ${length(finding.threshold)} is the least.`;
    case 'offTheIce':
      return finding.act
        ? `The route of ${who} leaves the ice by ${length(finding.value)}.`
        : `${who} stands off the ice by ${length(finding.value)}.`;
  }
};

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const roleOf = (plan: DrillPlan, spot: SpotId): string => plan.spots[spot]?.role ?? '?';
