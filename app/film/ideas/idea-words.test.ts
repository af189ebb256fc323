import type { Counted, Finding, Idea, IdeaVersion } from '@icewright/engine';
import { expect, it } from 'vitest';
import { findingsSaid, rateSaid, versionSaid } from './idea-words.ts';

const look = (count: number) => Array.from({ length: count }, () => ({ weight: 'look' }) as Finding);

it('counts findings to know beside those to look at, as the page of the drill does', () => {
  expect(findingsSaid({ lookFindings: [], knowCount: 0 })).toBe('No finding.');
  expect(findingsSaid({ lookFindings: [], knowCount: 1 })).toBe('Findings: 1 to know.');
  expect(findingsSaid({ lookFindings: look(2), knowCount: 1 })).toBe('Findings: 2 to look at, 1 to know.');
});

const idea = (counted: Counted) =>
  ({ counted, outcome: { kind: 'standardHeld' }, plan: { spots: {} }, free: {} }) as unknown as Idea;
const rate = { rateRatio: 0.7, lowerRatio: 0.67, upperRatio: 0.73 };

it('of an idea none of whose reps comes to the question it says so, and no rate', () => {
  expect(rateSaid(idea({ repCount: 1000, trialCount: 0, rate: null }))).toBe(
    'No rep comes to the question: its moment does not come, or it cannot be told. The habit is held in none.',
  );
  expect(rateSaid(idea({ repCount: 1000, trialCount: 1000, rate: { ...rate, rateRatio: 0 } }))).toMatch(
    /in 0 of ten reps/,
  );
});

it('says of how many reps a rate is, and of how many of them it was asked', () => {
  expect(rateSaid(idea({ repCount: 1000, trialCount: 1000, rate }))).toMatch(
    /in 7 of ten reps, .* Of 1,000 reps; 95 % interval 6.7 to 7.3\.$/,
  );
  expect(rateSaid(idea({ repCount: 1000, trialCount: 654, rate }))).toMatch(
    /Of the 654 of 1,000 reps that come to it; /,
  );
  const version = { kind: 'version', plan: { spots: {} }, value: 3 } as unknown as IdeaVersion;
  const counted = { repCount: 1000, trialCount: 342, rate };
  expect(versionSaid('Harder', { ...version, counted } as IdeaVersion)).toBe(
    'Harder: 7 ± 0.3 of ten that come to it, as 34\u2009% of reps do.',
  );
  expect(versionSaid('Harder', { kind: 'none', lowestRatio: 0, highestRatio: 0 })).toBe(
    'Harder: no start within reach, it never comes.',
  );
});
