import { describe, expect, it } from 'vitest';
import { passOptions } from '../pass/pass-options.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { boardsDistance } from '../rink/boards.ts';
import { levelOf } from '../skater/level.ts';
import type { FrozenScene, FrozenSkater } from './frozen-scene.ts';
import { optionSceneOf } from './option-scene.ts';
import { TEST_RINK } from './pinned-view.reference.ts';

const { model } = levelOf('collegeWomen');
const puck = puckModelOf();
const covM2 = { xxM2: 0.04, xyM2: 0, yyM2: 0.04 };
const skater = (id: string, xM: number, yM: number, kind: 'skater' | 'goalie' = 'skater'): FrozenSkater => ({
  id,
  side: id.startsWith('u') ? 'us' : 'them',
  kind,
  role: kind === 'goalie' ? 'G' : 'F1',
  atM: { xM, yM },
  covM2,
});

const scene = (carrierId: string | undefined, puckAt = { xM: 0, yM: -5 }): FrozenScene => ({
  rink: TEST_RINK,
  attacks: 'plusX',
  skaters: [
    skater('u1', 0, -5.5),
    skater('u2', 6, 13.1),
    skater('uG', -26, 0, 'goalie'),
    skater('t1', 9, 2),
    skater('tG', 26, 0, 'goalie'),
  ],
  puck: { atM: puckAt, covM2, ...(carrierId === undefined ? {} : { carrierId }) },
  jointM2: [],
});

describe('a frozen scene for the options of its carrier', () => {
  it('gives both sides, our goalie no receiver, theirs in the way', () => {
    const found = optionSceneOf(scene('u1'), puck, () => model);
    if (found.kind === 'none') throw new Error(found.reason);
    expect(found.scene.us.map(({ id }) => id)).toEqual(['u1', 'u2']);
    expect(found.scene.them.map(({ id }) => id)).toEqual(['t1', 'tG']);
    expect(found.scene.attacks).toBe('plusX');
  });

  it('takes whoever the ± puts outside the boards just inside, and says whom', () => {
    const found = optionSceneOf(scene('u1', { xM: 3, yM: -12.96 }), puck, () => model);
    if (found.kind === 'none') throw new Error(found.reason);
    expect([...found.moved].sort()).toEqual(['puck', 'u2']);
    const { boards, puckM, us, them } = found.scene;
    for (const { xM, yM } of [puckM, ...us.map(one => one.atM), ...them.map(one => one.atM)]) {
      expect(boardsDistance(boards, { xM, yM })).toBeGreaterThan(puck.puckRadiusM);
    }
    // The options take it as it is.
    const { options, none } = passOptions(found.scene);
    expect(options.length + none.length).toBeGreaterThanOrEqual(3);
  });

  it('turns round when they have the puck', () => {
    const found = optionSceneOf(scene('t1'), puck, () => model);
    if (found.kind === 'none') throw new Error(found.reason);
    expect(found).toMatchObject({ side: 'them', scene: { attacks: 'minusX', carrierId: 't1' } });
    expect(found.scene.us.map(({ id }) => id)).toEqual(['t1']);
    expect(found.scene.them.map(({ id }) => id)).toEqual(['u1', 'u2', 'uG']);
  });

  it('has none without a puck or a carrier', () => {
    expect(optionSceneOf(scene(undefined), puck, () => model)).toEqual({ kind: 'none', reason: 'noCarrier' });
    const { puck: _, ...bare } = scene('u1');
    expect(optionSceneOf(bare, puck, () => model)).toEqual({ kind: 'none', reason: 'noPuck' });
  });
});
