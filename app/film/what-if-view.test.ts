import { type IcePoint, rinkOf } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import type { FreezeView } from './freeze-view.ts';
import { optionsOf } from './options-of.ts';
import { movedView } from './what-if-view.ts';

const skater = (id: string, side: 'us' | 'them', xM: number, yM: number) => ({
  id,
  side,
  kind: 'skater' as const,
  role: id,
  atM: { xM, yM },
  covM2: { xxM2: 0.01, xyM2: 0, yyM2: 0.01 },
});

/** F1 has the puck, F2 is 12 m ahead, and X1 stands between them; whoever has a wanted place has it from `ghosts`. */
const viewWith = (ghosts: Readonly<Record<string, IcePoint>>): FreezeView => {
  const skaters = [skater('F1', 'us', -20, 0), skater('F2', 'us', -8, 2), skater('X1', 'them', -14, 1)];
  const rink = rinkOf({ preset: '200x85ft' });
  return {
    rink,
    freeze: {
      skaters: Object.fromEntries(skaters.map(({ id }) => [id, ghosts[id] ? { ghostM: ghosts[id] } : {}])),
    },
    ice: {
      scene: {
        rink,
        attacks: 'plusX',
        skaters,
        puck: { atM: { xM: -19.2, yM: 0 }, covM2: { xxM2: 0.01, xyM2: 0, yyM2: 0.01 }, carrierId: 'F1' },
        jointM2: [],
      },
      unplaced: [],
    },
  } as unknown as FreezeView;
};

const chanceTo = (view: FreezeView, toId: string): number => {
  const options = optionsOf(view, 'u18');
  if (options.kind === 'none') throw new Error(options.says);
  const found = options.found.options.find(one => one.kind === 'direct' && one.toId === toId);
  return found?.chance ?? 0;
};

describe('what if they stood where they were wanted', () => {
  it('opens the lane when the one in it stands elsewhere', () => {
    const view = viewWith({ X1: { xM: -14, yM: -9 } });
    const moved = movedView(view)!;
    expect(moved.ids).toEqual(['X1']);
    expect(chanceTo(view, 'F2')).toBeLessThan(0.5);
    expect(chanceTo(moved.view, 'F2')).toBeGreaterThan(chanceTo(view, 'F2') + 0.3);
  });

  it('leaves who has the puck where he is, and says nothing when nobody moves', () => {
    expect(movedView(viewWith({}))).toBeUndefined();
    expect(movedView(viewWith({ F1: { xM: -5, yM: 3 } }))).toBeUndefined();
  });
});
