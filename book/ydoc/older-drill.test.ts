import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import * as Y from 'yjs';
import { rootOf } from './root.ts';
import { readDocument } from './snapshot.ts';

it('a drill written by document version 1 reads as it is, with what came since empty', () => {
  const before = new Y.Doc();
  Y.applyUpdate(before, new Uint8Array(readFileSync('fixtures/documents/drill-version-1.update')));
  const root = rootOf(before);
  expect(root.get('schema')).toBe(1);
  const read = readDocument(before);
  expect(read.kind === 'ok' && read.value).toMatchObject({ title: 'Middle first', schema: 4, games: {} });
  // Reading changes nothing of what is kept.
  expect(root.get('schema')).toBe(1);
});
