import { levelOf, playableOf, rinkOf } from '@icewright/engine';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { afterWrites } from '../write.ts';
import { anyDrill } from './random-drill.reference.ts';
import { removed } from './removed.ts';
import { everything } from './selection.ts';

it('whatever is taken off the ice, nothing is left that names what is not there', () => {
  fc.assert(
    fc.property(anyDrill(), fc.array(fc.nat(), { maxLength: 4 }), (drill, picks) => {
      const all = everything(drill);
      const selection = [...new Set(picks.map(pick => pick % all.length))].map(place => all[place]!);
      const left = afterWrites(drill, removed(drill, selection));
      const checked = playableOf(left, rinkOf(left.rink), levelOf(left.level));
      expect(checked.kind === 'unplayable' ? checked.issues : []).toEqual([]);
      expect(everything(left)).toHaveLength(all.length - selection.length);
    }),
    { numRuns: 300, seed: 21 },
  );
});
