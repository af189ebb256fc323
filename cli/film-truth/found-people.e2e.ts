import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import type { PeopleAccuracy } from './measure-people.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

// What was measured less a margin for other decoders; a coach looks at each suggestion. The films’ truth judges.
it.each([
  ['A.mp4', 'A.json'],
  ['B.mp4', 'B.json'],
])(
  'finds most people in clear view of %s, hardly anybody who is not there, with feet within their ±',
  (film, truth) => {
    const paths = [`fixtures/film/${film}`, `fixtures/film-truth/${truth}`];
    const asked = ['--import', 'tsx', 'cli/film-truth.ts', ...paths, '--people', '--json', '--until', '8.1'];
    const { status, stdout } = spawnSync(process.execPath, asked, {
      cwd: ROOT,
      encoding: 'utf8',
      maxBuffer: 1e8,
    });
    expect(status).toBe(0);
    const people = JSON.parse(stdout) as PeopleAccuracy;
    expect(people.foundCount).toBeGreaterThan(25);
    expect(people.precision).toBeGreaterThan(0.88);
    expect(people.recall).toBeGreaterThan(0.8);
    expect(people.footMedianM).toBeLessThan(0.3);
    expect(people.heldShare).toBeGreaterThan(0.88);
    expect(people.groupedShare).toBeGreaterThan(0.94);
    expect(people.letteredShare).toBeGreaterThan(0.8);
    expect(people.groupedShare * people.letteredShare).toBeGreaterThan(0.75);
  },
  120_000,
);
