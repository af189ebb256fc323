import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type SaidFunction, saidFunctionsIn } from './said-of.ts';

const FACE = readFileSync('engine/index.ts', 'utf8');
const files = [...FACE.matchAll(/from '\.\/(.+)'/g)].map(found => `engine/${found[1]}`);
/** Where only some names of a file are on the face. */
const chosen = new Map(
  [...FACE.matchAll(/export \{([^}]+)\} from '\.\/(.+)'/g)].map(found => [
    `engine/${found[2]}`,
    (found[1] ?? '').split(',').map(name => name.replace('type ', '').trim()),
  ]),
);
const functions = files
  .flatMap(saidFunctionsIn)
  .filter(each => chosen.get(each.file)?.includes(each.name) ?? true);

/** Parts whose functions are laws or judgements: each says where it comes from, or that it is our own. */
const PARTS_OF_LAW = ['skater', 'puck', 'pass', 'control', 'statistics', 'film', 'habit'];

const where = (each: SaidFunction): string => `${each.file} ${each.name}`;
const unsaid = (wrong: (each: SaidFunction) => boolean): string[] => functions.filter(wrong).map(where);

describe('what the face of the engine says of itself', () => {
  it('finds the functions it is to judge', () => {
    expect(functions.length).toBeGreaterThan(120);
    expect(functions.find(each => each.name === 'normalQuantile')?.numbersIn).toEqual(['probability']);
  });

  it('every function has a docstring', () => {
    expect.soft(unsaid(each => each.said.length < 20)).toEqual([]);
  });

  it('a number that comes out has its unit in the name or in the words', () => {
    const unitInName = /(M|S|Mps|Mps2|Rad|Hz|Px|M2|SqM2|Ratio|Count|Index|Min)$/;
    const unitInWords =
      /\b(metres?|seconds?|m\/s²?|m²?|s|1\/m|1\/s|rad|radians?|minutes?|feet|pixels?|px|chances?|share|probabilit(y|ies)|rate|count|how many|how often|no unit|deviates?|logarithm|z)\b|ln |0[ –]?(to|–) ?1/i;
    expect(
      unsaid(
        each =>
          /^number( \||$)/.test(each.returns) && !unitInName.test(each.name) && !unitInWords.test(each.said),
      ),
    ).toEqual([]);
  });

  it('numbers that go in have their valid range', () => {
    const range = /[≥>≤<∈]|\bany\b|between|0 to 1|0–1|\(0|clamped|0, 1|whole number/i;
    expect.soft(unsaid(each => each.numbersIn.length > 0 && !range.test(each.said))).toEqual([]);
  });

  it('says when there is no answer, and when it throws', () => {
    const noAnswer = /\bnone\b|\bnull\b|\bNaN\b|undefined|empty|\bno (answer|such)|absence/i;
    expect(
      unsaid(each => /\bNone\b|\bnull\b|\bundefined\b/.test(each.returns) && !noAnswer.test(each.said)),
    ).toEqual([]);
    expect.soft(unsaid(each => each.throws && !/\bthrows?\b/i.test(each.said))).toEqual([]);
  });

  it('a law says its source, or that it is ours', () => {
    const source =
      /\bsource|\bdefinition\b|\b(19|20)\d\d\b|checks\/data|\bour(s| own| choice| definition| reading| rule)\b|estimate|by definition|arithmetic|see `|as `/i;
    expect(
      unsaid(each => PARTS_OF_LAW.includes(each.file.split('/')[1] ?? '') && !source.test(each.said)),
    ).toEqual([]);
  });
});
