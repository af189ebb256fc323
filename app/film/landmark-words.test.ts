import { landmarksOf, RINK_PRESETS, rinkOf, turnedLandmark } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { landmarkGroup, landmarkShort, landmarkWords } from './landmark-words.ts';

describe('names of marks', () => {
  it.each(RINK_PRESETS)('every mark of %s has words of its own and a group', preset => {
    const marks = landmarksOf(rinkOf({ preset }));
    const words = marks.map(one => landmarkWords(one.id));
    expect(new Set(words).size).toBe(words.length);
    for (const [i, one] of marks.entries()) {
      expect(words[i]).not.toBe(one.id);
      expect(words[i]).not.toMatch(/undefined|[+-][xy]|, ,|: *$/);
      expect(landmarkGroup(one.id)).not.toBe('Others');
    }
  });

  it('says far for +y, near for −y, right for +x', () => {
    expect(landmarkWords('endSpot+x-y')).toBe('End spot, right, near');
    expect(landmarkWords('centreLine.boards+y')).toBe('Red line at the far boards');
    expect(landmarkWords('goalPost-x+y')).toBe('Net, left: far post');
  });

  it('the short name of a mark over the picture tells its end, so that a half turn is seen', () => {
    expect(landmarkShort('lCorner-x+y.goalSide.boardsSide')).toBe('L mark, left far');
    expect(landmarkShort('centreLine.centreCircle-y')).toBe('Centre circle, near');
    for (const { id } of landmarksOf(rinkOf({ preset: '200x85ft' }))) {
      if (turnedLandmark(id) !== id) expect(landmarkShort(turnedLandmark(id))).not.toBe(landmarkShort(id));
    }
  });
});
