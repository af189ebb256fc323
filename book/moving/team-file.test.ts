import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { emptyPractice, emptyTeam } from '../blank/empty.ts';
import { setAt } from '../ydoc/change.ts';
import { newDocument } from '../ydoc/new-document.ts';
import { sampleDrill, sampleGame } from '../ydoc/sample-documents.ts';
import { exportTeam } from './export-team.ts';
import { importTeam } from './import-team.ts';

const team = emptyTeam({
  name: 'Lanterns',
  level: 'u18',
  rink: { preset: '60x30m' },
  madeAt: '2026-11-02T10:00:00Z',
});
const docs = () => [
  { id: 'team-1', ydoc: newDocument('team', 'team-1', team) },
  { id: 'game-1', ydoc: newDocument('game', 'game-1', sampleGame()) },
  { id: 'drill-1', ydoc: newDocument('drill', 'drill-1', sampleDrill()) },
  {
    id: 'practice-1',
    ydoc: newDocument('practice', 'practice-1', emptyPractice({ title: 'Tuesday', day: '2026-11-03' })),
  },
];
const sentenceOf = (text: string) => {
  const imported = importTeam(text);
  return imported.kind === 'refused' ? imported.sentence : 'taken';
};
const changed = (
  change: (file: { version: number; documents: { id: string; value: Record<string, unknown> }[] }) => void,
) => {
  const file = JSON.parse(exportTeam(docs()));
  change(file);
  return JSON.stringify(file);
};

describe('one file holds a whole team', () => {
  it('comes back byte-equal, in whatever order it was written and edited', () => {
    const text = exportTeam(docs());
    const imported = importTeam(text);
    if (imported.kind === 'refused') throw new Error(imported.sentence);
    expect(imported.docs.map(({ kind }) => kind)).toEqual(['team', 'drill', 'game', 'practice']);
    expect(exportTeam(imported.docs)).toBe(text);
    expect(exportTeam(docs().reverse())).toBe(text);
    const edited = docs();
    setAt(edited[2]!.ydoc, ['title'], 'other', 'x');
    setAt(edited[2]!.ydoc, ['title'], sampleDrill().title, 'x');
    expect(exportTeam(edited)).toBe(text);
  });

  it('carries what did not fit along, without importing it', () => {
    const all = docs();
    ((all[1]!.ydoc.getMap('doc').get('moments') as Y.Map<unknown>).get('m1') as Y.Map<unknown>).set(
      'costGoals',
      'lots',
    );
    const text = exportTeam(all);
    expect(text).toContain('"lots"');
    const imported = importTeam(text);
    expect(imported.kind === 'ok' && exportTeam(imported.docs)).not.toContain('"lots"');
  });

  it('refuses to write a file that lacks a document', () => {
    expect(() => exportTeam([...docs(), { id: 'odd-1', ydoc: new Y.Doc() }])).toThrow('odd-1 is notOurs');
  });

  it.each([
    ['not JSON', '{', 'This file is not JSON, or it is cut off.'],
    ['other JSON', '[]', 'This is not a team file of Icewright.'],
    [
      'a newer file',
      changed(file => (file.version = 2)),
      /^The file was made by a newer Icewright \(version 2/,
    ],
    [
      'a newer document',
      changed(file => (file.documents[0]!.value.schema = 9)),
      /^The drill “Back to the middle”: it was made by a newer Icewright .*\(documents\.0\.value\.schema\)\.$/,
    ],
    [
      'an unknown kind',
      changed(file => (file.documents[1]!.value.kind = 'recipe')),
      /there is no kind of document called “recipe” \(documents\.1\.value\.kind\)\.$/,
    ],
    [
      'a wrong value',
      changed(file => (file.documents[0]!.value.minutes = 600)),
      'The drill “Back to the middle”: minutes: at most 60 is possible, and 600 stands there (documents.0.value.minutes).',
    ],
    [
      'a missing value',
      changed(file => delete file.documents[2]!.value.title),
      'Practice 3 of the file: title: a text is needed here, and it is missing (documents.2.value.title).',
    ],
    ['a bad id', changed(file => (file.documents[0]!.id = '../x')), /\(documents\.0\.id\)\.$/],
    [
      'an id twice',
      changed(file => (file.documents[1]!.id = 'drill-1')),
      /its id is in the file twice \(documents\.1\.id\)\.$/,
    ],
    [
      'no team',
      changed(file => file.documents.pop()),
      'A team file holds one team, and this one holds none.',
    ],
  ])('refuses %s with one sentence', (_, text, sentence) => {
    expect(sentenceOf(text)).toMatch(sentence);
  });

  it('never throws on a damaged file', () => {
    const text = exportTeam(docs());
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(40), fc.string({ maxLength: 6 }), (at, cut, put) => {
        const damaged = text.slice(0, at) + put + text.slice(at + cut);
        expect(['ok', 'refused']).toContain(importTeam(damaged).kind);
      }),
      { numRuns: 300, seed: 20261125 },
    );
  });
});
