import type { LineId, Standard, Trigger, Who, Whom, Zone } from '@icewright/engine';
import type { Choice } from '../parts/sentence.tsx';

/** The words of a standard: what stands in the sentence, and what stands in its drawers. Only what the engine can judge. */

export type MustBe = Standard['kind'];

export const MUST_BE: readonly Choice<MustBe>[] = [
  { value: 'levelWith', said: 'level with', short: 'level with' },
  { value: 'goalSide', said: 'goal-side of', short: 'goal-side of' },
  { value: 'upWith', said: 'up with', short: 'up with' },
  { value: 'within', said: 'within reach of', short: 'within … of' },
  { value: 'numbers', said: 'in numbers', short: 'so many in …' },
];

/** What each means, in the words of its judge. */
export const MUST_BE_MEANS: Readonly<Record<MustBe, string>> = {
  levelWith: 'Not further from our net than that, along the sheet: coming back.',
  upWith: 'Not nearer to our net than that, along the sheet: joining the rush.',
  goalSide: 'Nearer to our net than that.',
  within: 'The distance between the two is at most the limit.',
  numbers: 'So many of us are in the zone.',
};

export const WHO: readonly Choice<Who>[] = [
  { value: 'firstForwardBack', said: 'first forward back' },
  { value: 'everyForward', said: 'forwards, every one,', short: 'every forward' },
  { value: 'puckCarrier', said: 'puck carrier' },
  { value: 'nearestDefender', said: 'nearest defender' },
  { value: 'everyDefender', said: 'defenders, both,', short: 'every defender' },
  { value: 'anyOfUs', said: 'nearest skater, whoever it is,', short: 'any one of us' },
  { value: 'allOfUs', said: 'skaters, all of them,', short: 'all of us' },
];

export const WHOM: readonly Choice<Whom>[] = [
  { value: 'puck', said: 'the puck' },
  { value: 'carrier', said: 'the carrier' },
  { value: 'nearestOfThem', said: 'the nearest of them' },
  { value: 'lastOfThem', said: 'the last of them' },
  { value: 'ourNet', said: 'our net' },
];

export const ZONES: readonly Choice<Zone>[] = [
  { value: 'house', said: 'in the house' },
  { value: 'middleLane', said: 'in the middle lane' },
  { value: 'ourZone', said: 'in our zone' },
  { value: 'neutralZone', said: 'in the neutral zone' },
  { value: 'theirZone', said: 'in their zone' },
  { value: 'picture', said: 'in the picture' },
];

export const TRIGGERS: readonly Choice<Trigger['at']>[] = [
  { value: 'puckCrosses', said: 'the puck is over', short: 'the puck is over …' },
  { value: 'weLoseThePuck', said: 'we lose the puck' },
  { value: 'weWinThePuck', said: 'we win the puck' },
  { value: 'passIsMade', said: 'a pass is made' },
  { value: 'theyShoot', said: 'they shoot' },
];

/** Seen from us: x grows towards the net we attack. */
export const LINES: readonly Choice<LineId>[] = [
  { value: 'goalLineMinusX', said: 'our goal line' },
  { value: 'blueLineMinusX', said: 'our blue line' },
  { value: 'centreLine', said: 'the red line' },
  { value: 'blueLinePlusX', said: 'their blue line' },
  { value: 'goalLinePlusX', said: 'their goal line' },
];

export const saidOf = <Value extends string>(choices: readonly Choice<Value>[], value: Value): string =>
  choices.find(choice => choice.value === value)?.said ?? value;

export const triggerSaid = (when: Trigger): string =>
  when.at === 'puckCrosses' ? `the puck is over ${saidOf(LINES, when.line)}` : saidOf(TRIGGERS, when.at);

/** The whole standard as one sentence, for lists and for those who hear the page. */
export function standardSaid(standard: Standard, limit: (lengthM: number) => string): string {
  const when = `When ${triggerSaid(standard.when)}, `;
  if (standard.kind === 'numbers') {
    return `${when}at least ${standard.atLeastCount} of us must be ${saidOf(ZONES, standard.zone)}.`;
  }
  const who = `our ${saidOf(WHO, standard.who)} must be `;
  const whom = saidOf(WHOM, standard.whom);
  return standard.kind === 'within'
    ? `${when}${who}within ${limit(standard.withinM)} of ${whom}.`
    : `${when}${who}${saidOf(MUST_BE, standard.kind)} ${whom}, give or take ${limit(standard.withinM)}.`;
}
