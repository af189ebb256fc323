import { describe, expect, it } from 'vitest';
import { documentSchemas } from '../documents/kinds.ts';
import { shapeOf } from '../documents/shape.ts';
import { documentPlaceSaid } from './document-place-said.ts';

describe('where in a document something is wrong', () => {
  it.each([
    [
      'practice',
      ['blocks', 'b1', 'minutes'],
      { blocks: { b1: { title: 'Warm up' } } },
      'the block “Warm up”: minutes',
    ],
    [
      'game',
      ['moments', 'm1', 'verdict'],
      { moments: { m1: { filmTimeS: 75.04 } } },
      'the moment at 75.0 s of the film: verdict',
    ],
    [
      'game',
      ['freezes', 'f1', 'pins', 'p1', 'at', 'xPx'],
      {},
      'a freeze: a pin: place in the picture, across',
    ],
    [
      'meeting',
      ['items', 'i1', 'stop', 'seconds'],
      { items: { i1: { says: 'Who is first?' } } },
      'the item “Who is first?”: seconds',
    ],
    [
      'team',
      ['skaters', 's1', 'timed', '0', 'distanceM'],
      { skaters: { s1: { name: 'Žižková' } } },
      'the skater “Žižková”: distance, in metres',
    ],
    ['team', ['name'], {}, 'name'],
    ['team', ['habits'], {}, 'habits'],
    ['drill', ['spots', 's1', 'facingRad'], { spots: { s1: { role: 'F2' } } }, 'F2: facing'],
  ] as const)('in a %s is said in words', (kind, path, document, said) => {
    expect(documentPlaceSaid(kind, path, document)).toBe(said);
  });

  it('has a word for an item of every list there is', () => {
    for (const kind of ['team', 'game', 'practice', 'meeting'] as const) {
      expect(documentSchemas[kind]).toBeDefined();
      for (const [list, item] of shapeOf(kind).lists) {
        expect(documentPlaceSaid(kind, [list, 'x', 'rank'], {})).toMatch(/^an? [a-z ]+: order$/);
        for (const inner of item.lists.keys())
          expect(documentPlaceSaid(kind, [list, 'x', inner, 'y', 'rank'], {})).toMatch(
            /^a [a-z ]+: a [a-z ]+: order$/,
          );
      }
    }
  });
});
