import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pageLimitBytes } from './http/handout-pages-api.ts';
import { type RunningServer, startServer } from './start-server.ts';
import { handoutPageStoreOn } from './store/handout-page-store.ts';
import { dayMs, isToken } from './store/handout-store.ts';
import { openDatabase } from './store/open-database.ts';

const MEETING = 'meeting-together';
const PAGE = '<!doctype html><title>For 21</title><video src="data:video/webm;base64,AAAA"></video>';
let folder: string;
let server: RunningServer;
const at = (path: string) => `http://127.0.0.1:${server.port}${path}`;
const html = { 'content-type': 'text/html' };
const make = (meeting: string, query: string, init: RequestInit = {}) =>
  fetch(at(`/api/meetings/${meeting}/handouts?${query}`), {
    method: 'POST',
    headers: html,
    body: PAGE,
    ...init,
  });
const made = async () => (await (await make(MEETING, 'days=7&for=21')).json()) as { token: string };

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'icewright-pages-'));
  server = await startServer({ dataFolder: folder, port: 0 });
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

describe('a page for one player', () => {
  it('is what was made, runs no script, and loads nothing from anywhere', async () => {
    const { token } = await made();
    expect(isToken(token)).toBe(true);
    const answer = await fetch(at(`/handout/${token}`));
    expect(await answer.text()).toBe(PAGE);
    const policy = answer.headers.get('content-security-policy')!;
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain('sandbox');
    expect(policy).not.toMatch(/script-src|connect-src|allow-scripts/);
    expect(answer.headers.get('cache-control')).toBe('no-store');
    expect(answer.headers.get('x-robots-tag')).toContain('noindex');
  });

  it('is listed, taken back, and its film is gone from the disc then', async () => {
    const { token } = await made();
    const list = async () =>
      (await (await fetch(at(`/api/meetings/${MEETING}/handouts`))).json()) as {
        links: { token: string; isOpen: boolean; byteCount: number; said: string }[];
      };
    const found = async () => (await list()).links.find(one => one.token === token);
    expect(await found()).toMatchObject({ isOpen: true, said: '21', byteCount: PAGE.length });
    const back = (meeting: string) =>
      fetch(at(`/api/meetings/${meeting}/handouts/${token}`), { method: 'DELETE' });
    expect((await back('meeting-other')).status).toBe(404);
    expect((await back(MEETING)).status).toBe(204);
    expect(await found()).toMatchObject({ isOpen: false, byteCount: 0 });
    expect(await (await fetch(at(`/handout/${token}`))).text()).not.toContain('For 21');
  });

  it.each([
    ['a meeting that is not there', 'meeting-nowhere', 'days=7', {}, 404],
    ['a drill', 'drill-middle-first', 'days=7', {}, 404],
    ['no end', MEETING, '', {}, 400],
    ['a life too long', MEETING, 'days=91', {}, 400],
    ['nothing in it', MEETING, 'days=7', { body: '' }, 400],
    ['another kind of file', MEETING, 'days=7', { headers: { 'content-type': 'text/plain' } }, 415],
    [
      'a page from elsewhere',
      MEETING,
      'days=7',
      { headers: { ...html, origin: 'http://elsewhere.example' } },
      403,
    ],
  ])('is refused for %s', async (_, meeting, query, init, status) => {
    const answer = await make(meeting, query, init);
    expect(answer.status).toBe(status);
    expect((await answer.json()).sentence).toBeTruthy();
  });

  it('is refused when it is too large', async () => {
    const answer = await make(MEETING, 'days=1', { body: new Uint8Array(pageLimitBytes + 1) });
    expect(answer.status).toBe(413);
  });

  it('ends on its day, and then nothing of it is kept', () => {
    const own = mkdtempSync(join(tmpdir(), 'icewright-page-'));
    const db = openDatabase(own);
    let nowMs = 1_780_000_000_000;
    const store = handoutPageStoreOn(db, () => nowMs);
    const bytes = new TextEncoder().encode(PAGE);
    const { token } = store.make('m', '', 1, bytes);
    nowMs += dayMs - 1;
    expect(store.findOpen(token)).toHaveLength(bytes.length);
    nowMs += 1;
    expect(store.findOpen(token)).toBeNull();
    expect(store.of('m')).toMatchObject([{ token, byteCount: 0 }]);
    db.close();
    rmSync(own, { recursive: true });
  });
});
