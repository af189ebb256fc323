import { emptyPractice, type Practice } from '@icewright/book';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leftSaid, scheduleOf } from './schedule.ts';

const practiceOf = (
  ...blocks: readonly { minutes: number; changeoverMinutes: number; rank: number }[]
): Practice => ({
  ...emptyPractice({ title: 'Practice', day: '2026-11-26', iceMinutes: 60 }),
  blocks: Object.fromEntries(
    blocks.map((block, index) => [
      `b${index}`,
      { title: '', says: '', keyPoints: '', leads: '', pucks: '', ice: '', groups: '', ...block },
    ]),
  ) as unknown as Practice['blocks'],
});

describe('the schedule of a practice', () => {
  it('lays blocks one after the other by rank, with their changeovers between', () => {
    const { blocks, usedMinutes } = scheduleOf(
      practiceOf(
        { rank: 2, minutes: 10, changeoverMinutes: 2 },
        { rank: 1, minutes: 12, changeoverMinutes: 1 },
      ),
    );
    expect(blocks.map(({ id, startMinute, endMinute }) => [id, startMinute, endMinute])).toEqual([
      ['b1', 0, 12],
      ['b0', 13, 23],
    ]);
    expect(usedMinutes).toBe(23);
  });

  it('no block begins before the one before has ended', () => {
    const blockOf = fc.record({
      rank: fc.double({ min: 0, max: 100, noNaN: true }),
      minutes: fc.integer({ min: 1, max: 120 }),
      changeoverMinutes: fc.integer({ min: 0, max: 20 }),
    });
    fc.assert(
      fc.property(fc.array(blockOf, { maxLength: 12 }), given => {
        const { blocks } = scheduleOf(practiceOf(...given));
        for (const [index, one] of blocks.entries()) {
          const before = blocks[index - 1];
          expect(one.startMinute).toBe(
            before === undefined ? 0 : before.endMinute + before.block.changeoverMinutes,
          );
        }
      }),
    );
  });

  it('says what is left of the ice', () => {
    expect(leftSaid({ leftMinutes: 3 })).toBe('3 min left');
    expect(leftSaid({ leftMinutes: -4 })).toBe('4 min over');
    expect(leftSaid({ leftMinutes: 0 })).toBe('the ice is full');
  });
});
