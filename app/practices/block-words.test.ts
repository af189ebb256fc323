import { describe, expect, it } from 'vitest';
import { wordsThatFollow } from './block-words.ts';

const old = { title: 'Pass and go', says: 'Go!', keyPoints: 'Stick down' };
const next = { title: 'Gap ladder', says: '', keyPoints: 'Close early' };

describe('the words of a block whose drill is changed', () => {
  it('follow while they are the old drill’s, so that no block says another drill’s name', () => {
    expect(wordsThatFollow(old, old, next)).toEqual(next);
  });

  it('stay where the coach wrote his own', () => {
    expect(wordsThatFollow({ ...old, title: 'Warm-up' }, old, next)).toEqual({
      says: '',
      keyPoints: 'Close early',
    });
  });

  it('go from a talk to the drill, and back to a talk', () => {
    expect(wordsThatFollow({ title: 'Talk', says: 'Listen', keyPoints: '' }, undefined, next)).toEqual({
      title: 'Gap ladder',
      keyPoints: 'Close early',
    });
    expect(wordsThatFollow(next, next, undefined)).toEqual({ title: 'Talk', keyPoints: '' });
  });
});
