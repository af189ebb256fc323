import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FIRST_RUN, nextRun, onSaid, orderOf, type Press, type Run, type RunItem } from './meeting-run.ts';

const ITEMS: readonly RunItem[] = [
  { id: 'a', frames: { first: 10, stop: 20, last: 30 } },
  { id: 'b', frames: { first: 100, last: 160 } },
  { id: 'missing' },
  { id: 'c', frames: { first: 5, stop: 9, last: 9 } },
];
const after = (presses: readonly Press[], items = ITEMS): Run =>
  presses.reduce((run, press) => nextRun(run, press, items), FIRST_RUN);
const on = { does: 'on' } as const;
const arrived = (run: Run): Press => ({ does: 'arrived', turn: run.turn });

describe('a meeting that runs', () => {
  it('stands at the first picture, runs to where it stands, on to its end, and to the next', () => {
    let run = FIRST_RUN;
    expect(orderOf(run, ITEMS)).toMatchObject({ stand: 10 });
    run = nextRun(run, on, ITEMS);
    expect(orderOf(run, ITEMS)).toMatchObject({ from: 10, to: 20 });
    run = nextRun(run, arrived(run), ITEMS);
    expect(orderOf(run, ITEMS)).toMatchObject({ stand: 20 });
    run = nextRun(run, on, ITEMS);
    expect(orderOf(run, ITEMS)).toMatchObject({ from: 20, to: 30 });
    run = nextRun(run, arrived(run), ITEMS);
    expect(orderOf(run, ITEMS)).toMatchObject({ stand: 30 });
    // One press more is the next thing to be seen: the next film, from its beginning.
    run = nextRun(run, on, ITEMS);
    expect(run).toMatchObject({ index: 1, phase: 'toEnd' });
    expect(orderOf(run, ITEMS)).toMatchObject({ from: 100, to: 160 });
  });

  it('says before each press what it will show', () => {
    const said = (presses: readonly Press[]) => onSaid(after(presses), ITEMS);
    expect([[], [on], [on, on], [on, on, on]].map(said)).toEqual([
      'Run the film',
      'To where it stands',
      'Run on',
      'Run the next moment',
    ]);
    expect(said([{ does: 'to', index: 1 }])).toBe('Run the film');
    expect(said([{ does: 'to', index: 1 }, on])).toBe('The next moment');
    expect(said([{ does: 'to', index: 3 }, on, on])).toBe('To the end');
  });

  it('stands at once where it is to stand at the first picture, and is over one press later where that is all', () => {
    const still: RunItem[] = [
      ITEMS[1]!,
      { id: 's', frames: { first: 7, stop: 7, last: 40 } },
      { id: 'o', frames: { first: 9, last: 9 } },
    ];
    const stands = after([on, on], still);
    expect(stands).toMatchObject({ index: 1, phase: 'stands' });
    expect(orderOf(stands, still)).toMatchObject({ stand: 7 });
    expect(orderOf(nextRun(stands, on, still), still)).toMatchObject({ from: 7, to: 40 });
    expect(after([on, on, on, on], still)).toMatchObject({ index: 2, phase: 'ready' });
    expect(after([on, on, on, on, on], still)).toMatchObject({ phase: 'over' });
  });

  it('skips to the first picture of the next moment from anywhere, out of the black too, and stays at the last', () => {
    const skip = { does: 'skip' } as const;
    for (const before of [
      [],
      [on],
      [on, on],
      [on, { does: 'hold', frameIndex: 15 }],
      [on, { does: 'black', frameIndex: 15 }],
    ] as Press[][]) {
      const skipped = after([...before, skip]);
      expect(skipped).toMatchObject({ index: 1, phase: 'ready', isBlack: false });
      expect(orderOf(skipped, ITEMS)).toMatchObject({ stand: 100 });
    }
    const last = after([{ does: 'to', index: 3 }, on]);
    expect(nextRun(last, skip, ITEMS)).toBe(last);
  });

  it('takes an impatient press to what comes next, and a late answer to an older order for nothing', () => {
    const running = after([on]);
    const stands = nextRun(running, on, ITEMS);
    expect(orderOf(stands, ITEMS)).toMatchObject({ stand: 20 });
    expect(nextRun(stands, arrived(running), ITEMS)).toBe(stands);
    expect(after([on, on, on, on])).toMatchObject({ index: 1, phase: 'toEnd' });
  });

  it('loaded again while the film runs, it runs on from where the team’s window has come to', () => {
    const running = after([on]);
    const { turn } = running;
    const again: Run = { ...running, heldAt: 12, turn: turn + 1 };
    const found = nextRun(again, { does: 'found', turn, frameIndex: 15 }, ITEMS);
    expect(orderOf(found, ITEMS)).toEqual({ turn: turn + 2, from: 15, to: 20 });
    // It followed another order, or the film was held or stood.
    expect(nextRun(again, { does: 'found', turn: turn - 1, frameIndex: 15 }, ITEMS)).toBe(again);
    const stands = after([on, on]);
    expect(nextRun(stands, { does: 'found', turn: stands.turn - 1, frameIndex: 15 }, ITEMS)).toBe(stands);
  });

  it('goes on with words alone where the film is missing, and ends after the last', () => {
    expect(after([{ does: 'to', index: 2 }])).toMatchObject({ index: 2 });
    expect(orderOf(after([{ does: 'to', index: 2 }]), ITEMS)).toBeNull();
    expect(after([{ does: 'to', index: 2 }, on])).toMatchObject({ index: 3, phase: 'toStop' });
    const end = after([{ does: 'to', index: 3 }, on, on, on]);
    expect(end).toMatchObject({ index: 3, phase: 'over' });
    expect(nextRun(end, on, ITEMS)).toBe(end);
    expect(nextRun(end, { does: 'back' }, ITEMS)).toMatchObject({ index: 3, phase: 'ready' });
  });

  it('waits for a film that is being opened', () => {
    const opening = [{ id: 'a', isOpening: true }, ...ITEMS];
    expect(after([on, on], opening)).toEqual(FIRST_RUN);
  });

  it('goes back to the beginning of the stretch first, then to the one before', () => {
    const second = after([on, on, on, on]);
    expect(second).toMatchObject({ index: 1, phase: 'toEnd' });
    const back = nextRun(second, { does: 'back' }, ITEMS);
    expect(back).toMatchObject({ index: 1, phase: 'ready' });
    expect(nextRun(back, { does: 'back' }, ITEMS)).toMatchObject({ index: 0, phase: 'ready' });
    expect(after([{ does: 'back' }])).toMatchObject({ index: 0, phase: 'ready' });
  });

  it('holds the film while it is black, lifts the black by any press, and runs on from the held picture', () => {
    const black = after([on, { does: 'black', frameIndex: 14 }]);
    expect(black.isBlack).toBe(true);
    expect(orderOf(black, ITEMS)).toMatchObject({ stand: 14 });
    const lit = nextRun(black, on, ITEMS);
    expect(lit.isBlack).toBe(false);
    expect(orderOf(lit, ITEMS)).toMatchObject({ stand: 14 });
    expect(orderOf(nextRun(lit, on, ITEMS), ITEMS)).toMatchObject({ from: 14, to: 20 });
  });

  const frames = fc
    .tuple(fc.nat(50), fc.nat(50), fc.nat(50))
    .map(([first, a, b]) => ({ first, stop: first + a, last: first + a + b }));
  const items = fc.array(fc.record({ id: fc.string(), frames: fc.option(frames, { nil: undefined }) }), {
    minLength: 1,
    maxLength: 8,
  });

  it('to see all of it takes two presses for a moment at most, where the film is let run', () => {
    fc.assert(
      fc.property(items, list => {
        let run = FIRST_RUN;
        let presses = 0;
        for (; run.phase !== 'over'; presses += 1) {
          const pressed = nextRun(run, on, list);
          run = nextRun(pressed, arrived(pressed), list);
        }
        expect(presses).toBeLessThanOrEqual(2 * list.length + 1);
      }),
    );
  });

  it('from anywhere, presses alone reach the end in three for each item at most, never back', () => {
    const press = fc.oneof(
      fc.constant<Press>(on),
      fc.constantFrom<Press>({ does: 'back' }, { does: 'skip' }),
      fc.record({ does: fc.constantFrom('black' as const, 'hold' as const), frameIndex: fc.nat(150) }),
      fc.record({ does: fc.constant('to' as const), index: fc.integer({ min: -2, max: 12 }) }),
    );
    fc.assert(
      fc.property(items, fc.array(press, { maxLength: 30 }), (list, story) => {
        let run = story.reduce((now, one) => nextRun(now, one, list), FIRST_RUN);
        for (let left = 3 * list.length + 2; run.phase !== 'over'; left -= 1) {
          expect(left).toBeGreaterThan(0);
          const next = nextRun(run, on, list);
          expect(next.index).toBeGreaterThanOrEqual(run.index);
          run = next;
        }
      }),
    );
  });
});
