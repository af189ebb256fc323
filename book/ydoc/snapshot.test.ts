import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { migrated, migrations } from '../migrate/migrations.ts';
import { newDocument } from './new-document.ts';
import { rootOf } from './root.ts';
import { sampleDrill, sampleGame, sampleTeam } from './sample-documents.ts';
import { readDocument } from './snapshot.ts';

const fresh = () => newDocument('game', 'game-1', sampleGame());
const momentOf = (ydoc: Y.Doc, id: string) =>
  (rootOf(ydoc).get('moments') as Y.Map<unknown>).get(id) as Y.Map<unknown>;

describe('reading a document', () => {
  it('refuses a newer one and says which', () => {
    const ydoc = fresh();
    rootOf(ydoc).set('schema', 7);
    const read = readDocument(ydoc);
    expect(read).toMatchObject({ kind: 'refused', reason: 'newer' });
    expect(read.issues[0]!.message).toContain('version 7');
  });

  it('refuses what is not ours and what is broken', () => {
    expect(readDocument(new Y.Doc())).toMatchObject({ kind: 'refused', reason: 'notOurs' });
    const other = fresh();
    rootOf(other).set('kind', 'recipe');
    expect(readDocument(other)).toMatchObject({ kind: 'refused', reason: 'notOurs' });
    const lost = fresh();
    rootOf(lost).delete('moments');
    expect(readDocument(lost)).toMatchObject({ kind: 'refused', reason: 'broken' });
    const nameless = fresh();
    rootOf(nameless).set('schema', 'one');
    expect(readDocument(nameless)).toMatchObject({ kind: 'refused', reason: 'broken' });
  });

  it('leaves out a value that does not fit, keeps it in the document and says so', () => {
    const ydoc = fresh();
    momentOf(ydoc, 'm1').set('costGoals', 'many');
    momentOf(ydoc, 'm2').set('skater', 7);
    rootOf(ydoc).set('opponent', 12);
    rootOf(ydoc).set('score', 'won');
    const read = readDocument(ydoc);
    if (read.kind !== 'ok' || read.value.kind !== 'game') throw new Error('not read');
    const { m2 } = sampleGame().moments as Record<string, unknown>;
    expect(read.value).toEqual({ ...sampleGame(), opponent: '', moments: { m2 } });
    expect(read.issues.map(issue => [issue.path.join('.'), issue.value])).toEqual(
      expect.arrayContaining([
        ['moments.m1.costGoals', 'many'],
        ['moments.m2.skater', 7],
        ['opponent', 12],
        ['score', 'won'],
      ]),
    );
    expect(momentOf(ydoc, 'm1').get('costGoals')).toBe('many');
  });

  it('a key that would change the prototype is never read', () => {
    const ydoc = fresh();
    const bad = new Y.Map<unknown>();
    bad.set('polluted', true);
    (rootOf(ydoc).get('moments') as Y.Map<unknown>).set('__proto__', bad);
    const read = readDocument(ydoc);
    expect(read.kind === 'ok' && Object.keys((read.value as { moments: object }).moments)).toEqual([
      'm1',
      'm2',
    ]);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

describe('migrating a document', () => {
  it.each([
    ['game', ['follows', 'opinions'], sampleGame()],
    ['team', ['momentKeys', 'units'], sampleTeam()],
  ] as const)('gives a %s of version 1 its new lists, empty', (kind, lists, value) => {
    const old: Record<string, unknown> = { ...value, schema: 1 };
    for (const list of lists) delete old[list];
    expect(migrated(kind, old)).toEqual(value);
  });

  it('brings an older one up step by step and leaves the original as it was', () => {
    const old = { ...sampleDrill(), schema: 1 } as unknown as Record<string, unknown>;
    const copy = structuredClone(old);
    const table = {
      ...migrations,
      drill: [
        (drill: Record<string, unknown>) => ({ ...drill, lengthMinutes: drill.minutes }),
        ({ minutes: _, ...drill }: Record<string, unknown>) => ({ ...drill, third: true }),
      ],
    };
    const now = migrated('drill', old, table);
    expect(now).toMatchObject({ schema: 3, lengthMinutes: 8, third: true });
    expect(now).not.toHaveProperty('minutes');
    expect(migrated('drill', { ...old, schema: 3 }, table)).toEqual({ ...old, schema: 3 });
    expect(old).toEqual(copy);
  });
});
