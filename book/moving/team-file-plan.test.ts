import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { emptyPractice, emptyTeam } from '../blank/empty.ts';
import type { Drill } from '../documents/drill.ts';
import { setAt } from '../ydoc/change.ts';
import { newDocument } from '../ydoc/new-document.ts';
import { sampleDrill, sampleGame } from '../ydoc/sample-documents.ts';
import { readDocument } from '../ydoc/snapshot.ts';
import { exportTeam } from './export-team.ts';
import { importTeam } from './import-team.ts';
import { planTeamFile } from './team-file-plan.ts';
import { hasNews, teamFileSentence } from './team-file-words.ts';

type Docs = Map<string, Y.Doc>;

const entry = (kind: 'game' | 'drill' | 'practice', title: string) =>
  ({ kind, title, day: '2026-11-03', removed: false }) as const;
const made = (): Docs =>
  new Map([
    [
      'team-1',
      newDocument('team', 'team-1', {
        ...emptyTeam({
          name: 'Lanterns',
          level: 'u18',
          rink: { preset: '60x30m' },
          madeAt: '2026-11-02T10:00:00Z',
        }),
        contents: {
          'drill-1': entry('drill', 'Back to the middle'),
          'game-1': entry('game', 'Moss Point'),
          'practice-1': entry('practice', 'Tuesday'),
        } as never,
      }),
    ],
    ['game-1', newDocument('game', 'game-1', sampleGame())],
    ['drill-1', newDocument('drill', 'drill-1', sampleDrill())],
    [
      'practice-1',
      newDocument('practice', 'practice-1', {
        ...emptyPractice({ title: 'Tuesday', day: '2026-11-03' }),
        blocks: {
          b1: {
            rank: 1,
            drill: 'drill-1',
            minutes: 10,
            changeoverMinutes: 0,
            ...{ title: '', says: '', keyPoints: '', leads: '', pucks: '', ice: '', groups: '' },
          },
        } as never,
      }),
    ],
  ]);
/** The same on another machine: copies that were taken once, and go their own way. */
const copied = (docs: Docs): Docs =>
  new Map(
    [...docs].map(([id, ydoc]) => {
      const copy = new Y.Doc({ guid: id });
      Y.applyUpdate(copy, Y.encodeStateAsUpdate(ydoc));
      return [id, copy];
    }),
  );
const fileOf = (docs: Docs, histories: 'withHistories' | 'valuesAlone' = 'withHistories') =>
  exportTeam(
    [...docs].map(([id, ydoc]) => ({ id, ydoc })),
    histories,
  );
const planOf = (text: string, here: Docs) => {
  const imported = importTeam(text);
  if (imported.kind === 'refused') throw new Error(imported.sentence);
  return planTeamFile(imported.docs, id => here.get(id));
};
const taken = (text: string, here: Docs) => {
  const plan = planOf(text, here);
  for (const { id, ydoc } of [...plan.added, ...plan.beside.map(({ document }) => document)])
    here.set(id, ydoc);
  for (const { id, update } of plan.merged) Y.applyUpdate(here.get(id)!, update);
  return plan;
};
const drillOf = (docs: Docs, id = 'drill-1') => {
  const read = readDocument(docs.get(id)!);
  if (read.kind === 'refused') throw new Error(id);
  expect(read.issues).toEqual([]);
  return read.value as Drill;
};

describe('a team file of a team that is here', () => {
  it('brings nothing where nothing differs, and leaves every byte', () => {
    const here = made();
    const before = fileOf(here);
    for (const histories of ['withHistories', 'valuesAlone'] as const) {
      const plan = taken(fileOf(here, histories), here);
      expect(plan).toMatchObject({ way: 'joins', sameCount: 4 });
      expect(hasNews(plan)).toBe(false);
    }
    expect(fileOf(here)).toBe(before);
  });

  it('merges what two changed apart, adds what is new, says so before, and comes to the same both ways', () => {
    const here = made();
    const there = copied(here);
    setAt(here.get('drill-1')!, ['minutes'], 17, 'here');
    setAt(there.get('drill-1')!, ['title'], 'Through the middle', 'there');
    setAt(there.get('team-1')!, ['contents', 'drill-2'], entry('drill', 'New one'), 'there');
    there.set('drill-2', newDocument('drill', 'drill-2', { ...sampleDrill(), title: 'New one' }));
    const [fromHere, fromThere] = [fileOf(here), fileOf(there)];
    const plan = planOf(fromThere, here);
    expect(teamFileSentence(plan)).toBe(
      '“Lanterns” is here; of the 5 documents in this file 1 is new, 2 are merged with what is here and 2 are the same.',
    );
    expect(fileOf(here)).toBe(fromHere);
    taken(fromThere, here);
    taken(fromHere, there);
    expect(drillOf(here)).toMatchObject({ minutes: 17, title: 'Through the middle' });
    expect(fileOf(here, 'valuesAlone')).toBe(fileOf(there, 'valuesAlone'));
    expect(hasNews(planOf(fromThere, here))).toBe(false);
  });

  it('takes nothing back that was changed here since the file was written', () => {
    const here = made();
    const file = fileOf(here);
    setAt(here.get('drill-1')!, ['minutes'], 17, 'here');
    const plan = taken(file, here);
    expect(hasNews(plan)).toBe(false);
    expect(drillOf(here).minutes).toBe(17);
  });

  it('keeps both of two drills of one id that were made apart, once, however often the file comes', () => {
    const here = made();
    const there = copied(here);
    there.set('drill-1', newDocument('drill', 'drill-1', { ...sampleDrill(), minutes: 9 }));
    const file = fileOf(there);
    const plan = taken(file, here);
    expect(teamFileSentence(plan)).toMatch(/1 is made apart from the one here and kept beside it/);
    expect(drillOf(here).minutes).toBe(sampleDrill().minutes);
    const [{ document, entry: line }] = plan.beside as [(typeof plan.beside)[number]];
    expect(drillOf(here, document.id)).toMatchObject({
      minutes: 9,
      title: 'Back to the middle (from a file)',
    });
    expect(line?.title).toBe('Back to the middle (from a file)');
    expect(hasNews(planOf(file, here))).toBe(false);
  });

  it('takes a file that was changed by hand for what it says, and not for what its history says', () => {
    const here = made();
    const file = JSON.parse(fileOf(here)) as { documents: { id: string; value: { minutes: number } }[] };
    file.documents.find(({ id }) => id === 'drill-1')!.value.minutes = 33;
    const { beside } = taken(JSON.stringify(file), here);
    expect(beside).toHaveLength(1);
    expect(drillOf(here, beside[0]!.document.id).minutes).toBe(33);
  });

  it('takes a team of the same ids that was made apart as a second team, whose practice speaks of its own drill', () => {
    const here = made();
    const before = fileOf(here);
    const there = made();
    setAt(there.get('team-1')!, ['season'], 'another', 'there');
    const file = fileOf(there);
    const plan = taken(file, here);
    expect(plan.way).toBe('apart');
    expect(teamFileSentence(plan)).toMatch(
      /comes in as a second team, “Lanterns \(from a file\)”, with 4 documents/,
    );
    expect(fileOf(new Map([...here].filter(([id]) => !plan.added.some(each => each.id === id))))).toBe(
      before,
    );
    const id = (kind: string) => plan.added.find(each => each.kind === kind)!.id;
    expect(readDocument(here.get(id('practice'))!)).toMatchObject({
      value: { blocks: { b1: { drill: id('drill') } } },
    });
    expect(readDocument(here.get(id('team'))!)).toMatchObject({
      value: { contents: { [id('drill')]: { title: 'Back to the middle' } } },
    });
    expect(hasNews(planOf(file, here))).toBe(false);
  });
});
