import type { Team } from '@icewright/book';
import type { Judgement, JudgeReason } from '@icewright/engine';
import { SURELY_SDS } from '@icewright/engine';
import { numberSaid } from '../parts/figures.ts';
import type { FreezeView } from './freeze-view.ts';
import { nameOf } from './measure-of.ts';

type Standard = Team['habits'][keyof Team['habits']]['standard'];

/** What is measured for a standard, as the first words of a reading: *F1 to the carrier*. */
export const measuredWords = (standard: Standard, judged: Judgement, view: FreezeView): string => {
  if (standard.kind === 'numbers') return `Of us in ${ZONE[standard.zone]}`;
  const who = judged.who[0] === undefined ? WHO[standard.who] : nameOf(view, judged.who[0]);
  const whom = whomWords(judged.whom[0], view) ?? WHOM[standard.whom];
  if (standard.kind === 'within') return `${who} to ${whom}`;
  return standard.kind === 'goalSide' ? `${who} further from our net than ${whom}` : `${who} behind ${whom}`;
};

export const wantedWords = (standard: Standard): string => {
  if (standard.kind === 'numbers') return `wanted: ${standard.atLeastCount} or more`;
  const limit = `${numberSaid(standard.withinM)} m`;
  if (standard.kind === 'within') return `wanted: ${limit} or less`;
  const where = standard.kind === 'levelWith' ? 'level' : 'goal side';
  return standard.withinM > 0 ? `wanted: ${where}, give or take ${limit}` : `wanted: ${where}`;
};

/** The answer in words, with who decided it and why it is no plain yes or no. */
export const judgedWords = (standard: Standard, judged: Judgement, view: FreezeView): string => {
  const who = judged.who[0] === undefined ? '' : `${nameOf(view, judged.who[0])}: `;
  if (judged.reading === undefined) return capital(REASON[judged.why]);
  const { value, sd } = judged.reading;
  const unit = judged.unit === 'm' ? ' m' : '';
  const reading =
    judged.unit === 'm'
      ? `${numberSaid(value)} ± ${numberSaid(SURELY_SDS * sd)}${unit}`
      : `${numberSaid(value, 0)}`;
  const tail = judged.why === 'clear' ? '' : ` ${capital(REASON[judged.why])}`;
  return `${who}${reading}, ${wantedWords(standard)}.${tail}`;
};

export const ANSWER = { yes: 'Yes', no: 'No', cannotTell: 'Cannot tell' } as const;

const REASON: Record<JudgeReason, string> = {
  clear: '',
  straddles: 'the ± reaches over the limit.',
  whoIsUnsure: 'two may be the one who is meant, and they differ.',
  nobodyOfWho: 'nobody whom the standard speaks of has been placed.',
  noPuck: 'the puck has not been placed.',
  noCarrier: 'it is not said who has the puck.',
  nobodyOfThem: 'none of them has been placed.',
  notEveryonePlaced: 'not everybody on the ice has been placed.',
};

const WHO: Record<Exclude<Standard, { kind: 'numbers' }>['who'], string> = {
  firstForwardBack: 'First forward back',
  everyForward: 'Every forward',
  puckCarrier: 'Puck carrier',
  nearestDefender: 'Nearest defender',
  everyDefender: 'Every defender',
  anyOfUs: 'One of us',
  allOfUs: 'All of us',
};

const WHOM: Record<Exclude<Standard, { kind: 'numbers' }>['whom'], string> = {
  puck: 'the puck',
  carrier: 'the carrier',
  nearestOfThem: 'the nearest of them',
  lastOfThem: 'the last of them',
  ourNet: 'our net',
};

export const ZONE = {
  house: 'our house',
  middleLane: 'the middle lane',
  ourZone: 'our zone',
  neutralZone: 'the neutral zone',
  theirZone: 'their zone',
  picture: 'the picture',
} as const;

const whomWords = (id: string | undefined, view: FreezeView): string | undefined =>
  id === undefined ? undefined : id === 'ourNet' ? 'our net' : nameOf(view, id);

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
