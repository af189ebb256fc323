import { describe, expect, it } from 'vitest';
import { emptyMeeting, emptyTeam } from '../blank/empty.ts';
import { migrated } from '../migrate/migrations.ts';
import { setAt } from '../ydoc/change.ts';
import { newDocument } from '../ydoc/new-document.ts';
import { rootOf } from '../ydoc/root.ts';
import { readDocument } from '../ydoc/snapshot.ts';
import { currentSchema } from './kinds.ts';

const item = {
  rank: 1,
  of: { kind: 'moment', game: 'game-1', moment: 'moment-1', said: 'Level at our line' },
  says: 'Where was the third one?',
  asks: '',
  notes: 'Praise first',
  talkMinutes: 0.5,
  hidden: false,
};

describe('a meeting', () => {
  it('keeps its items, and refuses what fits no meeting', () => {
    const start = emptyMeeting({ title: 'After the game', day: '2026-11-20', budgetMinutes: 10 });
    const ydoc = newDocument('meeting', 'meeting-1', start);
    const put = (value: unknown, id = 'one') => setAt(ydoc, ['items', id], value, 'me').kind;
    expect(put(item)).toBe('done');
    expect(put({ ...item, stop: { frameIndex: 12, filmTimeS: 0.4, seconds: 5 } }, 'two')).toBe('done');
    expect(put({ ...item, of: { kind: 'drill', drill: 'd' } }, 'three')).toBe('refused');
    expect(put({ ...item, talkMinutes: -1 }, 'four')).toBe('refused');
    const read = readDocument(ydoc);
    expect(read).toMatchObject({ kind: 'ok', issues: [], value: { items: { one: { says: item.says } } } });
  });

  it('is listed by teams from version 3 on alone: what was version 2 becomes the newest and says the same', () => {
    const value = emptyTeam({
      name: 'Herons',
      level: 'u18',
      rink: { preset: '60x30m' },
      madeAt: '2026-11-02T10:00:00Z',
    });
    const older = { ...value, schema: 2 };
    expect(migrated('team', older)).toEqual(value);
    const ydoc = newDocument('team', 'team-1', value);
    rootOf(ydoc).set('schema', 2);
    const entry = { kind: 'meeting', title: 'After the game', day: '2026-11-20', removed: false };
    expect(setAt(ydoc, ['contents', 'meeting-1'], entry, 'me').kind).toBe('done');
    expect(rootOf(ydoc).get('schema')).toBe(currentSchema.team);
    expect(readDocument(ydoc, { ...currentSchema, team: 2 })).toMatchObject({ reason: 'newer' });
  });
});
