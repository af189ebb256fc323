import {
  type Counted,
  type Idea,
  type IdeaShape,
  type IdeaTerm,
  type IdeaVersion,
  type Lengths,
  type NoProblem,
  outcomeWords,
  type RateInterval,
} from '@icewright/engine';
import { lengthSaid, numberSaid, percentSaid } from '../../parts/figures.ts';

export const SHAPE_SAID: Readonly<Record<IdeaShape, string>> = {
  pair: 'Only the two it is about',
  started: 'A pass starts it',
  picture: 'Everybody who was about it',
};

export const NO_PROBLEM_SAID: Readonly<Record<NoProblem, string>> = {
  noPuck: 'Set the puck in the picture first: a problem begins with where it is.',
  nobodyWithThePuck: 'Place whoever has the puck, or is nearest to it, first.',
  nobodyOfTheStandard: 'Nobody whom the habit speaks of is placed in this picture.',
};

export const TERM_SAID: Readonly<Record<IdeaTerm, string>> = {
  likeness: 'away from the picture',
  parts: 'its parts',
  findings: 'findings to look at',
  offTheRate: 'off the wanted rate',
  goes: 'reps a minute',
  moving: 'who moves at once',
};

/** What comes how often, and what was moved for it. */
export function rateSaid(idea: Idea): string {
  const { want, beforeLine, unasked } = outcomeWords(idea.outcome, idea.plan);
  const spot = idea.plan.spots[idea.free.spot];
  const line = beforeLine === '' ? '' : ' in time';
  const { rate } = idea.counted;
  if (rate === null) return `No rep comes to the question: ${unasked}. ${capital(want)}${line} in none.`;
  return `${capital(want)}${line} in ${tenths(rate.rateRatio)} of ten reps, set by where ${spot?.role ?? '?'} starts. ${countedSaid(idea.counted, rate)}`;
}

/** Of how many reps, and within what: the card counts as the page of the drill does, and says so. */
const countedSaid = ({ repCount, trialCount }: Counted, { lowerRatio, upperRatio }: RateInterval): string => {
  const reps = `${repCount.toLocaleString('en-GB')} reps`;
  const of =
    trialCount === repCount ? reps : `the ${trialCount.toLocaleString('en-GB')} of ${reps} that come to it`;
  return `Of ${of}; 95 % interval ${tenths(lowerRatio)} to ${tenths(upperRatio)}.`;
};

/** What a version comes to: how often, or why there is none. */
export function versionSaid(word: string, version: IdeaVersion): string {
  if (version.kind === 'none')
    return version.highestRatio === 0
      ? `${word}: no start within reach, it never comes.`
      : `${word}: no start within reach, it stays between ${tenths(version.lowestRatio)} and ${tenths(version.highestRatio)} of ten.`;
  const { rate, trialCount, repCount } = version.counted;
  if (rate === null) return `${word}: no rep comes to the question.`;
  const of =
    trialCount === repCount ? '' : ` that come to it, as ${percentSaid(trialCount / repCount)} of reps do`;
  const half = (rate.upperRatio - rate.lowerRatio) / 2;
  return `${word}: ${tenths(rate.rateRatio)} ± ${tenths(half)} of ten${of}.`;
}

/** What is to be read before the whistle, counted as the page of the drill counts it. */
export function findingsSaid({ lookFindings, knowCount }: Pick<Idea, 'lookFindings' | 'knowCount'>): string {
  const look = lookFindings.length;
  const said = [look > 0 && `${look} to look at`, knowCount > 0 && `${knowCount} to know`].filter(Boolean);
  return said.length === 0 ? 'No finding.' : `Findings: ${said.join(', ')}.`;
}

const tenths = (ratio: number): string => numberSaid(10 * ratio).replace(/\.0$/, '');

export const termsSaid = (idea: Idea): string =>
  idea.terms.map(term => `${TERM_SAID[term.name]} ${numberSaid(term.valueM)}`).join(' + ');

export function likenessSaid(idea: Idea, lengths: Lengths): string {
  const like = idea.likeness;
  if (like === null) return 'nobody of the picture is in it';
  const missing =
    like.missingCount + like.extraCount === 0
      ? ''
      : ` ${like.missingCount} of the picture left out, ${like.extraCount} more than in it, each counted by a row.`;
  return `At ${numberSaid(like.timeS)} s of the rep everybody is ${lengthSaid(like.placesM, lengths)} from the place in the picture and ${lengthSaid(like.gapsM, lengths)} off in the distance to the puck, as a mean of squares${like.isMirrored ? ', in a mirror' : ''}.${missing} One picture tells no speeds.`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
