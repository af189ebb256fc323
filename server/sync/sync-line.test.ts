import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { emptyDrill, newDocument, newId, readDocument, rootOf, setAt } from '@icewright/book';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { WebSocket } from 'ws';
import * as Y from 'yjs';
import { type RunningServer, startServer } from '../start-server.ts';
import { documentStoreOn } from '../store/document-store.ts';
import { openDatabase } from '../store/open-database.ts';
import { type Client, clientOf, until } from '../trial/client.ts';

let folder: string;
let server: RunningServer;
const clients: Client[] = [];
const start = () => startServer({ dataFolder: folder, port: 0, filmFixtures: null });
const join_ = (ydoc: Y.Doc): Client => {
  const client = clientOf(server.port, ydoc);
  clients.push(client);
  return client;
};
const drill = (title = 'Five together') =>
  newDocument(
    'drill',
    newId(),
    emptyDrill({ title, level: 'u18', rink: { preset: '60x30m' }, madeAt: '2026-11-02T10:00:00Z' }),
  );
const titleOf = (ydoc: Y.Doc) => {
  const read = readDocument(ydoc);
  return read.kind === 'ok' && read.value.kind === 'drill' ? read.value.title : read.kind;
};
/** What lies on disc, read after the server has ended. */
const onDisc = async (id: string) => {
  await server.close();
  const db = openDatabase(folder);
  const ydoc = documentStoreOn(db).load(id);
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  db.close();
  server = await start();
  return ydoc;
};

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'icewright-'));
  server = await start();
  vi.spyOn(console, 'error').mockImplementation(() => {});
});
afterEach(async () => {
  for (const client of clients.splice(0)) client.close();
  await server.close();
  rmSync(folder, { recursive: true });
  vi.restoreAllMocks();
});

describe('the sync line', () => {
  it('two devices see each other’s changes', async () => {
    const a = drill();
    await join_(a).settled();
    const b = new Y.Doc({ guid: a.guid });
    await join_(b).settled();
    expect(titleOf(b)).toBe('Five together');
    setAt(b, ['title'], 'From b', 'b');
    await until(() => titleOf(a) === 'From b');
    setAt(a, ['title'], 'From a', 'a');
    await until(() => titleOf(b) === 'From a');
  });

  it('an earlier version comes back on every device, and what was there stays a version', async () => {
    const a = drill();
    const client = join_(a);
    await client.settled();
    client.close();
    const at = () => `http://127.0.0.1:${server.port}/api/documents/${a.guid}/versions`;
    await onDisc(a.guid);
    setAt(a, ['title'], 'Spoilt', 'a');
    await join_(a).settled();
    const versions = (await (await fetch(at())).json()) as { id: number }[];
    expect(versions).toHaveLength(1);
    const first = `${at()}/${versions[0]!.id}`;
    expect(await (await fetch(first)).json()).toMatchObject({ title: 'Five together' });
    expect((await fetch(first, { method: 'POST' })).status).toBe(204);
    await until(() => titleOf(a) === 'Five together');
    const [newest] = (await (await fetch(at())).json()) as { id: number }[];
    expect(await (await fetch(`${at()}/${newest!.id}`)).json()).toMatchObject({ title: 'Spoilt' });
    expect(titleOf(await onDisc(a.guid))).toBe('Five together');
    expect((await fetch(`${at()}/99999`)).status).toBe(404);
  });

  it('a drill of an older version stays as it is until it is changed; then what it was is kept for good', async () => {
    const old = new Y.Doc({ guid: newId() });
    Y.applyUpdate(
      old,
      readFileSync(new URL('../../fixtures/documents/drill-version-1.update', import.meta.url)),
    );
    await join_(old).settled();
    const a = new Y.Doc({ guid: old.guid });
    await join_(a).settled();
    expect(titleOf(a)).toBe('Middle first');
    expect(rootOf(await onDisc(old.guid)).get('schema')).toBe(1);
    setAt(a, ['title'], 'Changed', 'a');
    await join_(a).settled();
    const versions = await (
      await fetch(`http://127.0.0.1:${server.port}/api/documents/${old.guid}/versions`)
    ).json();
    expect(versions).toContainEqual(expect.objectContaining({ isOriginal: 1 }));
    for (const client of clients.splice(0)) client.close();
    await server.close();
    const db = openDatabase(folder);
    const store = documentStoreOn(db);
    const original = store.versions(old.guid).find(({ isOriginal }) => isOriginal === 1)!;
    expect(rootOf(store.load(old.guid)).toJSON()).toMatchObject({ schema: 4, title: 'Changed', games: {} });
    expect(rootOf(store.loadVersion(old.guid, original.id)!).toJSON()).toEqual(rootOf(old).toJSON());
    expect(rootOf(old).get('schema')).toBe(1);
    db.close();
    server = await start();
  });

  it('what two devices did offline is merged when both are back, and kept over a restart', async () => {
    const a = drill();
    const first = join_(a);
    await first.settled();
    const b = new Y.Doc({ guid: a.guid });
    const second = join_(b);
    await second.settled();
    first.close();
    second.close();
    setAt(a, ['says'], 'a was here', 'a');
    setAt(b, ['minutes'], 12, 'b');
    await join_(a).settled();
    await join_(b).settled();
    await until(
      () =>
        readDocument(a).kind === 'ok' && JSON.stringify(readDocument(a)) === JSON.stringify(readDocument(b)),
    );
    const kept = readDocument(await onDisc(a.guid));
    expect(kept).toMatchObject({ kind: 'ok', value: { says: 'a was here', minutes: 12 } });
  });
});

describe('the door', () => {
  const stranger = (change: (root: Y.Map<unknown>, ydoc: Y.Doc) => void) => {
    const ydoc = new Y.Doc({ guid: newId() });
    change(ydoc.getMap('doc'), ydoc);
    return ydoc;
  };
  it.each([
    ['of an unknown kind', stranger(root => root.set('kind', 'recipe')), /not a document of Icewright/],
    ['without a version', stranger(root => root.set('kind', 'drill')), /which version/],
    [
      'that hides something beside the document',
      stranger((_, ydoc) => ydoc.getArray('else').push([1])),
      /not a document/,
    ],
    [
      'of a newer version',
      stranger(root => {
        root.set('kind', 'drill');
        root.set('schema', 7);
      }),
      /newer Icewright: version 7/,
    ],
    [
      'that is too large',
      stranger(root => {
        root.set('kind', 'drill');
        root.set('schema', 1);
        root.set('title', 'x'.repeat(4.02 * 2 ** 20));
      }),
      /too large/,
    ],
  ])('refuses a document %s and keeps nothing', async (_, ydoc, reason) => {
    const client = join_(ydoc);
    await until(() => client.closeReasons.length > 0);
    expect(client.closeReasons[0]).toMatch(reason);
    client.close();
    expect((await onDisc(ydoc.guid)).getMap('doc').size).toBe(0);
  });

  it.each([
    ['another kind', (root: Y.Map<unknown>) => root.set('kind', 'game'), /cannot become a game/],
    ['a newer version', (root: Y.Map<unknown>) => root.set('schema', 7), /version 7/],
    ['no kind at all', (root: Y.Map<unknown>) => root.delete('kind'), /not a document/],
  ])('refuses to make a kept document into one of %s', async (_, change, reason) => {
    const a = drill();
    await join_(a).settled();
    const other = new Y.Doc({ guid: a.guid });
    await join_(other).settled();
    const bad = clientOf(server.port, other);
    clients.push(bad);
    await bad.settled();
    change(other.getMap('doc'));
    await until(() => bad.closeReasons.length > 0);
    expect(bad.closeReasons[0]).toMatch(reason);
    expect(titleOf(a)).toBe('Five together');
    for (const client of clients.splice(0)) client.close();
    expect(titleOf(await onDisc(a.guid))).toBe('Five together');
  });

  it('a message over the size limit ends the connection', async () => {
    const socket = new WebSocket(`ws://127.0.0.1:${server.port}/sync`);
    await new Promise(done => socket.once('open', done));
    const code = new Promise(done => socket.once('close', done));
    socket.on('error', () => {});
    socket.send(Buffer.alloc(5 * 2 ** 20));
    expect(await code).toBe(1009);
  });

  it('bytes that are no message change nothing and leave the server answering', async () => {
    const a = drill();
    await join_(a).settled();
    for (const bytes of [[0], [255, 255, 255, 255], Array.from(a.guid, letter => letter.charCodeAt(0))]) {
      const socket = new WebSocket(`ws://127.0.0.1:${server.port}/sync`);
      socket.on('error', () => {});
      await new Promise(done => socket.once('open', done));
      socket.send(Buffer.from(bytes));
      await new Promise(done => setTimeout(done, 30));
      socket.terminate();
    }
    const b = new Y.Doc({ guid: a.guid });
    await join_(b).settled();
    expect(titleOf(b)).toBe('Five together');
  });

  it.each(['..', 'a/b', 'x'.repeat(65), 'é'])('refuses the document id %s', async id => {
    const client = join_(new Y.Doc({ guid: id }));
    await until(() => client.closeReasons.length > 0);
    expect(client.closeReasons[0]).toBeTruthy();
  });

  it('a page from elsewhere cannot open the line', async () => {
    const connect = (headers: Record<string, string>) =>
      new Promise(done => {
        const socket = new WebSocket(`ws://127.0.0.1:${server.port}/sync`, { headers });
        socket.once('open', () => {
          socket.terminate();
          done('open');
        });
        socket.once('error', error => done(error.message));
      });
    expect(await connect({ origin: 'http://elsewhere.example' })).toContain('403');
    expect(await connect({ host: 'elsewhere.example' })).toContain('403');
    expect(await connect({ 'sec-fetch-site': 'cross-site' })).toContain('403');
    expect(await connect({ origin: `http://127.0.0.1:${server.port}` })).toBe('open');
    expect(await connect({})).toBe('open');
  });
});
