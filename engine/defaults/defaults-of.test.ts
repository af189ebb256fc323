import { describe, expect, it } from 'vitest';
import * as versionRows from '../drill/version-rows.ts';
import * as ideasRows from '../ideas/ideas-rows.ts';
import * as manyRows from '../many/many-rows.ts';
import * as mendRows from '../mends/mend-rows.ts';
import { rinkOf } from '../rink/rink-of.ts';
import * as findingRows from '../run/finding-rows.ts';
import * as goalieRows from '../run/goalie-rows.ts';
import { LEVEL_IDS } from '../skater/model.ts';
import { defaultsOf } from './defaults-of.ts';

describe('every default', () => {
  const rinks = (['200x85ft', '60x30m', '60x26m', 'college200x100ft', 'halfIce', 'crossIce'] as const).map(
    preset => rinkOf({ preset }),
  );

  it('lies between its edges, says where it is from and what it is', () => {
    for (const level of LEVEL_IDS)
      for (const rink of rinks)
        for (const { name, rows } of defaultsOf(level, rink)) {
          expect(rows.length, name).toBeGreaterThan(2);
          for (const row of rows) {
            const said = `${name}: ${row.name}`;
            expect(row.range[0], said).toBeLessThanOrEqual(row.value);
            expect(row.range[1], said).toBeGreaterThanOrEqual(row.value);
            expect(row.source.length, said).toBeGreaterThan(3);
            expect(['sourced', 'derived', 'estimate'], said).toContain(row.status);
          }
        }
  });

  it('stands there also where it is a judgement about versions, ideas, tuned answers and mends', () => {
    const listed = new Set(defaultsOf('u18', rinks[0]!).flatMap(({ rows }) => rows));
    const judged = [versionRows, ideasRows, manyRows, mendRows, goalieRows, findingRows].flatMap(rows =>
      Object.values(rows).filter(row => typeof row === 'object' && row !== null && 'range' in row),
    );
    expect(judged.length).toBeGreaterThan(50);
    for (const row of judged.filter(({ name }) => !name.includes('hecking')))
      expect(listed, row.name).toContain(row);
  });

  it('is named once in its group', () => {
    for (const { name, rows } of defaultsOf('u18', rinks[0]!)) {
      const names = rows.map(row => row.name);
      expect(new Set(names).size, name).toBe(names.length);
    }
  });
});
