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
  const length: Print = (valueM, more = 0) =>
    lengths === 'feet' ? `${feetOf(valueM).toFixed(more)} ft` : `${valueM.toFixed(1 + more)} m`;
  const speed: Print = (valueMps, more = 0) =>
    lengths === 'feet' ? `${feetOf(valueMps).toFixed(more)} ft/s` : `${valueMps.toFixed(1 + more)} m/s`;
  const area: Print = (valueSqM, more = 0) =>
    lengths === 'feet' ? `${feetOf(feetOf(valueSqM)).toFixed(more)} sq ft` : `${valueSqM.toFixed(more)} m²`;
  const seconds: Print = (valueS, more = 0) => `${valueS.toFixed((valueS < 1 ? 2 : 1) + more)} s`;
  const plain: Print = (value, more = 0) => value.toFixed(1 + more);
  /** The value and its limit. */
  const against = (print: Print): readonly [string, string] => apart(finding.value, finding.threshold, print);
  switch (finding.kind) {
    case 'receiverCannotGetThere': {
      const [value, limit] = against(length);
      return `${who} does not get to the pass from ${other}: it goes by ${value} away, the stick reaches ${limit}.`;
    }
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
    case 'pathsCrossTooFast': {
      const [value, limit] = against(speed);
      return `${who} and ${other} cross too fast: within reach of each other at ${value}, ${limit} is the limit here.`;
    }
    case 'tooFastIntoBoards': {
      const [value, limit] = against(length);
      return `${who} comes too near the boards: ${value} left at ${speed(finding.speedMps ?? 0)}, ${limit} needed to stop.`;
    }
    case 'gapNotHeld': {
      const [value, limit] = against(length);
      return `${who} does not hold the gap to ${other}, who goes at ${speed(finding.speedMps ?? 0)}: ${value} at ${seconds(finding.timeS)}, ${limit} wanted.`;
    }
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
    case 'shotAcrossGroup': {
      const [value, limit] = against(length);
      return `The puck of ${other} goes ${value} past those at ${who} at ${speed(finding.speedMps ?? 0)}: ${limit} is the room another group needs.`;
    }
    case 'contactBelowAge':
      return finding.value > 0
        ? `${who} and ${other} come together at ${speed(finding.value)}: mind that body checking is not for this level. Your federation's rules decide.`
        : `${who} pins ${other} at the boards: mind that body checking is not for this level. Your federation's rules decide.`;
    case 'lineStandsTooLong':
      if (finding.unit === 's') {
        const [standsS, mostS] = against(seconds);
        return `The ${who} line stands too long: ${standsS} between two reps, ${mostS} at most after one so short.`;
      } else {
        const [moving, usual] = against(plain);
        return `Only ${moving} skaters move at once, ${usual} in an ordinary practice; the ${who} line stands longest.`;
      }
    case 'tooFewSkaters':
      if (who === undefined)
        return `Too few skaters for the small game: ${finding.value} for it, ${finding.threshold} play at once.`;
      return `Too few skaters for this flow at ${who}: ${finding.value} here, it takes ${finding.threshold}.`;
    case 'goalieHasNoTime': {
      const [value, limit] = against(seconds);
      return `The goalie has no time: ${value} between two shots, ${limit} to be ready again.`;
    }
    case 'lineInTheWay': {
      const [value, limit] = against(length);
      return `The ${who} line waits in the way of ${other}: ${value} from it, ${limit} is the least.`;
    }
    case 'gameOffTheIce':
      return `The small game reaches ${length(finding.value)} over the boards.`;
    case 'gameTooCrowded': {
      const [value, limit] = against(area);
      return `The small game is crowded: ${value} of ice for each skater, ${limit} is little enough.`;
    }
    case 'repThroughGame':
      return `${who} skates ${length(finding.value)} deep into the small game${plan.flow !== undefined && plan.flow.ends !== 'one' ? ', with reps at both ends' : ''}.`;
    case 'netOutsideGame':
      return `A net of the small game stands ${length(finding.value)} outside it.`;
    case 'netNearBoards': {
      const [value, limit] = apart(Math.max(0, finding.value), finding.threshold, length);
      return `A net of the small game stands ${value} from the boards, ${limit} is the least.`;
    }
    case 'offTheIce':
      return finding.act
        ? `The route of ${who} leaves the ice by ${length(finding.value)}.`
        : `${who} stands off the ice by ${length(finding.value)}.`;
  }
};

type Print = (value: number, moreDigits?: number) => string;

/**
 * A value and its limit as they are printed, with as many digits more as part the two (at most two): "1.5 m, 1.5 m is the least" would be no
 * finding.
 */
const apart = (value: number, limit: number, print: Print): readonly [string, string] => {
  let more = 0;
  while (more < 2 && value !== limit && print(value, more) === print(limit, more)) more++;
  return [print(value, more), print(limit, more)];
};

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const roleOf = (plan: DrillPlan, spot: SpotId): string => plan.spots[spot]?.role ?? '?';
