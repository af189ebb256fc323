import { describe, expect, it } from 'vitest';
import { demoValues } from './demo-values.ts';

const film = { hash: 'sampled-sha256:0', byteCount: 1 };
const values = demoValues({ hunt: film, join: film }, { today: '2026-11-25', at: '2026-11-25T12:00:00Z' });
const ofKind = (kind: string) => values.filter(each => each.value.kind === kind);

describe('the demo', () => {
  it('has a team with six habits, two games, twenty drills, three practices and a meeting', () => {
    const kinds = ['team', 'game', 'drill', 'practice', 'meeting'];
    expect(kinds.map(kind => ofKind(kind).length)).toEqual([1, 2, 20, 3, 1]);
    const team = values[0]?.value;
    if (team?.kind !== 'team') throw new Error('the team comes first');
    expect(Object.keys(team.habits)).toHaveLength(6);
    expect(Object.keys(team.contents).sort()).toEqual(
      values
        .slice(1)
        .map(each => each.id)
        .sort(),
    );
  });

  it('has a practice before and one after today, across a month end too', () => {
    const days = ofKind('practice').map(each => (each.value.kind === 'practice' ? each.value.day : ''));
    expect(days).toEqual(['2026-11-10', '2026-11-17', '2026-11-26']);
  });

  it('links only to what is there', () => {
    const ids = new Set(values.map(each => each.id));
    for (const { value } of values) {
      if (value.kind === 'drill' && value.from) {
        const game = values.find(each => each.id === value.from?.game)?.value;
        expect(game?.kind === 'game' && value.from.freeze in game.freezes).toBe(true);
      }
      if (value.kind === 'meeting')
        for (const { of } of Object.values(value.items)) {
          const game = values.find(each => each.id === of.game)?.value;
          expect(of.kind === 'moment' && game?.kind === 'game' && of.moment in game.moments).toBe(true);
        }
      if (value.kind === 'practice')
        for (const block of Object.values(value.blocks)) if (block.drill) expect(ids).toContain(block.drill);
    }
  });
});
