import type { Finding, Idea } from '@icewright/engine';
import { expect, it } from 'vitest';
import { findingsSaid, rateSaid } from './idea-words.ts';

const look = (count: number) => Array.from({ length: count }, () => ({ weight: 'look' }) as Finding);

it('counts findings to know beside those to look at, as the page of the drill does', () => {
  expect(findingsSaid({ lookFindings: [], knowCount: 0 })).toBe('No finding.');
  expect(findingsSaid({ lookFindings: [], knowCount: 1 })).toBe('Findings: 1 to know.');
  expect(findingsSaid({ lookFindings: look(2), knowCount: 1 })).toBe('Findings: 2 to look at, 1 to know.');
});

it('of an idea none of whose reps comes to the question it says so, and no rate', () => {
  const idea = {
    rateRatio: 0,
    isAsked: false,
    outcome: { kind: 'standardHeld' },
    plan: { spots: {} },
    free: {},
  } as unknown as Idea;
  expect(rateSaid(idea)).toBe(
    'No rep comes to the question: its moment does not come, or it cannot be told. The habit is held in none.',
  );
  expect(rateSaid({ ...idea, isAsked: true })).toMatch(/in 0 of ten reps/);
});
