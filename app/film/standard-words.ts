import type { Team } from '@icewright/book';
import { FULL_SIDE, type Judgement, type JudgeReason } from '@icewright/engine';
import { LENGTH_UNIT, type Lengths, lengthNumberSaid, numberSaid } from '../parts/figures.ts';
import type { FreezeView } from './freeze-view.ts';
import { type Figure, lengthFigure, nameOf } from './measure-of.ts';

type Standard = Team['habits'][keyof Team['habits']]['standard'];

/** What is measured for a standard, as the first words of a reading: *F1 to the carrier*, *F1 further from our net than the puck*. */
export const measuredWords = (standard: Standard, judged: Judgement, view: FreezeView): string => {
  if (standard.kind === 'numbers') return `Of us in ${ZONE[standard.zone]}`;
  const who = judged.who[0] === undefined ? WHO[standard.who] : nameOf(view, judged.who[0]);
  const whom = whomWords(judged.whom[0], view) ?? WHOM[standard.whom];
  if (standard.kind === 'within') return `${who} to ${whom}`;
  const isOver = (judged.reading?.value ?? 0) >= 0;
  const side = (standard.kind === 'upWith') === isOver ? 'nearer to' : 'further from';
  return `${who} ${side} our net than ${whom}`;
};

/** The figure that goes with those words: a side is said in the words, so that no length is negative. */
export const measuredFigure = (
  standard: Standard,
  judged: Judgement,
  lengths: Lengths = 'metres',
): Figure | undefined => {
  if (judged.reading === undefined) return undefined;
  const { value, sd } = judged.reading;
  if (standard.kind === 'numbers') return { value: numberSaid(value, 0), plusMinus: '' };
  return lengthFigure({ value: Math.abs(value), sd }, lengths);
};

export const wantedWords = (standard: Standard, lengths: Lengths = 'metres'): string => {
  if (standard.kind === 'numbers') return `wanted: ${standard.atLeastCount} or more`;
  const limit = `${lengthNumberSaid(standard.withinM, lengths)} ${LENGTH_UNIT[lengths]}`;
  if (standard.kind === 'within') return `wanted: ${limit} or less`;
  const where = { levelWith: 'level', upWith: 'up with', goalSide: 'goal side' }[standard.kind];
  return standard.withinM > 0 ? `wanted: ${where}, give or take ${limit}` : `wanted: ${where}`;
};

/** The answer in words, with who decided it and why it is no plain yes or no. */
export const judgedWords = (standard: Standard, judged: Judgement, view: FreezeView): string => {
  const figure = measuredFigure(standard, judged, view.lengths);
  if (figure === undefined) return capital(REASON[judged.why]);
  const tail = judged.why === 'clear' ? '' : ` ${capital(reasonWords(standard, judged, view))}`;
  const by = standard.kind === 'numbers' || standard.kind === 'within' ? ':' : ' by';
  const words = `${measuredWords(standard, judged, view)}${by} ${figure.value} ${figure.plusMinus}`.trimEnd();
  return `${words}; ${wantedWords(standard, view.lengths)}.${tail}${possessionWords(standard, view)}`;
};

/** Why a count of us is what it is: not how well a place is known, but who has been placed at all. */
export const numbersWhy = (view: FreezeView): string =>
  `Skaters of ours by their feet, goalies not counted: ${placedWords(view)} placed in this picture. ${
    view.freeze.allPlaced === undefined
      ? 'Who has no mark yet may be there too, so fewer than wanted is a sure no only with a full side placed, or when it is said under Skaters who of us may be without a mark.'
      : `It was said that ${allPlacedWords[view.freeze.allPlaced]}; ${view.freeze.allPlaced === 'onIce' ? 'so these are all' : 'so these are all there, and in a zone that the picture shows whole'}.`
  }`;

/** What the person who looked at the picture said of those without a mark. */
const allPlacedWords: Readonly<Record<NonNullable<FreezeView['freeze']['allPlaced']>, string>> = {
  inPicture: 'nobody of us in the picture is without a mark',
  onIce: 'nobody of us on the ice is without a mark',
};

const reasonWords = ({ kind }: Standard, { why }: Judgement, view: FreezeView): string => {
  if (why !== 'notEveryonePlaced') return REASON[why];
  if (kind !== 'numbers') return `${REASON[why]}${sayWho(view)}`;
  if (view.freeze.allPlaced === 'inPicture')
    return 'the picture does not show all of that zone, and who is out of it may stand there.';
  return `not everybody on the ice has been placed: ${placedWords(view)}.${sayWho(view)}`;
};

/** Where he who knows it can say it. */
const sayWho = ({ freeze }: FreezeView): string =>
  freeze.allPlaced === undefined ? ' If nobody of us is missing, say so under Skaters.' : '';

const placedWords = (view: FreezeView): string => {
  const placed = view.ice?.scene.skaters.filter(one => one.side === 'us' && one.kind === 'skater') ?? [];
  return `${placed.length} of a full side of ${FULL_SIDE.forwards + FULL_SIDE.defenders} ${placed.length === 1 ? 'is' : 'are'}`;
};

/** To be goal side is asked of some habits with our puck and of others with theirs: that it was not asked whose it is must be said. */
const possessionWords = ({ kind }: Standard, view: FreezeView): string => {
  const scene = view.ice?.scene;
  const carrier = scene?.skaters.find(({ id }) => id === scene.puck?.carrierId);
  if (kind !== 'goalSide' || carrier?.side !== 'us') return '';
  return ` Judged by places alone: ${nameOf(view, carrier.id)} has the puck, which is ours here; does the habit speak of such a picture?`;
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
  roleNotSaid:
    'of some of us (U1 …) it is not said who is a forward and who a defender: say so under Skaters.',
  notEveryonePlaced: 'not everybody on the ice has been placed.',
  puckIsOurs: 'coming back is asked while the puck is theirs; here it is ours.',
  puckIsTheirs: 'joining the rush is asked while the puck is ours; here it is theirs.',
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
