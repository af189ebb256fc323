import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { importDrills } from '@icewright/book';
import { levelOf, playableOf, type Run, rinkOf, runDrill } from '@icewright/engine';
import { rinkViewBox } from '@icewright/picture';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { withPage } from '../../../test/with-page.ts';
import { frameCountOf } from './film-file.ts';

const app = appOfFile({ holdsReps: true });

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

async function openPanel(page: Page): Promise<void> {
  await page.goto(`${app.url}/drills/drill-middle-first`);
  await press(page, 'Hand out').click();
  await page.getByText(/frames a second|cannot write films/).waitFor();
}

async function filmFrom(page: Page, name: string): Promise<Buffer> {
  const download = page.waitForEvent('download', { timeout: 90_000 });
  await press(page, name).click();
  return readFileSync(await (await download).path());
}

/** The rep as the engine plays it, from the drill file that the page gives. */
async function runFrom(page: Page): Promise<Run> {
  const download = page.waitForEvent('download');
  await press(page, 'Drill file (JSON)').click();
  const text = readFileSync(await (await download).path(), 'utf8');
  const imported = importDrills(text, { habits: {}, madeAt: '2026-11-28T12:00:00Z' });
  if (imported.kind === 'refused') throw new Error(imported.said);
  const drill = imported.drills[0]!.value;
  const playable = playableOf(drill, rinkOf(drill.rink), levelOf(drill.level));
  if (playable.kind !== 'playable') throw new Error('the drill cannot be played');
  return runDrill(playable);
}

/** Where the frame at a time has the middle of the dark disc near a place, px; null where there is none. */
const discIn = (page: Page, film: Buffer, type: string, atS: number, near: { x: number; y: number }) =>
  page.evaluate(
    async ([base64, kind, timeS, x, y]) => {
      const bytes = Uint8Array.from(atob(base64), letter => letter.charCodeAt(0));
      const video = document.createElement('video');
      video.muted = true;
      video.src = URL.createObjectURL(new Blob([bytes], { type: kind }));
      await new Promise((done, fail) => {
        video.onloadeddata = done;
        video.onerror = () => fail(new Error('the film cannot be decoded'));
      });
      await new Promise(done => {
        video.onseeked = done;
        video.currentTime = timeS;
      });
      const canvas = document.createElement('canvas');
      canvas.width = video.videoWidth;
      canvas.height = video.videoHeight;
      const context = canvas.getContext('2d')!;
      context.drawImage(video, 0, 0);
      const half = 26;
      const { data } = context.getImageData(Math.round(x) - half, Math.round(y) - half, 2 * half, 2 * half);
      let [count, sumX, sumY] = [0, 0, 0];
      for (let index = 0; index < 4 * half * half; index += 1) {
        if (data[4 * index]! > 70) continue;
        count += 1;
        sumX += index % (2 * half);
        sumY += Math.floor(index / (2 * half));
      }
      const offset = (value: number) => Math.round(value) - half + 0.5;
      return {
        width: canvas.width,
        height: canvas.height,
        durationS: video.duration,
        count,
        x: offset(x) + sumX / count,
        y: offset(y) + sumY / count,
      };
    },
    [film.toString('base64'), type, atS, near.x, near.y] as const,
  );

/** As the film lays out its frame: margins of 20 px, a head of 56. */
function pixelOf(xM: number, yM: number): { x: number; y: number } {
  const [boxX, boxY, boxWidth] = rinkViewBox(rinkOf({ preset: '200x85ft' }));
  const scale = (1280 - 40) / boxWidth;
  return { x: 20 + (xM - boxX) * scale, y: 56 + (-yM - boxY) * scale };
}

interface Probe {
  readonly codec: string;
  readonly frames: number;
  readonly durationS: number;
}

/** What another program says of the film, where it is installed. */
function probeOf(film: Buffer, kind: string): Probe | null {
  const file = join(tmpdir(), `icewright-film-${process.pid}.${kind}`);
  writeFileSync(file, film);
  const asked = [
    '-v',
    'error',
    '-count_frames',
    '-show_entries',
    'stream=codec_name,nb_read_frames:format=duration',
  ];
  try {
    const said = JSON.parse(execFileSync('ffprobe', [...asked, '-of', 'json', file], { encoding: 'utf8' }));
    const [stream] = said.streams;
    return {
      codec: stream.codec_name,
      frames: Number(stream.nb_read_frames),
      durationS: Number(said.format.duration),
    };
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

describe('the film of a rep', () => {
  for (const [kind, type, codecs] of [
    ['WebM', 'video/webm', ['vp9', 'vp8', 'av1']],
    ['MP4', 'video/mp4', ['h264']],
  ] as const)
    it(`${kind}: as long as the rep, and a skater is in its frames where the run has her`, () =>
      withPage(app, `film ${kind}`, async page => {
        await openPanel(page);
        if ((await press(page, kind).count()) === 0) {
          // Honest where the browser has no encoder: it is said, and not offered.
          await page.getByText(/no MP4 here|writes no WebM|cannot write films/).waitFor();
          return;
        }
        const run = await runFrom(page);
        const film = await filmFrom(page, kind);
        const frames = frameCountOf(run.durationS, 1);
        const probe = probeOf(film, kind.toLowerCase());
        if (probe !== null) {
          expect(codecs).toContain(probe.codec);
          expect(probe.frames).toBe(frames);
          expect(Math.abs(probe.durationS - frames / 30)).toBeLessThan(0.05);
        }
        const track = run.tracks.find(({ spot }) => (spot as string) === 'spot-f3')!;
        const places: { x: number; y: number }[] = [];
        for (const frame of [66, 90, 120]) {
          const sample = Math.round((frame / 30) * run.stepHz);
          const wanted = pixelOf(track.xM[sample]!, track.yM[sample]!);
          const found = await discIn(page, film, type, (frame + 0.5) / 30, wanted);
          expect(found.count).toBeGreaterThan(200);
          expect([found.width, found.height % 2]).toEqual([1280, 0]);
          expect(Math.hypot(found.x - wanted.x, found.y - wanted.y), `frame ${frame}`).toBeLessThan(4);
          places.push(found);
        }
        expect(places[0]!.x - places[2]!.x).toBeGreaterThan(60);
      }));

  it('at half speed is twice as long, with her where she is after half the time', () =>
    withPage(app, 'film half', async page => {
      await openPanel(page);
      const run = await runFrom(page);
      await page.locator('.out').getByRole('button', { name: 'Half speed', exact: true }).click();
      const film = await filmFrom(page, 'WebM');
      const track = run.tracks.find(({ spot }) => (spot as string) === 'spot-f3')!;
      const sample = Math.round(2 * run.stepHz);
      const wanted = pixelOf(track.xM[sample]!, track.yM[sample]!);
      const found = await discIn(page, film, 'video/webm', 120.5 / 30, wanted);
      expect(Math.hypot(found.x - wanted.x, found.y - wanted.y)).toBeLessThan(4);
      expect(Math.abs(found.durationS - frameCountOf(run.durationS, 0.5) / 30)).toBeLessThan(0.1);
    }));

  it('can be stopped, saves nothing then, and can be made again', () =>
    withPage(app, 'film stopped', async page => {
      await openPanel(page);
      const downloads: string[] = [];
      page.on('download', download => downloads.push(download.suggestedFilename()));
      await page.locator('.out').getByRole('button', { name: 'Half speed', exact: true }).click();
      await press(page, 'WebM').click();
      await page.getByRole('progressbar', { name: 'Frames that are done' }).waitFor();
      await press(page, 'Cancel').click();
      await page.getByText('Stopped. Nothing was saved.').waitFor();
      expect(downloads).toEqual([]);
      await page.locator('.out').getByRole('button', { name: 'Half speed', exact: true }).click();
      expect((await filmFrom(page, 'WebM')).length).toBeGreaterThan(10_000);
    }));

  it('says what this browser cannot write, and does not offer it', () =>
    withPage(app, 'no h264', async page => {
      await page.addInitScript(() => {
        const supported = VideoEncoder.isConfigSupported.bind(VideoEncoder);
        VideoEncoder.isConfigSupported = config =>
          config.codec.startsWith('avc') ? Promise.resolve({ supported: false, config }) : supported(config);
      });
      await openPanel(page);
      await page.getByText('This browser has no H.264 encoder: no MP4 here').waitFor();
      expect(await press(page, 'MP4').count()).toBe(0);
      expect(await press(page, 'WebM').count()).toBe(1);
    }));

  it('says so where there is no encoder at all', () =>
    withPage(app, 'no encoder', async page => {
      await page.addInitScript(() => {
        Object.defineProperty(globalThis, 'VideoEncoder', { value: undefined });
      });
      await openPanel(page);
      await page.getByText('this browser cannot write films').waitFor();
      expect(await press(page, 'WebM').count()).toBe(0);
    }));
});
