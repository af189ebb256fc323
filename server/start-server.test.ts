import { createHash } from 'node:crypto';
import {
  closeSync,
  ftruncateSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exportTeam, importTeam, setAt } from '@icewright/book';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashOfFile } from './films/film-folder.ts';
import { componentStyleHash } from './http/guard.ts';
import { type RunningServer, startServer } from './start-server.ts';

let folder: string;
let server: RunningServer;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'icewright-'));
  server = await startServer({ dataFolder: folder, port: 0 });
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly status: number;
  readonly headers: Record<string, string | string[] | undefined>;
  readonly body: Buffer;
}

/** A request as it is, without what a client library would change in path or headers. */
const ask = (method: string, path: string, headers: Record<string, string> = {}, body?: Buffer | string) =>
  new Promise<Answer>((done, fail) => {
    const asked = request({ host: '127.0.0.1', port: server.port, method, path, headers }, response => {
      const parts: Buffer[] = [];
      response.on('data', part => parts.push(part));
      response.on('end', () =>
        done({ status: response.statusCode!, headers: response.headers, body: Buffer.concat(parts) }),
      );
    });
    asked.on('error', fail);
    asked.end(body);
  });
const json = { 'content-type': 'application/json' };
const bodyOf = (answer: Answer) => JSON.parse(answer.body.toString());
const filmsNow = async () =>
  bodyOf(await ask('GET', '/api/films')) as {
    hash: string;
    fileName: string;
    byteCount: number;
    demo?: true;
  }[];

describe('the first start on an empty data folder', () => {
  it('shows the demo team with its two films', async () => {
    expect(bodyOf(await ask('GET', '/api/teams'))).toEqual([
      { id: 'team-lanterns', name: 'Tern Harbour Lanterns', demo: true },
    ]);
    expect((await filmsNow()).map(({ fileName }) => fileName)).toEqual([
      'quillback-away.mp4',
      'quillback-home.mp4',
    ]);
    expect((await filmsNow()).map(({ demo }) => demo)).toEqual([true, true]);
    expect(bodyOf(await ask('GET', '/api/about'))).toMatchObject({ name: 'Icewright', dataFolder: folder });
  });

  it('the demo can be put away and fetched again', async () => {
    expect((await ask('DELETE', '/api/teams/team-lanterns')).status).toBe(204);
    expect(bodyOf(await ask('GET', '/api/teams'))).toEqual([]);
    const { id } = bodyOf(await ask('POST', '/api/demo'));
    expect(id).not.toBe('team-lanterns');
    expect(bodyOf(await ask('POST', '/api/demo'))).toEqual({ id });
    expect((await filmsNow()).length).toBe(2);
  });

  it('a team of one’s own is made, and not put away as the demo is', async () => {
    const body = JSON.stringify({ name: '  Upper Sedge  ', level: 'u18', rink: { preset: '60x30m' } });
    const made = await ask('POST', '/api/teams', json, body);
    expect(made.status).toBe(201);
    const { id } = bodyOf(made);
    expect(bodyOf(await ask('GET', '/api/teams'))).toContainEqual({ id, name: 'Upper Sedge', demo: false });
    expect((await ask('DELETE', `/api/teams/${id}`)).status).toBe(409);
  });

  it.each([
    ['{"name":"","level":"u18","rink":{"preset":"60x30m"}}', 400, /needs a name/],
    ['{"name":"A","level":"u3","rink":{"preset":"60x30m"}}', 400, /level must be/],
    ['{"name":"A","level":"u18","rink":{"preset":"own","lengthM":900}}', 400, /sheet of ice must be/],
    ['nonsense', 400, /not a JSON object/],
    [`{"name":"${'x'.repeat(70_000)}"}`, 413, /too long/],
  ])('%.40s is refused with one sentence', async (body, status, sentence) => {
    const before = (await ask('GET', '/api/teams')).body.toString();
    const answer = await ask('POST', '/api/teams', { ...json, 'content-length': `${body.length}` }, body);
    expect(answer.status).toBe(status);
    expect(bodyOf(answer).sentence).toMatch(sentence);
    expect((await ask('GET', '/api/teams')).body.toString()).toBe(before);
  });
});

describe('a whole team in one file', () => {
  it('goes out, comes in on a fresh machine and goes out byte-equal', async () => {
    const { id } = bodyOf(await ask('POST', '/api/demo'));
    const file = await ask('GET', `/api/teams/${id}/file`);
    expect(file.status).toBe(200);
    const freshFolder = mkdtempSync(join(tmpdir(), 'icewright-'));
    const fresh = await startServer({ dataFolder: freshFolder, port: 0, filmFixtures: null });
    const at = `http://127.0.0.1:${fresh.port}/api/teams`;
    const send = (text: string) => fetch(`${at}/file`, { method: 'POST', headers: json, body: text });
    const damaged = await send(file.body.toString().replace('"minutes":', '"minute":'));
    expect([damaged.status, ((await damaged.json()) as { sentence: string }).sentence]).toEqual([
      400,
      expect.stringMatching(
        /^The .+ “.+”: .*minutes.* \(documents\.\d+\.value\..*minutes\)\. Nothing was changed\.$/,
      ),
    ]);
    expect(await (await fetch(at)).json()).toEqual([]);
    expect((await send(file.body.toString())).status).toBe(201);
    expect(await (await fetch(at)).json()).toMatchObject([{ id, demo: true }]);
    expect(await (await fetch(`${at}/${id}/file`)).text()).toBe(file.body.toString());
    const told = async (text: string) =>
      (await (await fetch(`${at}/file/told`, { method: 'POST', headers: json, body: text })).json()) as {
        said: string;
      };
    expect((await told(file.body.toString())).said).toMatch(/bring nothing new/);
    expect((await send(file.body.toString())).status).toBe(201);
    expect(await (await fetch(`${at}/${id}/file`)).text()).toBe(file.body.toString());
    // A copy that was changed elsewhere is brought together with what is there.
    const copy = importTeam(file.body.toString());
    if (copy.kind === 'refused') throw new Error(copy.sentence);
    setAt(copy.docs.find(each => each.kind === 'drill')!.ydoc, ['minutes'], 17, 'coach');
    const later = exportTeam(copy.docs, 'withHistories');
    expect((await told(later)).said).toMatch(
      / 0 are new, 1 is merged with what is here and \d+ are the same\.$/,
    );
    expect((await send(later)).status).toBe(201);
    expect(await (await fetch(`${at}/${id}/file`)).text()).toBe(later);
    await fresh.close();
    rmSync(freshFolder, { recursive: true });
  });
});

describe('a film over HTTP', () => {
  const film = async () => (await filmsNow()).find(({ fileName }) => fileName === 'quillback-home.mp4')!;
  const bytes = () => readFileSync(join(folder, 'films', 'quillback-home.mp4'));

  it('whole, in part, from the end, and 416 behind the end', async () => {
    const { hash, byteCount } = await film();
    const path = `/film/${hash}`;
    const whole = await ask('GET', path);
    expect(whole.status).toBe(200);
    expect(whole.headers).toMatchObject({
      'accept-ranges': 'bytes',
      'cache-control': 'no-store',
      'content-type': 'video/mp4',
    });
    expect(whole.body.equals(bytes())).toBe(true);
    const part = await ask('GET', path, { range: 'bytes=1000-1999999' });
    expect(part.status).toBe(206);
    expect(part.headers['content-range']).toBe(`bytes 1000-1999999/${byteCount}`);
    expect(part.body.equals(bytes().subarray(1000, 2_000_000))).toBe(true);
    const tail = await ask('GET', path, { range: 'bytes=-7' });
    expect(tail.body.equals(bytes().subarray(-7))).toBe(true);
    const outside = await ask('GET', path, { range: `bytes=${byteCount}-` });
    expect(outside.status).toBe(416);
    expect(outside.headers['content-range']).toBe(`bytes */${byteCount}`);
    expect(outside.body).toHaveLength(0);
    const head = await ask('HEAD', path, { range: 'bytes=0-9' });
    expect([head.status, head.headers['content-length'], head.body.length]).toEqual([206, '10', 0]);
    expect((await ask('GET', path, { range: 'bytes=0-9', 'if-range': '"other"' })).status).toBe(200);
    expect(
      (await ask('GET', path, { range: 'bytes=0-9', 'if-range': whole.headers.etag as string })).status,
    ).toBe(206);
    expect((await ask('GET', `/film/${encodeURIComponent(hash)}`, { range: 'bytes=0-0' })).status).toBe(206);
  });

  it('of 10 GB: its last bytes at once, and named without reading it whole', async () => {
    const path = join(folder, 'films', 'long.mp4');
    const byteCount = 10 * 2 ** 30;
    const file = openSync(path, 'w');
    ftruncateSync(file, byteCount);
    writeSync(file, 'end', byteCount - 3);
    closeSync(file);
    const long = (await filmsNow()).find(({ fileName }) => fileName === 'long.mp4')!;
    expect(long.byteCount).toBe(byteCount);
    const tail = await ask('GET', `/film/${long.hash}`, { range: `bytes=${byteCount - 5}-` });
    expect(tail.headers['content-range']).toBe(`bytes ${byteCount - 5}-${byteCount - 1}/${byteCount}`);
    expect(tail.body.toString('latin1')).toBe('\0\0end');
    rmSync(path);
    expect((await ask('GET', `/film/${long.hash}`)).status).toBe(404);
  });

  it.each([
    '/film/',
    '/film/..%2f..%2ficewright.sqlite',
    '/film/../icewright.sqlite',
    '/film/sampled-sha256:..%2f..%2ficewright.sqlite',
    `/film/sampled-sha256:${'A'.repeat(64)}`,
    `/film/sampled-sha256:${'0'.repeat(63)}`,
    '/film/%',
    '/..%2fpackage.json',
    '/%2e%2e/%2e%2e/package.json',
    '/assets/..%5c..%5cpackage.json',
  ])('%s reaches no file outside', async path => {
    const answer = await ask('GET', path);
    const text = answer.body.toString();
    expect(text).not.toContain('SQLite format');
    expect(text).not.toContain('"workspaces"');
    expect([400, 404]).toContain(answer.status);
  });

  it('sent in: kept under a plain name once it is whole and what was announced', async () => {
    const content = Buffer.from('not really a film, but bytes');
    const file = join(folder, 'sent');
    writeFileSync(file, content);
    const hash = await hashOfFile(file);
    const wrong = await ask('PUT', `/film/sampled-sha256:${'0'.repeat(64)}?name=x.mp4`, {}, content);
    expect([wrong.status, bodyOf(wrong).sentence]).toEqual([400, expect.stringMatching(/not the one/)]);
    const sent = await ask(
      'PUT',
      `/film/${hash}?name=${encodeURIComponent('../../Period 1<>.webm')}`,
      {},
      content,
    );
    expect([sent.status, bodyOf(sent)]).toEqual([
      201,
      { hash, fileName: 'Period 1.webm', byteCount: content.length },
    ]);
    expect((await ask('GET', `/film/${hash}`)).body.equals(content)).toBe(true);
    const again = await ask('PUT', `/film/${hash}?name=other.webm`, {}, content);
    expect(bodyOf(again).fileName).toBe('Period 1.webm');
    expect(readdirSync(join(folder, 'films')).sort()).toEqual([
      'Period 1.webm',
      'quillback-away.mp4',
      'quillback-home.mp4',
    ]);
  });

  it('too large for the disc: said before a byte of it is taken', async () => {
    const path = `/film/sampled-sha256:${'1'.repeat(64)}?name=x.mp4`;
    const answer = await new Promise<Answer>((done, fail) => {
      const asked = request(
        {
          host: '127.0.0.1',
          port: server.port,
          method: 'PUT',
          path,
          headers: { 'content-length': `${2 ** 52}` },
        },
        response => {
          const parts: Buffer[] = [];
          response.on('data', part => parts.push(part));
          response.on('end', () =>
            done({ status: response.statusCode!, headers: response.headers, body: Buffer.concat(parts) }),
          );
        },
      );
      asked.on('error', fail);
      asked.write('x');
    });
    expect(answer.status).toBe(507);
    expect(bodyOf(answer).sentence).toMatch(/no room/);
  });

  it('cut off on the way: nothing of it stays', async () => {
    const path = `/film/sampled-sha256:${'2'.repeat(64)}?name=cut.mp4`;
    await new Promise<void>(done => {
      const asked = request({
        host: '127.0.0.1',
        port: server.port,
        method: 'PUT',
        path,
        headers: { 'content-length': '1000000' },
      });
      asked.on('error', () => {});
      asked.on('close', () => done());
      asked.write(Buffer.alloc(100_000), () => setTimeout(() => asked.destroy(), 50));
    });
    await expect
      .poll(() => readdirSync(join(folder, 'films')).filter(name => /incoming|cut/.test(name)))
      .toEqual([]);
  });
});

describe('who may ask', () => {
  it('every answer carries the content policy and its companions', async () => {
    for (const path of ['/', '/api/about', '/api/none', '/film/x', '/none.js']) {
      const { headers } = await ask('GET', path);
      expect(headers['content-security-policy']).toContain(
        "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'",
      );
      expect(headers['content-security-policy']).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
      expect(headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'cross-origin-resource-policy': 'same-origin',
      });
    }
  });

  it('the one style let in is the one the components put into the page', () => {
    const source = readFileSync(
      fileURLToPath(
        new URL('../node_modules/react-aria/dist/private/interactions/usePress.mjs', import.meta.url),
      ),
      'utf8',
    );
    const attribute = /PRESSABLE_ATTRIBUTE = '([^']+)'/.exec(source)![1]!;
    const text = /style\.textContent = `([\s\S]*?)`\s*\.trim\(\)/
      .exec(source)![1]!
      .replace(/\$\{[^}]+\}/, attribute);
    const hash = createHash('sha256').update(text.trim()).digest('base64');
    expect(componentStyleHash).toBe(`'sha256-${hash}'`);
  });

  it.each([
    ['another origin', { origin: 'http://elsewhere.example' }],
    ['a page that hides its origin', { origin: 'null' }],
    ['another port of this machine', { origin: 'http://127.0.0.1:1' }],
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['a sibling site', { 'sec-fetch-site': 'same-site' }],
  ] as [string, Record<string, string>][])('no write from %s', async (_, headers) => {
    const before = (await ask('GET', '/api/teams')).body.toString();
    const body = '{"name":"A","level":"u18","rink":{"preset":"60x30m"}}';
    expect((await ask('POST', '/api/teams', { ...json, ...headers }, body)).status).toBe(403);
    expect((await ask('DELETE', '/api/teams/x', headers)).status).toBe(403);
    expect((await ask('PUT', `/film/sampled-sha256:${'3'.repeat(64)}`, headers, 'x')).status).toBe(403);
    expect((await ask('GET', '/api/teams')).body.toString()).toBe(before);
  });

  it('nothing is read under a name that is not this machine’s', async () => {
    expect((await ask('GET', '/api/teams', { host: 'elsewhere.example' })).status).toBe(403);
    expect((await ask('GET', '/api/teams', { host: `localhost:${server.port}` })).status).toBe(200);
  });

  it('it does not listen where others could reach it', async () => {
    for (const host of ['0.0.0.0', '::', '192.168.1.4', 'example.org', '127.0.0.1.example.org']) {
      await expect(startServer({ dataFolder: folder, port: 0, host })).rejects.toThrow(/this machine only/);
    }
  });
});
