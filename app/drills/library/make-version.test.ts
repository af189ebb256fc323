import { type Drill, emptyDrill } from '@icewright/book';
import type { ActId, SpotId } from '@icewright/engine';
import { levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { halfIceOf } from './half-ice.ts';
import { halfIceBroughtIn } from './half-ice-brought-in.ts';
import { withFewer } from './with-fewer.ts';

const spot = (rank: number, role: string, xM: number, toXM: number, more: object = {}) => ({
  rank,
  side: 'us' as const,
  kind: 'skater' as const,
  role,
  atM: { xM, yM: 4 * rank - 4 },
  facingRad: 0,
  waitingCount: 0,
  acts: {
    [`${role}-a` as ActId]: {
      rank: 0,
      kind: 'skate' as const,
      throughM: [{ xM: toXM, yM: 4 * rank - 3 }],
      facing: 'forward' as const,
      effortRatio: 1,
      stops: true,
      ...more,
    },
  },
});
const drillOf = (spots: Record<string, unknown>): Drill =>
  ({
    ...emptyDrill({
      title: 'A',
      level: 'collegeWomen',
      rink: { preset: '200x85ft' },
      madeAt: '2026-11-28T12:00:00Z',
    }),
    spots,
  }) as Drill;
const durationOf = (drill: Drill): number => {
  const playable = playableOf(drill, rinkOf(drill.rink), levelOf(drill.level));
  if (playable.kind !== 'playable') throw new Error('cannot be played');
  return runDrill(playable).durationS;
};

describe('a version on half ice', () => {
  it('lies in the other half as it lay in this one: the rep takes as long', () => {
    const drill = drillOf({ f1: spot(0, 'F1', -10, -22), f2: spot(1, 'F2', -4, -18) });
    const made = halfIceOf(drill);
    if ('whyNot' in made) throw new Error(made.whyNot);
    expect(made.drill.rink.preset).toBe('halfIce');
    expect(made.drill.spots['f1' as SpotId]!.atM.xM).toBe(10);
    expect(durationOf(made.drill)).toBeCloseTo(durationOf(drill), 9);
  });

  it('is not to be had of what takes the whole sheet, and says so', () => {
    expect(halfIceOf(drillOf({ f1: spot(0, 'F1', -20, 20) }))).toEqual({
      whyNot: expect.stringMatching(/^half ice ends at the red line: F1 (stands|skates) 20\.0\sm past it/),
    });
  });
});

describe('half ice with those outside brought in', () => {
  it('keeps everybody in the half and in their order along the sheet, and the near ones where they are', () => {
    const drill = drillOf({ f1: spot(0, 'F1', -12, 4), f2: spot(1, 'F2', -3, 14), f3: spot(2, 'F3', 9, 20) });
    const made = halfIceBroughtIn(drill);
    if (made === null) throw new Error('there is none');
    expect(made.rink.preset).toBe('halfIce');
    const xs = Object.values(made.spots).map(each => each.atM.xM);
    expect(xs[0]).toBe(1);
    expect(xs[1]).toBeGreaterThan(xs[0]!);
    expect(xs[1]).toBeLessThan(6);
    expect(xs[2]).toBe(9);
    expect(durationOf(made)).toBeGreaterThan(0);
  });

  it('is not offered where both nets are shot at, or a far line is waited for', () => {
    const waits = spot(0, 'F1', -12, 4, { cue: { on: 'spotCrosses', spot: 'f2', line: 'blueLineMinusX' } });
    expect(
      halfIceBroughtIn(drillOf({ f1: waits, f2: spot(1, 'F2', -14, 14), f3: spot(2, 'F3', 9, 20) })),
    ).toBeNull();
    const shoots = (rank: number, atEnd: string) => ({
      ...spot(rank, `F${rank}`, 5, 10),
      acts: { a: { rank: 0, kind: 'shoot', atEnd, speedMps: 20 } },
    });
    expect(halfIceBroughtIn(drillOf({ f1: shoots(0, 'plusX'), f2: shoots(1, 'minusX') }))).toBeNull();
  });
});

describe('a version with fewer', () => {
  it('leaves out the last one that nobody waits for', () => {
    const drill = drillOf({
      f1: spot(0, 'F1', 0, 10),
      f2: spot(1, 'F2', 0, 10, { cue: { on: 'spotCrosses', spot: 'f3', line: 'blueLinePlusX' } }),
      f3: spot(2, 'F3', 0, 10),
    });
    const made = withFewer(drill);
    if ('whyNot' in made) throw new Error(made.whyNot);
    expect(Object.keys(made.drill.spots)).toEqual(['f1', 'f3']);
  });

  it('leaves nobody out who alone does what she does, or of whom it is told what is wanted', () => {
    const late = { cue: { on: 'after' as const, seconds: 2.5 } };
    const drill = drillOf({
      f1: spot(0, 'F1', 0, 10),
      f2: spot(1, 'F2', 0, 10),
      f3: spot(2, 'F3', 0, 10, late),
    });
    const made = withFewer(drill);
    if ('whyNot' in made) throw new Error(made.whyNot);
    expect(made.without).toBe('F2');
    const wanted = { ...drill, wanted: { kind: 'levelWith', spot: 'f2' } } as unknown as Drill;
    expect(withFewer(wanted)).toMatchObject({ without: 'F1' });
    const { f2, ...apart } = drill.spots as Record<string, unknown>;
    const covered = {
      ...drill,
      spots: { ...apart, x1: { ...(f2 as object), side: 'them', role: 'X1' } },
    } as unknown as Drill;
    expect(withFewer(covered)).toEqual({
      whyNot: 'nobody else does what F3 does: without F3 it is another problem',
    });
  });

  it('two are the fewest', () => {
    expect(withFewer(drillOf({ f1: spot(0, 'F1', 0, 10), f2: spot(1, 'F2', 0, 10) }))).toHaveProperty(
      'whyNot',
    );
  });
});
