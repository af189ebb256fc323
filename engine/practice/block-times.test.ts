import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockTimes } from './block-times.ts';

describe('clock times of the blocks', () => {
  it('adds the blocks and the changeovers between them', () => {
    const times = blockTimes(
      '19:40',
      [
        { minutes: 8, changeoverMinutes: 2 },
        { minutes: 12.5, changeoverMinutes: 1 },
        { minutes: 10, changeoverMinutes: 5 },
      ],
      60,
    );
    expect(times.blocks.map(block => [block.startsClock, block.endsClock])).toEqual([
      ['19:40', '19:48'],
      ['19:50', '20:03'],
      ['20:04', '20:14'],
    ]);
    expect(times.usedMinutes).toBe(33.5);
    expect(times.leftMinutes).toBe(26.5);
    expect(times.iceEndsClock).toBe('20:40');
  });

  it('runs across midnight, and says which block is over', () => {
    const times = blockTimes(
      '23:30',
      [
        { minutes: 40, changeoverMinutes: 0 },
        { minutes: 30, changeoverMinutes: 0 },
      ],
      60,
    );
    expect(times.blocks.map(block => block.endsClock)).toEqual(['00:10', '00:40']);
    expect(times.blocks.map(block => block.isOver)).toEqual([false, true]);
    expect(times.leftMinutes).toBe(-10);
    expect(times.iceEndsClock).toBe('00:30');
  });

  it('leaves all the ice when there is no block', () => {
    expect(blockTimes('06:00', [], 50)).toEqual({
      blocks: [],
      usedMinutes: 0,
      leftMinutes: 50,
      iceEndsClock: '06:50',
    });
  });

  it('refuses what is no clock', () => {
    for (const clock of ['24:00', '7:30', '19:60', '', '19.40']) {
      expect(() => blockTimes(clock, [], 50)).toThrow(RangeError);
    }
  });

  it('never lets two blocks overlap, and accounts for every minute', () => {
    const block = fc.record({
      minutes: fc.integer({ min: 1, max: 120 }),
      changeoverMinutes: fc.integer({ min: 0, max: 20 }),
    });
    fc.assert(
      fc.property(fc.array(block, { minLength: 1, maxLength: 12 }), blocks => {
        const times = blockTimes('18:00', blocks, 75);
        const changing = blocks
          .slice(0, -1)
          .reduce((sum, { changeoverMinutes }) => sum + changeoverMinutes, 0);
        const playing = blocks.reduce((sum, { minutes }) => sum + minutes, 0);
        expect(times.usedMinutes).toBe(playing + changing);
        expect(times.usedMinutes + times.leftMinutes).toBe(75);
        times.blocks.slice(1).forEach((time, index) => {
          expect(time.startMinute).toBe(times.blocks[index]!.endMinute + blocks[index]!.changeoverMinutes);
        });
      }),
    );
  });
});
