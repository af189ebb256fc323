import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fitPins } from '../film/fit-pins.ts';
import type { FrozenScene } from '../film/frozen-scene.ts';
import { sceneFromFreeze } from '../film/scene-from-freeze.ts';
import { rinkOf } from '../rink/rink-of.ts';
import type { End } from '../units/ends.ts';
import { judgeStandard } from './judge-standard.ts';
import type { Standard } from './standard.ts';

/** Drawn plays with known positions: fixtures/film-truth/README.md. */
interface Truth {
  readonly teams: readonly { readonly id: string; readonly defends: End | null }[];
  readonly skaters: readonly { readonly id: string; readonly team: string; readonly role: string }[];
  readonly rink: { readonly landmarksM: Readonly<Record<string, readonly [number, number]>> };
  readonly frames: readonly {
    readonly i: number;
    readonly landmarks: Readonly<Record<string, readonly [number, number]>>;
    readonly skaters: readonly {
      readonly id: string;
      readonly foot: readonly [number, number];
      readonly footSeen?: boolean;
    }[];
    readonly puck: { readonly px: readonly [number, number]; readonly owner: string | null };
  }[];
}

const RINK = rinkOf({ preset: '200x85ft' });
const roundPx = ([x, y]: readonly [number, number]) => ({ xPx: Math.round(x), yPx: Math.round(y) });

/** The freeze a coach would make of a frame: whole-pixel clicks on up to 12 landmarks and on every foot seen. */
const frozen = (film: 'A' | 'B', frameIndex: number): FrozenScene => {
  const truth: Truth = JSON.parse(
    readFileSync(new URL(`../../fixtures/film-truth/${film}.json`, import.meta.url), 'utf8'),
  );
  const frame = truth.frames.find(({ i }) => i === frameIndex)!;
  const names = Object.keys(frame.landmarks);
  const every = Math.ceil(names.length / 12);
  const pins = names
    .filter((_, i) => i % every === 0)
    .map(id => {
      const [xM, yM] = truth.rink.landmarksM[id]!;
      return { id, iceM: { xM, yM }, filmPx: roundPx(frame.landmarks[id]!) };
    });
  const result = fitPins(pins, 1);
  if (result.kind === 'refused') throw new Error(result.reason);
  const who = new Map(truth.skaters.map(skater => [skater.id, skater]));
  const { owner, px } = frame.puck;
  const { scene, unplaced } = sceneFromFreeze({
    fit: result.fit,
    rink: RINK,
    attacks: 'plusX',
    skaters: frame.skaters
      .filter(({ id, footSeen }) => footSeen === true && who.get(id)!.team !== 'O')
      .map(({ id, foot }) => {
        const { team, role } = who.get(id)!;
        return {
          id,
          role,
          side: team === 'L' ? ('us' as const) : ('them' as const),
          kind: role === 'G' ? ('goalie' as const) : ('skater' as const),
          feetPx: roundPx(foot),
        };
      }),
    puck: { atPx: roundPx(px), ...(owner === null ? {} : { carrierId: owner }) },
  });
  expect(unplaced).toEqual([]);
  return scene;
};

const standard = (kind: string, who: string, whom: string, withinM: number) =>
  ({ kind, who, whom, withinM, when: { at: 'puckCrosses', line: 'centreLine' } }) as Standard;

describe('standards on frames of film A, where three hunt the carrier and two keep a gap', () => {
  it('the first forward back is behind the carrier at their blue line, and within 6 m of him at ours', () => {
    const level = standard('levelWith', 'firstForwardBack', 'carrier', 1);
    expect(judgeStandard(frozen('A', 161), level)).toMatchObject({
      answer: 'no',
      who: ['L21'],
      whom: ['Q23'],
    });
    const hunted = standard('within', 'firstForwardBack', 'carrier', 6);
    expect(judgeStandard(frozen('A', 234), hunted)).toMatchObject({ answer: 'yes', who: ['L21'] });
  });

  it('the nearest defender has a gap under 4 m at the centre line, but not under 2 m', () => {
    const scene = frozen('A', 201);
    const gap = (withinM: number) =>
      judgeStandard(scene, standard('within', 'nearestDefender', 'carrier', withinM));
    expect(gap(4)).toMatchObject({ answer: 'yes', who: ['L27'] });
    expect(gap(2).answer).toBe('no');
    // Truth: (−1.7653, −3.7856) to (0.9748, −5.5926).
    const { reading } = gap(3);
    expect(Math.abs(reading!.value - Math.hypot(2.7401, 1.807))).toBeLessThan(1.96 * reading!.sd);
  });

  it('at our blue line both defenders are goal-side of the puck', () => {
    // 0.39 m along the sheet is less than its ±; 2 m of allowance settles it.
    const scene = frozen('A', 234);
    expect(judgeStandard(scene, standard('goalSide', 'everyDefender', 'puck', 2)).answer).toBe('yes');
  });
});

describe('standards on frames of film B, where a defender joins the rush', () => {
  it('he is up with the puck at the centre line within 2 m, and it is not told for 1.4 m', () => {
    // Truth: 1.39 m behind it.
    const scene = frozen('B', 360);
    const up = (withinM: number) =>
      judgeStandard(scene, standard('upWith', 'nearestDefender', 'puck', withinM));
    expect(up(2)).toMatchObject({ answer: 'yes', who: ['L27'] });
    expect(up(1.4)).toMatchObject({ answer: 'cannotTell', why: 'straddles' });
  });

  it('five in the picture is a no once it is said that everybody who is seen was placed: those are three', () => {
    const when = { at: 'puckCrosses', line: 'centreLine' } as const;
    const numbers: Standard = { kind: 'numbers', zone: 'picture', atLeastCount: 5, when };
    const who = ['L14', 'L21', 'L27'];
    const scene = frozen('B', 360);
    expect(judgeStandard(scene, numbers)).toMatchObject({ answer: 'cannotTell', who });
    expect(judgeStandard({ ...scene, isEveryonePlaced: true }, numbers)).toMatchObject({ answer: 'no', who });
  });
});
