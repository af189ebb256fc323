import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import type { TrackAccuracy } from './measure-tracks.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

// Bar: place within 0.35 m and speed within 0.4 m/s rms. Anchor: a fixed multi-camera system in soccer reaches 0.56 m and 0.41 m/s
// (Linke et al. 2018, PLoS ONE 13(7); from memory). The whole film is judged by `npm run film-truth`; these are its first seconds.
it('follows skaters of a panned film between hands two seconds apart within the bar', () => {
  const film = ['fixtures/film/B.mp4', 'fixtures/film-truth/B.json'];
  const asked = [
    '--json',
    '--step',
    '2',
    '--until',
    '3.1',
    '--hands',
    '2',
    '--who',
    'L14,L21,L9,Q23,Q11,L27',
  ];
  const { status, stdout } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'cli/film-truth.ts', ...film, ...asked],
    { cwd: ROOT, encoding: 'utf8', maxBuffer: 1e8 },
  );
  expect(status).toBe(0);
  const [accuracy] = (JSON.parse(stdout) as { tracks: TrackAccuracy[] }).tracks;
  expect(accuracy!.everyS).toBe(2);
  expect(accuracy!.count).toBeGreaterThanOrEqual(8);
  expect(accuracy!.toldShare).toBe(1);
  expect(accuracy!.placeRmseM).toBeLessThanOrEqual(0.35);
  expect(accuracy!.speedRmseMps).toBeLessThanOrEqual(0.4);
  expect(accuracy!.placeHeldShare).toBeGreaterThan(0.8);
}, 600_000);
