import { describe, expect, it } from 'vitest';
import { followAfter } from './follow.ts';

/** A page whose pictures come when the test says so. */
const page = () => {
  let due: (() => void) | null = null;
  const clock = { nowMs: 1000, spentMs: 5 };
  return {
    clock,
    times: {
      afterPicture: (call: () => void) => {
        due = call;
        return () => {
          due = null;
        };
      },
      spentMs: () => clock.spentMs,
      nowMs: () => clock.nowMs,
    },
    picture: () => {
      clock.nowMs += 16;
      const call = due;
      due = null;
      call?.();
    },
  };
};

const follower = (name: string, shown: string[]) => (value: number) => shown.push(`${name} ${value}`);

describe('those who follow a moving hand', () => {
  it('show its value one after each picture, in turn', () => {
    const { times, picture } = page();
    const shown: string[] = [];
    const follow = followAfter<number>(times);
    follow.join(follower('score', shown));
    follow.join(follower('list', shown));
    for (const value of [1, 2, 3]) {
      follow.tell(value);
      expect(shown).toHaveLength(value - 1);
      picture();
    }
    expect(shown).toEqual(['score 1', 'list 2', 'score 3']);
  });

  it('wait where pictures are slow, but never until they are late', () => {
    const { times, picture, clock } = page();
    const shown: string[] = [];
    const follow = followAfter<number>(times);
    follow.join(follower('score', shown));
    clock.spentMs = 30;
    let value = 0;
    const move = () => {
      follow.tell(++value);
      picture();
    };
    for (let count = 0; count < 24; count++) move();
    expect(shown).toEqual([]);
    move();
    expect(shown).toEqual(['score 25']);
    for (let count = 0; count < 24; count++) move();
    expect(shown).toHaveLength(1);
  });

  it('are left alone once nothing moves, and after they have left', () => {
    const { times, picture } = page();
    const shown: string[] = [];
    const follow = followAfter<number>(times);
    const leave = follow.join(follower('score', shown));
    follow.tell(1);
    follow.rest();
    picture();
    leave();
    follow.tell(2);
    picture();
    expect(shown).toEqual([]);
  });
});
