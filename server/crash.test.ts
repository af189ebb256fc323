import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Drill, emptyDrill, newDocument, readDocument, setAt } from '@icewright/book';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { documentStoreOn } from './store/document-store.ts';
import { openDatabase } from './store/open-database.ts';
import { bundledServe } from './trial/bundled.ts';
import { clientOf } from './trial/client.ts';

const killCount = 25;
const documentId = 'drill-on-the-edge';

let folder: string;
let script: string;
beforeAll(async () => {
  script = await bundledServe();
  folder = mkdtempSync(join(tmpdir(), 'icewright-crash-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const boot = () => spawn(process.execPath, [script, folder], { stdio: ['pipe', 'pipe', 'inherit'] });

async function start(child: ChildProcess): Promise<number> {
  let said = '';
  child.stdout!.on('data', chunk => (said += chunk));
  child.stdin!.write('go\n');
  while (!/port \d+/.test(said)) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}: ${said}`);
    await Promise.race([once(child.stdout!, 'data'), once(child, 'exit')]);
  }
  return Number(/port (\d+)/.exec(said)![1]);
}

/** Edits without a pause until the server is killed; says which edits were old or acknowledged at that moment. */
async function editUntilKilled(child: ChildProcess, round: number, lastsMs: number) {
  const ydoc =
    round === 0
      ? newDocument(
          'drill',
          documentId,
          emptyDrill({
            title: 'Edge',
            level: 'u18',
            rink: { preset: '60x30m' },
            madeAt: '2026-11-02T10:00:00Z',
          }),
        )
      : new Y.Doc({ guid: documentId });
  const client = clientOf(await start(child), ydoc);
  await client.settled(20_000);
  const edits: { id: string; atMs: number }[] = [];
  const beganMs = performance.now();
  while (performance.now() - beganMs < lastsMs) {
    const id = `r${round}-${edits.length}`;
    expect(
      setAt(ydoc, ['gear', id], { kind: 'pylon', atM: { xM: edits.length / 10, yM: 0 }, facingRad: 0 }, 'me')
        .kind,
    ).toBe('done');
    edits.push({ id, atMs: performance.now() });
    await new Promise(done => setTimeout(done, 4));
  }
  const killedMs = performance.now();
  const acknowledged = edits.length - client.provider.unsyncedChanges;
  child.kill('SIGKILL');
  await once(child, 'exit');
  client.close();
  ydoc.destroy();
  return {
    mustBeKept: edits
      .filter(({ atMs }, index) => killedMs - atMs > 1000 || index < acknowledged)
      .map(({ id }) => id),
    oldCount: edits.filter(({ atMs }) => killedMs - atMs > 1000).length,
    acknowledged,
  };
}

describe('the server is killed while somebody edits', () => {
  it(`${killCount} times: all that was acknowledged, and all that is older than a second, is on disc`, {
    timeout: 300_000,
  }, async () => {
    const mustBeKept: string[] = [];
    let oldCount = 0;
    let next = boot();
    for (let round = 0; round < killCount; round += 1) {
      const child = next;
      next = boot();
      // 1.05 to 1.45 s, spread evenly, so that kills fall into every phase of a background compaction.
      const result = await editUntilKilled(child, round, 1050 + ((round * 0.618034) % 1) * 400);
      expect(result.acknowledged).toBeGreaterThan(0);
      oldCount += result.oldCount;
      mustBeKept.push(...result.mustBeKept);

      // Read by nobody but us: the device that made the edits is gone and cannot send them again.
      const db = openDatabase(folder);
      expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
      const read = readDocument(documentStoreOn(db).load(documentId));
      db.close();
      if (read.kind !== 'ok') throw new Error(`round ${round}: ${read.reason}`);
      expect(read.issues).toEqual([]);
      const { gear } = read.value as Drill;
      expect(mustBeKept.filter(id => !(id in gear))).toEqual([]);
    }
    next.kill('SIGKILL');
    expect(oldCount).toBeGreaterThan(killCount);
  });
});
