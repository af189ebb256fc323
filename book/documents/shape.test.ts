import { describe, expect, it } from 'vitest';
import { documentKinds } from './kinds.ts';
import { longTexts } from './long-texts.ts';
import { type Shape, shapeOf } from './shape.ts';

const textsIn = (shape: Shape, prefix = ''): string[] => [
  ...[...shape.texts].map(key => prefix + key),
  ...[...shape.lists].flatMap(([key, item]) => textsIn(item, `${prefix}${key}.*.`)),
];

/** Fields that take what only a long text may hold. */
const longFieldsIn = (shape: Shape, prefix = ''): string[] => [
  ...Object.entries(shape.fields ?? {})
    .filter(([, field]) => field.safeParse('x'.repeat(15_000)).success)
    .map(([key]) => prefix + key)
    .filter(path => !['films.*.hash', 'films.*.fileName', 'freezes.*.pins.*.landmark'].includes(path)),
  ...[...shape.lists].flatMap(([key, item]) => longFieldsIn(item, `${prefix}${key}.*.`)),
];

describe('the shape of a document in a Y.Doc', () => {
  it.each(documentKinds)('%s: every long text field is listed, and every listed one exists', kind => {
    expect(textsIn(shapeOf(kind)).sort()).toEqual([...longTexts[kind]].sort());
    expect(longFieldsIn(shapeOf(kind)).sort()).toEqual([...longTexts[kind]].sort());
  });

  it('lists lie where the schemas say', () => {
    expect([...shapeOf('game').lists.keys()]).toEqual([
      'films',
      'moments',
      'follows',
      'opinions',
      'freezes',
      'tracks',
      'marks',
    ]);
    expect([...shapeOf('game').lists.get('freezes')!.lists.keys()]).toEqual(['pins', 'skaters']);
    expect([...shapeOf('drill').lists.get('spots')!.lists.keys()]).toEqual(['acts']);
  });
});
