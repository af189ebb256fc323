import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..');
const folder = mkdtempSync(join(tmpdir(), 'checks-'));
afterAll(() => rmSync(folder, { recursive: true }));

const run = (...paths: readonly string[]) => {
  const done = spawnSync(process.execPath, ['--import', 'tsx', join(root, 'cli', 'checks.ts'), ...paths], {
    cwd: root,
    encoding: 'utf8',
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
};
const written = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

describe('npm run checks', () => {
  it('prints cases, passed, failed and the largest error in its unit, and ends with 0 when all pass', () => {
    const { code, out } = run('checks/data/sprint.json');
    expect(code).toBe(0);
    expect(out).toMatch(/82 cases, 82 passed, 0 failed/);
    expect(out).toMatch(/largest error: .* m \(/);
  });

  it('names failing cases and ends with 1', () => {
    const parsed = JSON.parse(readFileSync(join(root, 'checks/data/stats.json'), 'utf8')) as {
      cases: { name: string; input: unknown; expected: Record<string, unknown> }[];
    };
    parsed.cases[0]!.expected.lowerRatio = 0.5;
    parsed.cases[1]!.input = { kind: 'curling' };
    const { code, out } = run(written('spoilt.json', JSON.stringify(parsed)));
    expect(code).toBe(1);
    expect(out).toMatch(/59 cases, 57 passed, 2 failed/);
    expect(out).toContain(`FAILED ${parsed.cases[0]!.name}: lowerRatio is off`);
    expect(out).toContain(`FAILED ${parsed.cases[1]!.name}: unknown kind "curling"`);
  });

  it('says in one sentence why a file cannot be taken, still reads the others, and ends with 2', () => {
    const { code, out, err } = run(
      written('broken.json', '{"cases"'),
      join(folder, 'missing.json'),
      'checks/data/fit.json',
    );
    expect(code).toBe(2);
    expect(err).toMatch(/broken\.json is not a file of checks: it is not JSON/);
    expect(err).toMatch(/missing\.json is not a file of checks: it cannot be read/);
    expect(out).toMatch(/33 cases, 33 passed/);
  });
});
