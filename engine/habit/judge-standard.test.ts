import { describe, expect, it } from 'vitest';
import type { FrozenScene } from '../film/frozen-scene.ts';
import { randomOf } from '../random/random.ts';
import { isInZone, RINK_ZONES } from '../rink/zones.ts';
import { judgeStandard } from './judge-standard.ts';
import { type Drawn, halfTurned, sceneOf } from './scene.reference.ts';
import type { Standard } from './standard.ts';
import { isDefenderRole, isForwardRole } from './who.ts';
import { zoneAreaOf } from './zone-area.ts';

const at = (role: string, xM: number, yM = 0, id = role): Drawn => ({ id, role, xM, yM });
const when = { at: 'weLoseThePuck' } as const;
const standardOf = (
  kind: 'levelWith' | 'upWith' | 'within' | 'goalSide',
  who: string,
  whom: string,
  withinM = 1,
) => ({ kind, who, whom, withinM, when }) as Standard;

const level = standardOf('levelWith', 'firstForwardBack', 'puck');

describe('roles', () => {
  it('tell forwards from defenders', () => {
    expect(['F1', 'F', 'F3', 'LW', 'C', 'RW', 'W', 'lw'].every(isForwardRole)).toBe(true);
    expect(['D', 'D1', 'LD', 'RD'].every(isDefenderRole)).toBe(true);
    expect(['D1', 'G', 'Co', 'X', ''].some(isForwardRole)).toBe(false);
    expect(['F1', 'G', 'RW', ''].some(isDefenderRole)).toBe(false);
  });
});

describe('level with the puck, coming back', () => {
  const scene = (firstXM: number, sdM = 0.1) =>
    sceneOf({
      us: [at('F1', 15, 4), at('F2', firstXM, 2), at('F3', 20, -6), at('D1', -5, 1)],
      puck: { xM: 5, yM: -3 },
      sdM,
    });

  it('answers yes, no, and cannot tell where the ± straddles', () => {
    expect(judgeStandard(scene(4), level)).toMatchObject({ answer: 'yes', why: 'clear', who: ['F2'] });
    expect(judgeStandard(scene(8), level)).toMatchObject({ answer: 'no', why: 'clear' });
    expect(judgeStandard(scene(6.1), level)).toMatchObject({ answer: 'cannotTell', why: 'straddles' });
    // The same place is clear when it is known better.
    expect(judgeStandard(scene(6.1, 0.01), level).answer).toBe('no');
  });

  it('does not take one of ours for a forward, nor for none, until it is said', () => {
    // F1 level, and one of unknown role far behind him: whoever of them is meant, the answer is the same or it is not told.
    const two = (unknownXM: number, knownXM = 4) =>
      judgeStandard(
        sceneOf({ us: [at('F1', knownXM, 2), at('U1', unknownXM, -6)], puck: { xM: 5, yM: -3 } }),
        level,
      );
    expect(two(20)).toMatchObject({ answer: 'yes', who: ['F1'] });
    expect(two(3)).toMatchObject({ answer: 'yes' });
    expect(two(9, 11)).toMatchObject({ answer: 'no' });
    expect(two(4, 11)).toMatchObject({ answer: 'cannotTell', why: 'whoIsUnsure' });
    const every = standardOf('levelWith', 'everyForward', 'puck');
    const three = [at('F1', 4), at('F2', 3, 5), at('F3', 2, -5)];
    const asked = (us: readonly Drawn[]) =>
      judgeStandard(sceneOf({ us, puck: { xM: 5, yM: 0 }, isEveryonePlaced: true }), every);
    expect(asked([...three, at('U1', 20)])).toMatchObject({ answer: 'yes' });
    expect(asked([...three.slice(1), at('U1', 20)])).toMatchObject({
      answer: 'cannotTell',
      why: 'roleNotSaid',
    });
    expect(asked([at('U1', 2)])).toMatchObject({ answer: 'cannotTell', why: 'roleNotSaid' });
    expect(asked([at('F1', 15), at('U1', 2)])).toMatchObject({ answer: 'no' });
  });

  it('reads the offset along the sheet with the ± of both places', () => {
    const { reading, threshold, unit, whom } = judgeStandard(scene(7), level);
    expect(reading?.value).toBeCloseTo(2, 12);
    expect(reading?.sd).toBeCloseTo(Math.hypot(0.1, 0.1), 12);
    expect({ threshold, unit, whom }).toEqual({ threshold: 1, unit: 'm', whom: ['puck'] });
  });

  it('does not guess between two who may be first back, unless both answer alike', () => {
    const two = (secondXM: number) =>
      sceneOf({
        us: [at('F1', 5.5, 9, 'wide'), at('F2', secondXM, 0, 'middle'), at('F3', 25)],
        puck: { xM: 5, yM: 0 },
        sdM: 0.05,
      });
    // The wide one is as far from the net, but at x he is level; the middle one is not.
    const apart = judgeStandard(two(6.7), level);
    expect(apart).toMatchObject({ answer: 'cannotTell', why: 'whoIsUnsure' });
    expect([...apart.who].sort()).toEqual(['middle', 'wide']);
    expect(judgeStandard(two(3), level)).toMatchObject({ answer: 'yes', who: ['middle'] });
  });

  it('says what the picture lacks', () => {
    const bare = { us: [at('F1', 3)] };
    expect(judgeStandard(sceneOf(bare), level)).toMatchObject({ answer: 'cannotTell', why: 'noPuck' });
    expect(judgeStandard(sceneOf({ us: [at('D1', 3)], puck: { xM: 0, yM: 0 } }), level).why).toBe(
      'nobodyOfWho',
    );
    const carrier = standardOf('within', 'nearestDefender', 'carrier');
    expect(judgeStandard(sceneOf({ us: [at('D1', 3)], puck: { xM: 0, yM: 0 } }), carrier).why).toBe(
      'noCarrier',
    );
    const last = standardOf('goalSide', 'everyForward', 'lastOfThem');
    expect(judgeStandard(sceneOf({ ...bare, puck: { xM: 0, yM: 0 } }), last).why).toBe('nobodyOfThem');
    const ours = standardOf('upWith', 'puckCarrier', 'lastOfThem');
    const theirs = { us: [at('F1', 3)], them: [at('F1', 9, 0, 'q')], puck: { xM: 9, yM: 0, carrierId: 'q' } };
    expect(judgeStandard(sceneOf(theirs), ours).why).toBe('noCarrier');
  });
});

describe('whose the puck is', () => {
  const us = [at('F1', 4, 4), at('D1', 1, 5), at('F2', 20, -6), at('F3', 22, 8), at('D2', -9)];
  const them = [at('F1', 5, -3, 'q')];
  const withPuckOf = (carrierId?: string) =>
    sceneOf({ us, them, puck: { xM: 5, yM: -3, ...(carrierId === undefined ? {} : { carrierId }) } });

  it('coming back is asked while it is theirs or nobody has it, joining the rush while it is ours or nobody has it', () => {
    const back = (carrierId?: string) => judgeStandard(withPuckOf(carrierId), level);
    expect(back('q')).toMatchObject({ answer: 'yes', why: 'clear' });
    expect(back()).toMatchObject({ answer: 'yes', why: 'clear' });
    expect(back('F2')).toMatchObject({ answer: 'cannotTell', why: 'puckIsOurs', who: ['F1'] });
    const rush = standardOf('upWith', 'nearestDefender', 'puck', 5);
    const joins = (carrierId?: string) => judgeStandard(withPuckOf(carrierId), rush);
    expect(joins('F1')).toMatchObject({ answer: 'yes', why: 'clear' });
    expect(joins()).toMatchObject({ answer: 'yes', why: 'clear' });
    expect(joins('q')).toMatchObject({ answer: 'cannotTell', why: 'puckIsTheirs' });
  });

  it('what is measured is the same whoever has it, and other standards do not ask', () => {
    expect(judgeStandard(withPuckOf('F2'), level).reading).toEqual(
      judgeStandard(withPuckOf('q'), level).reading,
    );
    for (const kind of ['within', 'goalSide'] as const) {
      const standard = standardOf(kind, 'firstForwardBack', 'puck', 9);
      expect(judgeStandard(withPuckOf('F2'), standard)).toEqual(judgeStandard(withPuckOf('q'), standard));
    }
    const carrier = standardOf('levelWith', 'puckCarrier', 'lastOfThem', 1);
    expect(judgeStandard(withPuckOf('F1'), carrier).why).toBe('clear');
  });
});

describe('up with the puck, joining the rush', () => {
  const upWith = standardOf('upWith', 'nearestDefender', 'puck', 1);

  it('is met by a defender level with it or ahead of it, not by one who trails', () => {
    const scene = (xM: number) =>
      sceneOf({ us: [at('D1', xM, 5), at('D2', -12, -3), at('F1', 0, -4)], puck: { xM: 0, yM: -4 } });
    expect(judgeStandard(scene(-0.5), upWith).answer).toBe('yes');
    expect(judgeStandard(scene(3), upWith).answer).toBe('yes');
    expect(judgeStandard(scene(-4), upWith).answer).toBe('no');
  });
});

describe('gap: within of the carrier', () => {
  it('asks the defender who is nearest to him', () => {
    const gap = standardOf('within', 'nearestDefender', 'carrier', 3);
    const scene = sceneOf({
      us: [at('D1', 2, 4), at('D2', 1, -8)],
      them: [at('F1', 4, 4, 'carrier'), at('F2', 6, -8, 'other')],
      puck: { xM: 3.5, yM: 4, carrierId: 'carrier' },
    });
    const judged = judgeStandard(scene, gap);
    expect(judged).toMatchObject({ answer: 'yes', who: ['D1'], whom: ['carrier'] });
    expect(judged.reading?.value).toBeCloseTo(2, 12);
  });
});

describe('every and any', () => {
  const behind = standardOf('goalSide', 'everyForward', 'puck', 0);
  const scene = (parts: { forwards: readonly number[]; isEveryonePlaced?: boolean }): FrozenScene =>
    sceneOf({
      us: [...parts.forwards.map((xM, i) => at(`F${i + 1}`, xM, i)), at('D1', -20), at('D2', -19)],
      puck: { xM: 0, yM: 0 },
      ...(parts.isEveryonePlaced === undefined ? {} : { isEveryonePlaced: parts.isEveryonePlaced }),
    });

  it('one forward ahead of the puck is a no, whoever is not seen', () => {
    const judged = judgeStandard(scene({ forwards: [-5, 6] }), behind);
    expect(judged).toMatchObject({ answer: 'no', why: 'clear' });
    expect(judged.who[0]).toBe('F2');
  });

  it('a yes needs all three, or the word that nobody is missing', () => {
    expect(judgeStandard(scene({ forwards: [-5, -6] }), behind)).toMatchObject({
      answer: 'cannotTell',
      why: 'notEveryonePlaced',
    });
    expect(judgeStandard(scene({ forwards: [-5, -6, -4] }), behind).answer).toBe('yes');
    expect(judgeStandard(scene({ forwards: [-5, -6], isEveryonePlaced: true }), behind).answer).toBe('yes');
  });

  it('any of us needs one', () => {
    const any = standardOf('within', 'anyOfUs', 'puck', 2);
    expect(judgeStandard(scene({ forwards: [1, 9] }), any).answer).toBe('yes');
    expect(judgeStandard(scene({ forwards: [5, 9] }), any).why).toBe('notEveryonePlaced');
    expect(judgeStandard(scene({ forwards: [5, 9, 8] }), any).answer).toBe('no');
  });

  it('measures each against the opponent nearest to him', () => {
    const covered = standardOf('within', 'everyDefender', 'nearestOfThem', 3);
    const judged = judgeStandard(
      sceneOf({
        us: [at('D1', -20, 5), at('D2', -20, -5)],
        them: [at('F1', -19, 6, 'a'), at('F2', -18, -6, 'b'), at('G', 26, 0, 'g')],
      }),
      covered,
    );
    expect(judged.answer).toBe('yes');
    expect(judged.whom).toEqual(['b']);
  });
});

describe('numbers in a zone', () => {
  const numbers = (zone: string, atLeastCount: number) =>
    ({ kind: 'numbers', zone, atLeastCount, when }) as Standard;
  const five = [at('F1', -18, 1), at('F2', -19, -2), at('F3', -7.6, 3), at('D1', -24, 2), at('D2', -15.9, 0)];

  it('counts who is surely in the house', () => {
    const scene = sceneOf({ us: [...five, at('G', -26)] });
    expect(judgeStandard(scene, numbers('house', 3)).answer).toBe('yes');
    expect(judgeStandard(scene, numbers('house', 5)).answer).toBe('no');
  });

  it('cannot tell when one stands on the edge', () => {
    const edge = [...five.slice(0, 4), at('D2', -16.46, 0)];
    const judged = judgeStandard(sceneOf({ us: edge }), numbers('house', 4));
    expect(judged).toMatchObject({ answer: 'cannotTell', why: 'straddles' });
    expect(judged.reading).toEqual({ value: 3.5, sd: 0.5 });
  });

  it('cannot tell when somebody who is not placed may be in it', () => {
    const three = five.slice(0, 3);
    expect(judgeStandard(sceneOf({ us: three }), numbers('ourZone', 4)).why).toBe('notEveryonePlaced');
    expect(judgeStandard(sceneOf({ us: three, isEveryonePlaced: true }), numbers('ourZone', 4)).answer).toBe(
      'no',
    );
  });

  it('counts in the picture who is placed; that there are no more is sure only when everybody is said to be placed', () => {
    const three = five.slice(0, 3);
    const ask = (us: typeof five, atLeastCount: number, isEveryonePlaced?: true) =>
      judgeStandard(
        sceneOf({ us, ...(isEveryonePlaced ? { isEveryonePlaced } : {}) }),
        numbers('picture', atLeastCount),
      );
    expect(ask(five, 5)).toMatchObject({ answer: 'yes', why: 'clear' });
    expect(ask(three, 3).answer).toBe('yes');
    expect(ask(three, 5)).toMatchObject({
      answer: 'cannotTell',
      why: 'notEveryonePlaced',
      reading: { value: 3, sd: 0 },
    });
    expect(ask(three, 5, true)).toMatchObject({ answer: 'no', why: 'clear' });
    // A full side is placed: a sixth can only be a goalie, who is not counted.
    expect(ask(five, 6)).toMatchObject({ answer: 'no', why: 'clear' });
  });

  it('with all of us in the picture placed counts for sure in it, and in a zone that it shows whole', () => {
    const square = (fromXM: number, toXM: number) =>
      [
        [fromXM, -13],
        [toXM, -13],
        [toXM, 13],
        [fromXM, 13],
      ].map(([xM, yM]) => ({ xM: xM!, yM: yM! }));
    const ask = (zone: Parameters<typeof numbers>[0], toXM: number) =>
      judgeStandard(sceneOf({ us: five.slice(0, 3), allOfUsPlacedInM: square(-31, toXM) }), numbers(zone, 4))
        .answer;
    // NHL rule 1.7: the blue line's inner edge is 64 ft from the goal line, 11 ft from the boards: x = −7.62 m.
    expect([ask('picture', -20), ask('ourZone', -7), ask('house', -14)]).toEqual(['no', 'no', 'no']);
    expect([ask('ourZone', -8), ask('house', -18), ask('middleLane', -7)]).toEqual(
      Array(3).fill('cannotTell'),
    );
    // Whoever is out of the picture is on the ice all the same: of all of us it says nothing.
    const all = { ...standardOf('goalSide', 'allOfUs', 'puck', 1) };
    const behind = sceneOf({
      us: five.slice(0, 3),
      puck: { xM: 20, yM: 0 },
      allOfUsPlacedInM: square(-31, 31),
    });
    expect(judgeStandard(behind, all).why).toBe('notEveryonePlaced');
  });

  it('has the zones of the rink', () => {
    const random = randomOf(3);
    for (let i = 0; i < 2000; i++) {
      const [xM, yM] = [-30 + 60 * random.uniform(), -12 + 24 * random.uniform()];
      const attacks = random.uniform() < 0.5 ? 'plusX' : 'minusX';
      const scene = sceneOf({ us: [at('F1', xM, yM)], sdM: 0, attacks, isEveryonePlaced: true });
      for (const zone of RINK_ZONES) {
        const isIn = isInZone(scene.rink, zone, { xM, yM }, attacks === 'plusX' ? 'minusX' : 'plusX');
        expect(judgeStandard(scene, numbers(zone, 1)).answer).toBe(isIn ? 'yes' : 'no');
        expect(zoneAreaOf(scene.rink, zone, attacks)).not.toBeNull();
      }
    }
  });
});

describe('laws of judging', () => {
  const kinds = ['levelWith', 'upWith', 'within', 'goalSide'] as const;
  const whos = [
    'firstForwardBack',
    'everyForward',
    'puckCarrier',
    'nearestDefender',
    'everyDefender',
    'anyOfUs',
    'allOfUs',
  ];
  const whoms = ['puck', 'carrier', 'nearestOfThem', 'lastOfThem', 'ourNet'];
  const some = (random: ReturnType<typeof randomOf>, sdM: number, place = 1): FrozenScene => {
    const spot = (role: string, id: string) =>
      at(role, place * (-28 + 56 * random.uniform()), -11 + 22 * random.uniform(), id);
    const us = ['F1', 'F2', 'F3', 'D1', 'D2'].map(role => spot(role, role));
    const them = ['F1', 'F2', 'F3', 'D1', 'D2'].map(role => spot(role, `q${role}`));
    const carrier = [...us, ...them][random.below(10)]!;
    return sceneOf({ us, them, puck: { xM: carrier.xM, yM: carrier.yM, carrierId: carrier.id }, sdM });
  };
  const each = (test: (standard: Standard) => void) => {
    for (const kind of kinds) {
      for (const who of whos) {
        for (const whom of whoms) test(standardOf(kind, who, whom, 2));
      }
    }
  };

  it('a half turn of the sheet changes no answer', () => {
    const random = randomOf(11);
    for (let i = 0; i < 20; i++) {
      const scene = some(random, 0.4);
      each(standard => {
        const [a, b] = [judgeStandard(scene, standard), judgeStandard(halfTurned(scene), standard)];
        expect(b.answer).toBe(a.answer);
        expect(b.who).toEqual(a.who);
      });
    }
  });

  it('a wider allowance never turns a yes into a no', () => {
    const random = randomOf(12);
    const rank = { no: 0, cannotTell: 1, yes: 2 };
    for (let i = 0; i < 20; i++) {
      const scene = some(random, 0.4);
      each(standard => {
        if (standard.kind === 'numbers') return;
        const wider = judgeStandard(scene, { ...standard, withinM: standard.withinM + 3 });
        expect(rank[wider.answer]).toBeGreaterThanOrEqual(rank[judgeStandard(scene, standard).answer]);
      });
    }
  });

  it('is wrong in at most 5 % of what it answers, when places are off by their ±', () => {
    const random = randomOf(13);
    let answered = 0;
    let wrong = 0;
    for (let i = 0; i < 150; i++) {
      const truth = some(random, 0);
      const sdM = 0.5;
      const off = () => sdM * random.normal();
      const moved = sceneOf({
        us: truth.skaters
          .filter(({ side }) => side === 'us')
          .map(({ id, role, atM }) => ({ id, role, xM: atM.xM + off(), yM: atM.yM + off() })),
        them: truth.skaters
          .filter(({ side }) => side === 'them')
          .map(({ id, role, atM }) => ({ id, role, xM: atM.xM + off(), yM: atM.yM + off() })),
        puck: {
          xM: truth.puck!.atM.xM + off(),
          yM: truth.puck!.atM.yM + off(),
          carrierId: truth.puck!.carrierId!,
        },
        sdM,
      });
      each(standard => {
        const [known, told] = [judgeStandard(truth, standard), judgeStandard(moved, standard)];
        if (known.answer === 'cannotTell' || told.answer === 'cannotTell') return;
        answered++;
        if (known.answer !== told.answer) wrong++;
      });
    }
    expect(answered).toBeGreaterThan(5000);
    expect(wrong / answered).toBeLessThan(0.05);
    expect(wrong).toBeGreaterThan(0);
  });
});
