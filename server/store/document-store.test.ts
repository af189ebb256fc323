import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { emptyPractice, newDocument, readDocument, setAt } from '@icewright/book';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { Refusal } from '../refusal.ts';
import { type DocumentStore, documentStoreOn } from './document-store.ts';
import { handoutStoreOn } from './handout-store.ts';
import { keptVersions } from './kept-versions.ts';
import { type Db, openDatabase } from './open-database.ts';

const hourMs = 3_600_000;
let folder: string;
let db: Db;
let store: DocumentStore;
let nowMs: number;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'icewright-store-'));
  db = openDatabase(folder);
  nowMs = 1_780_000_000_000;
  store = documentStoreOn(db, () => nowMs);
});
afterEach(() => {
  db.close();
  rmSync(folder, { recursive: true });
});

const practice = () => {
  const ydoc = newDocument('practice', 'practice-1', emptyPractice({ title: 'Tuesday', day: '2026-11-03' }));
  store.append('practice-1', 'practice', Y.encodeStateAsUpdate(ydoc));
  ydoc.on('update', (update: Uint8Array) => store.append('practice-1', 'practice', update));
  return ydoc;
};
const titled = (ydoc: Y.Doc, title: string) => setAt(ydoc, ['title'], title, 'me');
const rowCount = () => db.prepare('SELECT count(*) FROM updates').pluck().get();

describe('documents on disc', () => {
  it('come back as they were, from rows, from a base and from both', () => {
    const ydoc = practice();
    titled(ydoc, 'Wednesday');
    expect(readDocument(store.load('practice-1'))).toEqual(readDocument(ydoc));
    store.compact('practice-1', ydoc, true);
    expect(rowCount()).toBe(0);
    expect(readDocument(store.load('practice-1'))).toEqual(readDocument(ydoc));
    titled(ydoc, 'Thursday');
    expect(readDocument(store.load('practice-1'))).toMatchObject({ value: { title: 'Thursday' } });
    db.close();
    db = openDatabase(folder);
    expect(readDocument(documentStoreOn(db).load('practice-1'))).toEqual(readDocument(ydoc));
  });

  it('a version is kept at most every ten minutes, and can be looked at', () => {
    const ydoc = practice();
    store.compact('practice-1', ydoc);
    titled(ydoc, 'Wednesday');
    nowMs += 60_000;
    store.compact('practice-1', ydoc);
    expect(store.versions('practice-1')).toHaveLength(1);
    nowMs += hourMs;
    store.compact('practice-1', ydoc);
    const versions = store.versions('practice-1');
    const titles = versions.map(({ id }) => readDocument(store.loadVersion('practice-1', id)!));
    expect(titles).toMatchObject([{ value: { title: 'Wednesday' } }, { value: { title: 'Tuesday' } }]);
    expect(store.loadVersion('practice-2', versions[0]!.id)).toBeNull();
  });

  it('a full disc is said, nothing half-written stays, and it goes on when there is room', () => {
    const ydoc = practice();
    store.compact('practice-1', ydoc, true);
    const pages = db.pragma('page_count', { simple: true }) as number;
    db.pragma(`max_page_count = ${pages + 2}`);
    const big = () => titled(ydoc, 'x'.repeat(200)) && setAt(ydoc, ['note'], 'y'.repeat(19_000), 'me');
    let refusal: unknown;
    try {
      for (let count = 0; count < 20; count += 1) {
        big();
        setAt(ydoc, ['note'], '', 'me');
      }
    } catch (error) {
      refusal = error;
    }
    expect(refusal).toBeInstanceOf(Refusal);
    expect((refusal as Refusal).message).toMatch(/disc is full/);
    expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(readDocument(store.load('practice-1')).kind).toBe('ok');
    db.pragma('max_page_count = 1073741823');
    store.compact('practice-1', ydoc, true);
    expect(readDocument(store.load('practice-1'))).toEqual(readDocument(ydoc));
  });

  it('an erased document leaves nothing behind but its id', () => {
    const ydoc = practice();
    store.compact('practice-1', ydoc, true);
    titled(ydoc, 'x');
    handoutStoreOn(db).make('practice-1', '', 14);
    store.erase(['practice-1']);
    expect(store.list()).toEqual([]);
    expect(store.isErased('practice-1')).toBe(true);
    for (const table of ['updates', 'bases', 'versions', 'handouts']) {
      expect(db.prepare(`SELECT count(*) FROM ${table}`).pluck().get()).toBe(0);
    }
  });

  it('a folder written by a newer program is left alone', () => {
    db.pragma('user_version = 99');
    db.close();
    expect(() => openDatabase(folder)).toThrow(/newer Icewright/);
    // For the clean-up below.
    db = { close() {} } as Db;
  });
});

describe('versions that are kept', () => {
  it('all of two days, one a day for a year, then one a month', () => {
    const now = 800 * 24 * hourMs;
    const everyHour = Array.from({ length: 800 * 24 }, (_, index) => ({ at: now - index * hourMs }));
    const kept = keptVersions(everyHour, now);
    const aged = (from: number, to: number) =>
      kept.filter(({ at }) => now - at >= from * 24 * hourMs && now - at < to * 24 * hourMs).length;
    expect(aged(0, 2)).toBe(48);
    expect(aged(2, 366)).toBeGreaterThanOrEqual(364);
    expect(aged(2, 366)).toBeLessThanOrEqual(365);
    expect(aged(366, 800)).toBeLessThanOrEqual(16);
    expect(aged(366, 800)).toBeGreaterThanOrEqual(14);
    expect(keptVersions(kept, now)).toEqual(kept);
    const original = { at: now - 500 * 24 * hourMs + 1, isOriginal: 1 };
    const withOriginal = [...everyHour, original].sort((a, b) => b.at - a.at);
    expect(keptVersions(withOriginal, now)).toEqual([...kept, original].sort((a, b) => b.at - a.at));
  });
});
