import type { MomentKey, Team } from '@icewright/book';
import { expect, it } from 'vitest';
import { isMarking, keyWords } from './key-words.ts';

const team = {
  habits: { h: { title: 'Hunt the puck' } },
  units: { u: { title: 'First five' } },
  skaters: { s: { number: 21, name: 'Thornquist' } },
} as unknown as Team;
const key = (change: object): MomentKey =>
  ({ rank: 0, key: 'q', verdict: 'missed', beforeS: 4, afterS: 2, ...change }) as MomentKey;

it('a key says habit and verdict, and who, strength and unit where it holds them', () => {
  expect(keyWords(key({ habit: 'h' }), team)).toBe('Hunt the puck: missed');
  expect(keyWords(key({ habit: 'h', skater: 's', strength: '5v4', unit: 'u' }), team)).toBe(
    'Hunt the puck: missed, 21 Thornquist, 5v4, First five',
  );
});

it('one without a habit marks nothing: it says how the game stands from then on', () => {
  expect(isMarking(key({}))).toBe(false);
  expect(keyWords(key({ strength: '4v5' }), team)).toBe('from now on 4v5');
  expect(keyWords(key({}), team)).toBe('says nothing yet');
});
