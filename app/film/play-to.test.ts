import { describe, expect, it, vi } from 'vitest';
import { playTo } from './play-to.ts';
import type { Player, PlayerState } from './player.ts';

/** A film of 300 frames that plays when it is told to, and tells of every change. */
const filmAt = (frameIndex: number) => {
  let state = { frameIndex, playing: false, onVideo: false } as PlayerState;
  const listeners = new Set<() => void>();
  const change = (to: Partial<PlayerState>) => {
    state = { ...state, ...to };
    for (const listener of listeners) listener();
  };
  const player = {
    film: { index: { frameCount: 300 } },
    now: () => state,
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    play: () => change({ playing: true }),
    jump: (to: number) => change({ frameIndex: to, playing: false }),
  } as unknown as Player;
  return { player, change, now: () => state };
};

describe('a film that is to stand at a frame', () => {
  const begun = () => {
    const film = filmAt(100);
    const [stood, letGo] = [vi.fn(), vi.fn()];
    playTo(film.player, 150, stood, letGo);
    film.change({ frameIndex: 120 });
    return { ...film, stood, letGo };
  };

  it('stands there and says so once', () => {
    const { change, now, stood, letGo } = begun();
    change({ frameIndex: 151 });
    expect(now()).toMatchObject({ frameIndex: 150, playing: false });
    change({ frameIndex: 160 });
    expect([stood.mock.calls.length, letGo.mock.calls.length]).toEqual([1, 0]);
  });

  it.each([
    ['back', 10],
    ['where it is', 120],
    ['beyond the frame', 240],
  ])('is let go when a hand stops it: %s', (_, frameIndex) => {
    const { player, now, stood, letGo } = begun();
    void player.jump(frameIndex);
    expect(now().frameIndex).toBe(frameIndex);
    expect([stood.mock.calls.length, letGo.mock.calls.length]).toEqual([0, 1]);
  });

  it('waits where a freeze holds it', () => {
    const { change, stood, letGo } = begun();
    change({ playing: false, holding: { untilMs: 0, rate: 1 } });
    expect([stood.mock.calls.length, letGo.mock.calls.length]).toEqual([0, 0]);
  });
});
