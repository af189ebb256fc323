import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Accuracy, CarryReport } from './measure-carry.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** The whole way: Chromium decodes, the camera is followed, pins are carried, the truth of the film judges. */
const reportOf = (
  film: string,
  truth: string,
  until: readonly string[] = [],
): CarryReport & { frameCount: number } => {
  const args = [
    '--import',
    'tsx',
    'cli/film-truth.ts',
    `fixtures/film/${film}`,
    `fixtures/film-truth/${truth}`,
  ];
  const asked = [...args, '--json', '--step', '2', '--decoder', 'chromium', '--hands', 'none', ...until];
  const { status, stdout, stderr } = spawnSync(process.execPath, asked, {
    cwd: ROOT,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  return JSON.parse(stdout);
};

const after = (list: CarryReport['drift'], seconds: number): Accuracy =>
  list.find(({ afterS }) => afterS === seconds)!.accuracy;

// Bar: carried 10 s through film B, median ≤ 0.10 m, p95 ≤ 0.27 m over the visible ice, inside the stated ± in 93 of 100 at least.
// Anchor: OpenCV's KLT from key frames with RANSAC gives 0.07–0.13 m and 0.11–0.27 m on it, chained frame to frame 0.9–1.2 m.
describe('pins carried on films with truth', () => {
  it('drift by less than the bar in ten seconds of a panning, zooming broadcast picture', () => {
    const report = reportOf('B.mp4', 'B.json', ['--until', '12.1']);
    expect(report.frameCount).toBe(721);
    expect(report.losses).toEqual([]);
    // Three pairs of pictures ten seconds apart, carried both ways.
    const ten = after(report.drift, 10);
    expect(ten.count).toBeGreaterThan(500);
    expect(ten.lost).toEqual({});
    expect(ten.medianM).toBeLessThanOrEqual(0.1);
    expect(ten.p95M).toBeLessThanOrEqual(0.27);
    expect(after(report.drift, 1).p95M).toBeLessThan(after(report.drift, 5).p95M);
    for (const { accuracy } of [...report.drift, ...report.clicked]) {
      expect(accuracy.heldShare).toBeGreaterThan(0.93);
    }
    // Pinned again ten seconds later, the middle is better known than five seconds after one of them.
    expect(report.between.p95M).toBeLessThan(after(report.clicked, 5).p95M);
    expect(report.between.heldShare).toBeGreaterThan(0.9);
    // The ± grows on the way.
    expect(after(report.clicked, 1).reachM).toBeLessThan(after(report.clicked, 5).reachM);
    expect(after(report.clicked, 5).reachM).toBeLessThan(after(report.clicked, 10).reachM);
  }, 600_000);

  it('find the lens of a phone held upright in the stand, and hold the truth in their ±', () => {
    const report = reportOf('C.mp4', 'C.json');
    expect(report.frameCount).toBe(400);
    expect(report.losses).toEqual([]);
    // Its one term is −0.018; taken for none the same film is up to 1.8 m off at ten seconds.
    expect(report.lens.told).toBe(true);
    expect(Math.abs(report.lens.used + 0.018)).toBeLessThan(0.004);
    const ten = after(report.drift, 10);
    expect(ten.count).toBeGreaterThan(500);
    expect(ten.medianM).toBeLessThanOrEqual(0.15);
    expect(ten.p95M).toBeLessThanOrEqual(0.4);
    for (const { accuracy } of report.drift) expect(accuracy.heldShare).toBeGreaterThan(0.93);
  }, 600_000);
});
