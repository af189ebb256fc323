import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import { rateLimitOf } from './http/rate-limit.ts';
import { type RunningServer, startServer } from './start-server.ts';
import { dayMs, handoutStoreOn, isToken } from './store/handout-store.ts';
import { type Db, openDatabase } from './store/open-database.ts';

let folder: string;
let server: RunningServer;
const at = (path: string) => `http://127.0.0.1:${server.port}${path}`;
const json = { 'content-type': 'application/json' };
const make = (drill: string, wish: object) =>
  fetch(at(`/api/drills/${drill}/handouts`), { method: 'POST', headers: json, body: JSON.stringify(wish) });
const made = async (teamName = '') =>
  (await (await make('drill-middle-first', { days: 14, teamName })).json()) as {
    token: string;
    endsAt: number;
  };
const shown = (token: string) => fetch(at(`/handout/${token}/drill.json`));

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'icewright-'));
  server = await startServer({ dataFolder: folder, port: 0 });
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

describe('a link for a player', () => {
  it('shows the drill as it stands, and nothing of the team', async () => {
    const { token, endsAt } = await made();
    expect(isToken(token)).toBe(true);
    expect(Math.round((endsAt - Date.now()) / dayMs)).toBe(14);
    const answer = await shown(token);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('cache-control')).toBe('no-store');
    expect(answer.headers.get('x-robots-tag')).toContain('noindex');
    const text = await answer.text();
    const { teamName, file } = JSON.parse(text);
    expect(teamName).toBe('');
    expect(file.drills).toHaveLength(1);
    expect(file.drills[0]).toMatchObject({ title: 'Middle first', habits: [] });
    for (const secret of [
      'Lantern',
      'firstBack',
      'game-hunt',
      'team-lanterns',
      'drill-middle-first',
      'madeAt',
    ])
      expect(text).not.toContain(secret);
  });

  it('says the team’s name only where the coach chose so', async () => {
    const { token } = await made('Tern Harbour Lanterns');
    expect(await (await shown(token)).json()).toMatchObject({ teamName: 'Tern Harbour Lanterns' });
  });

  it('every link is another, of 128 bits', async () => {
    const tokens = await Promise.all(Array.from({ length: 5 }, async () => (await made()).token));
    expect(new Set(tokens).size).toBe(5);
    for (const token of tokens) expect(Buffer.from(token, 'base64url')).toHaveLength(16);
  });

  it('is listed where it was made, taken back there, and then shows nothing', async () => {
    const { token } = await made();
    const list = async () => {
      const answer = await fetch(at('/api/drills/drill-middle-first/handouts'));
      return ((await answer.json()) as { links: object[] }).links;
    };
    expect(await list()).toContainEqual(expect.objectContaining({ token, isOpen: true }));
    const back = (drill: string) => fetch(at(`/api/drills/${drill}/handouts/${token}`), { method: 'DELETE' });
    expect((await back('drill-four-corners')).status).toBe(404);
    expect((await shown(token)).status).toBe(200);
    expect((await back('drill-middle-first')).status).toBe(204);
    expect((await shown(token)).status).toBe(404);
    expect((await back('drill-middle-first')).status).toBe(404);
    expect(await list()).toContainEqual(expect.objectContaining({ token, isOpen: false }));
  });

  it.each([
    ['a drill that is not there', 'drill-nowhere', { days: 14, teamName: '' }, 404],
    ['a practice', 'practice-1', { days: 14, teamName: '' }, 404],
    ['the team', 'team-lanterns', { days: 14, teamName: '' }, 404],
    ['no end', 'drill-middle-first', { teamName: '' }, 400],
    ['a life too long', 'drill-middle-first', { days: 91, teamName: '' }, 400],
    ['half a day', 'drill-middle-first', { days: 0.5, teamName: '' }, 400],
    ['no name at all', 'drill-middle-first', { days: 1 }, 400],
  ])('is refused for %s', async (_, drill, wish, status) => {
    const answer = await make(drill, wish);
    expect(answer.status).toBe(status);
    expect((await answer.json()).sentence).toBeTruthy();
  });

  it('a page from elsewhere can make none', async () => {
    const answer = await fetch(at('/api/drills/drill-middle-first/handouts'), {
      method: 'POST',
      headers: { ...json, origin: 'http://elsewhere.example' },
      body: '{"days":1,"teamName":""}',
    });
    expect(answer.status).toBe(403);
  });

  it.each(['POST', 'PUT', 'PATCH', 'DELETE'])('takes no %s', async method => {
    const { token } = await made();
    for (const path of [`/handout/${token}`, `/handout/${token}/drill.json`]) {
      const answer = await fetch(at(path), { method, ...(method === 'DELETE' ? {} : { body: '{}' }) });
      expect(answer.status).toBe(405);
    }
  });

  it.each([
    '',
    '/..',
    '/../api/teams',
    '/%2e%2e/%2e%2e/api/teams',
    '/team.json',
    '/drill.json/more',
    '/drill-four-corners/drill.json',
  ])('leads to nothing else: …%s', async rest => {
    const { token } = await made();
    const answer = await fetch(at(`/handout/${token}${rest}`), { redirect: 'manual' });
    const text = await answer.text();
    // A path with dots is another address before it is sent; it is then the staff's own, and no way out of the link.
    if (new URL(answer.url).pathname.startsWith('/handout/'))
      expect([200, 404, 503]).toContain(answer.status);
    if (new URL(answer.url).pathname.startsWith('/handout/')) expect(text).not.toContain('Lanterns');
  });
});

describe('guessing', () => {
  it('finds nothing, is told nothing, and is soon not answered', async () => {
    const statuses: number[] = [];
    const sentences = new Set<string>();
    for (let index = 0; index < 25; index += 1) {
      const token = Buffer.alloc(16, index).toString('base64url');
      const answer = await shown(index % 2 === 0 ? token : 'x');
      statuses.push(answer.status);
      if (answer.status === 404) sentences.add((await answer.json()).sentence);
    }
    expect(new Set(statuses)).toEqual(new Set([404, 429]));
    // The link that was taken back above was one miss already.
    expect(statuses.indexOf(429)).toBeGreaterThan(5);
    expect(statuses.indexOf(429)).toBeLessThanOrEqual(10);
    expect(sentences.size).toBe(1);
  });
});

describe('links that are open to the network', () => {
  it('answer on a port of their own, and nothing else of the workbench does', async () => {
    const own = mkdtempSync(join(tmpdir(), 'icewright-net-'));
    const app = mkdtempSync(join(tmpdir(), 'icewright-app-'));
    mkdirSync(join(app, 'assets'));
    for (const file of ['index.html', 'handout.html', 'sw.js', 'assets/a.js', 'icewright.svg'])
      writeFileSync(join(app, file), file);
    const both = await startServer({
      dataFolder: own,
      port: 0,
      appFolder: app,
      handouts: { host: '127.0.0.1', port: 0 },
    });
    try {
      const staff = `http://127.0.0.1:${both.port}`;
      const players = `http://127.0.0.1:${both.handoutPort}`;
      const { token } = (await (
        await fetch(`${staff}/api/drills/drill-middle-first/handouts`, {
          method: 'POST',
          headers: json,
          body: '{"days":1,"teamName":""}',
        })
      ).json()) as { token: string };
      const { base } = (await (await fetch(`${staff}/api/drills/drill-middle-first/handouts`)).json()) as {
        base: string;
      };
      expect(base).toBe(players);
      expect(await (await fetch(`${players}/handout/${token}`)).text()).toBe('handout.html');
      expect((await fetch(`${players}/handout/${token}/drill.json`)).status).toBe(200);
      expect((await fetch(`${players}/assets/a.js`)).status).toBe(200);
      for (const path of [
        '/',
        '/drills',
        '/index.html',
        '/sw.js',
        '/api/teams',
        '/api/about',
        '/api/teams/team-lanterns/file',
        '/api/drills/drill-middle-first/handouts',
        '/api/documents/drill-middle-first/versions',
        `/film/sampled-sha256:${'0'.repeat(64)}`,
        '/assets/%2e%2e/index.html',
        '/assets/..%2findex.html',
        '/sync',
      ])
        expect((await fetch(players + path)).status, path).toBe(404);
      const socket = new WebSocket(`ws://127.0.0.1:${both.handoutPort}/sync`);
      socket.on('error', () => {});
      expect(
        await new Promise(done => {
          socket.once('open', () => done('open'));
          socket.once('close', () => done('closed'));
        }),
      ).toBe('closed');
      expect(
        (await fetch(`${players}/api/teams`, { method: 'POST', headers: json, body: '{}' })).status,
      ).toBe(404);
    } finally {
      await both.close();
      for (const folder_ of [own, app]) rmSync(folder_, { recursive: true });
    }
  });

  it.each(['0.0.0.0', '::', 'somewhere'])('need one address of this machine, not %s', async host => {
    const own = mkdtempSync(join(tmpdir(), 'icewright-net-'));
    await expect(
      startServer({ dataFolder: own, port: 0, filmFixtures: null, handouts: { host, port: 0 } }),
    ).rejects.toThrow(/one address of this machine/);
    rmSync(own, { recursive: true });
  });
});

describe('the links on disc', () => {
  let own: string;
  let db: Db;
  let nowMs = 1_780_000_000_000;
  const open = () => {
    own = mkdtempSync(join(tmpdir(), 'icewright-links-'));
    db = openDatabase(own);
    return handoutStoreOn(db, () => nowMs);
  };
  afterEach(() => {
    db.close();
    rmSync(own, { recursive: true });
  });

  it('end on their day, and not before', () => {
    const store = open();
    const { token } = store.make('d1', '', 14);
    nowMs += 14 * dayMs - 1;
    expect(store.findOpen(token)?.document).toBe('d1');
    nowMs += 1;
    expect(store.findOpen(token)).toBeNull();
    expect(store.of('d1')).toHaveLength(1);
  });

  it('are looked up by the whole token and nothing like it', () => {
    const store = open();
    const { token } = store.make('d1', '', 14);
    const other = `${token.slice(0, -1)}${token.endsWith('A') ? 'B' : 'A'}`;
    for (const guess of [
      '',
      '%',
      token.slice(0, 21),
      `${token} `,
      token.toLowerCase() === token ? 'x' : token.toLowerCase(),
      other,
    ])
      expect(store.findOpen(guess), guess).toBeNull();
  });
});

describe('how often one may ask', () => {
  it('so many, and again when the time has passed; each caller for himself', () => {
    let nowMs = 0;
    const limit = rateLimitOf({ most: 3, perMs: 3000 }, () => nowMs);
    const asked = (caller: string) => limit.allows(caller);
    expect([1, 2, 3, 4].map(() => asked('a'))).toEqual([true, true, true, false]);
    expect(asked('b')).toBe(true);
    nowMs += 1000;
    expect([asked('a'), asked('a')]).toEqual([true, false]);
    nowMs += 60_000;
    expect([1, 2, 3, 4].map(() => asked('a'))).toEqual([true, true, true, false]);
  });
});
