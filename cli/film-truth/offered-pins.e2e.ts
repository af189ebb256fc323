import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { OfferReport } from './measure-offers.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** The whole way: Chromium decodes in colour, pins are offered for each picture alone, the truth of the film judges. */
const offersOf = (film: string, truth: string, every: number, untilS: number): OfferReport => {
  const asked = [
    '--import',
    'tsx',
    'cli/film-truth.ts',
    `fixtures/film/${film}`,
    `fixtures/film-truth/${truth}`,
    '--offers',
    '--every',
    String(every),
    '--until',
    String(untilS),
    '--decoder',
    'chromium',
    '--json',
  ];
  const { status, stdout, stderr } = spawnSync(process.execPath, asked, { cwd: ROOT, encoding: 'utf8' });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  return JSON.parse(stdout);
};

// Bar: none offered is confidently wrong; the middle place of the ice in view within half a metre of the truth in most pictures.
describe('pins offered by the machine on films with truth', () => {
  it.each([
    ['a fixed wide camera', 'A.mp4', 'A.json', 60, 10.1, 0.9],
    ['a panning, zooming one with motion blur', 'D.webm', 'D.json', 50, 13, 0.7],
  ])(
    'are within half a metre, or none: %s',
    (_, film, truth, every, untilS, least) => {
      const { even, odd } = offersOf(film, truth, every, untilS);
      const count = even.count + odd.count;
      expect(count).toBeGreaterThan(5);
      expect([...even.wrong, ...odd.wrong]).toEqual([]);
      expect((even.within + odd.within) / count).toBeGreaterThan(least);
      for (const { p95M } of [even, odd]) expect(p95M).toBeLessThan(0.5);
    },
    300_000,
  );
});
