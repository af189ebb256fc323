import type { Judgement, Standard } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import type { FreezeView } from './freeze-view.ts';
import { judgedWords, measuredFigure, measuredWords, numbersWhy, wantedWords } from './standard-words.ts';

const view = { lengths: 'metres', freeze: { skaters: { c: { role: 'C' } } } } as unknown as FreezeView;
const standard = (kind: 'levelWith' | 'upWith' | 'within' | 'goalSide'): Standard => ({
  kind,
  who: 'firstForwardBack',
  whom: 'puck',
  withinM: 1,
  when: { at: 'weLoseThePuck' },
});
const judged = (value: number, change: Partial<Judgement> = {}): Judgement => ({
  answer: 'no',
  why: 'clear',
  who: ['c'],
  whom: ['puck'],
  reading: { value, sd: 0.1 },
  threshold: 1,
  unit: 'm',
  ...change,
});

describe('a standard on a freeze, in words', () => {
  it.each([
    ['levelWith', 4, 'C further from our net than the puck'],
    ['levelWith', -4, 'C nearer to our net than the puck'],
    ['upWith', 4, 'C nearer to our net than the puck'],
    ['upWith', -4, 'C further from our net than the puck'],
    ['goalSide', 4, 'C further from our net than the puck'],
    ['within', 4, 'C to the puck'],
  ] as const)('%s, %d m', (kind, value, words) => {
    expect(measuredWords(standard(kind), judged(value), view)).toBe(words);
    expect(measuredFigure(standard(kind), judged(value))).toEqual({ value: '4.0', plusMinus: '± 0.2 m' });
  });

  it.each([
    ['goalSide', 'us', 'C has the puck, which is ours here'],
    ['goalSide', 'them', undefined],
    ['within', 'us', undefined],
  ] as const)('%s with a puck of %s: says that it was not asked whose it is', (kind, side, said) => {
    const ice = { scene: { skaters: [{ id: 'c', side }], puck: { carrierId: 'c' } } };
    const words = judgedWords(standard(kind), judged(0.4, { answer: 'yes' }), {
      ...view,
      ice,
    } as unknown as FreezeView);
    if (said === undefined) expect(words).not.toContain('by places alone');
    else expect(words).toContain(`Judged by places alone: ${said}`);
  });

  it('of a count says how many of ours are placed, in the answer and in the why', () => {
    const of = (id: string, side: string, kind = 'skater') => ({ id, side, kind });
    const skaters = [of('a', 'us'), of('b', 'us'), of('c', 'us'), of('g', 'us', 'goalie'), of('x', 'them')];
    const seen = { ...view, ice: { scene: { skaters } } } as unknown as FreezeView;
    const numbers: Standard = {
      kind: 'numbers',
      zone: 'picture',
      atLeastCount: 5,
      when: { at: 'weLoseThePuck' },
    };
    const three = judged(0, {
      answer: 'cannotTell',
      why: 'notEveryonePlaced',
      reading: { value: 3, sd: 0 },
      unit: '',
    });
    expect(judgedWords(numbers, three, seen)).toBe(
      'Of us in the picture: 3; wanted: 5 or more. Not everybody on the ice has been placed: 3 of a full side of 5 are. If nobody of us is missing, say so under Skaters.',
    );
    expect(numbersWhy(seen)).toContain('3 of a full side of 5 are placed in this picture');
    const saidOf = (allPlaced: 'inPicture' | 'onIce'): FreezeView => ({
      ...seen,
      freeze: { ...seen.freeze, allPlaced },
    });
    expect(numbersWhy(saidOf('onIce'))).toContain('nobody of us on the ice is without a mark');
    expect(judgedWords(numbers, three, saidOf('inPicture'))).toMatch(/does not show all of that zone/);
  });

  it('says what was wanted, and why it is no plain answer', () => {
    expect(wantedWords(standard('upWith'))).toBe('wanted: up with, give or take 1.0 m');
    expect(
      judgedWords(standard('levelWith'), judged(1.1, { answer: 'cannotTell', why: 'straddles' }), view),
    ).toBe(
      'C further from our net than the puck by 1.1 ± 0.2 m; wanted: level, give or take 1.0 m. The ± reaches over the limit.',
    );
    expect(
      judgedWords(standard('levelWith'), judged(3.048), { ...view, lengths: 'feet' } as FreezeView),
    ).toBe('C further from our net than the puck by 10 ± 1 ft; wanted: level, give or take 3 ft.');
    const { reading: _, ...without } = judged(0, { answer: 'cannotTell', why: 'noPuck' });
    expect(judgedWords(standard('levelWith'), without, view)).toBe('The puck has not been placed.');
  });
});
