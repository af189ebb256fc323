import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moved } from '../edit/laid-elsewhere.ts';
import { anyDrill } from '../edit/random-drill.reference.ts';
import { everything } from '../edit/selection.ts';
import { afterWrites } from '../write.ts';
import { isSameDrill } from './is-same-drill.ts';

describe('one state of a drill and another', () => {
  it('are the same in whatever order their parts lie', () => {
    fc.assert(
      fc.property(anyDrill(), drill => {
        const turned = (part: unknown): unknown =>
          typeof part === 'object' && part !== null && !Array.isArray(part)
            ? Object.fromEntries(
                Object.entries(part)
                  .reverse()
                  .map(([key, value]) => [key, turned(value)]),
              )
            : part;
        expect(isSameDrill(drill, turned(drill) as typeof drill)).toBe(true);
      }),
      { numRuns: 50, seed: 4 },
    );
  });

  it('differ by another title, by one thing moved, by one taken off, by one more', () => {
    fc.assert(
      fc.property(anyDrill(), drill => {
        expect(isSameDrill(drill, { ...drill, title: `${drill.title}.` })).toBe(false);
        for (const one of everything(drill)) {
          const there = afterWrites(drill, moved(drill, [one], { xM: 0.01, yM: 0 }));
          expect(isSameDrill(drill, there)).toBe(false);
        }
        const [id] = Object.keys(drill.spots);
        const less = afterWrites(drill, [{ path: ['spots', id!], value: undefined }]);
        expect([isSameDrill(drill, less), isSameDrill(less, drill)]).toEqual([false, false]);
      }),
      { numRuns: 50, seed: 4 },
    );
  });
});
