import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meetingTime } from './meeting-time.ts';

const item = fc.record({
  filmS: fc.nat({ max: 120 }),
  standS: fc.nat({ max: 60 }),
  talkS: fc.nat({ max: 300 }),
});

describe('the time of a meeting', () => {
  it('is film, stands and talk, and what is left of the budget', () => {
    const time = meetingTime(
      [
        { filmS: 7, standS: 5, talkS: 60 },
        { filmS: 8, standS: 0, talkS: 30 },
      ],
      100,
    );
    expect(time.items).toEqual([
      { startS: 0, endS: 72 },
      { startS: 72, endS: 110 },
    ]);
    expect(time).toMatchObject({ filmS: 15, standS: 5, talkS: 90, usedS: 110, leftS: -10 });
  });

  it('has no gap, and the order changes nothing of the whole', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 30 }), fc.integer({ min: 60, max: 7200 }), (items, budgetS) => {
        const time = meetingTime(items, budgetS);
        const back = meetingTime([...items].reverse(), budgetS);
        expect(time.items.map(one => one.startS)).toEqual([
          ...(items.length > 0 ? [0] : []),
          ...time.items.slice(0, -1).map(one => one.endS),
        ]);
        expect(time.usedS).toBe(time.filmS + time.standS + time.talkS);
        expect(time.usedS + time.leftS).toBe(budgetS);
        expect({ ...back, items: [] }).toEqual({ ...time, items: [] });
      }),
    );
  });
});
