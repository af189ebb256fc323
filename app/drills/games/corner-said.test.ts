import type { Drill } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { expect, it } from 'vitest';
import { snapOf } from '../edit/snap.ts';
import { rinkSnaps } from '../edit/snap-to-rink.ts';
import { CORNERS, cornerOf, cornerSaid } from './game-writes.ts';

const skater = (attacks?: 'minusX') => ({ side: 'us', kind: 'skater', ...(attacks && { attacks }) });
const drill = (attacks?: 'minusX') => ({ spots: { f: skater(attacks) } }) as unknown as Drill;
const game = { fromM: { xM: 5, yM: -4 }, toM: { xM: 20, yM: 9 } } as never;

it('names the corners of a small game by the end that the drill plays to', () => {
  const placeOf = (said: string, of: Drill) =>
    cornerOf(
      game,
      CORNERS.findIndex((_, corner) => cornerSaid(corner, of) === said),
    );
  expect(placeOf('our end, left', drill())).toEqual({ xM: 5, yM: 9 });
  // Turned, they come from the other end: ours is there, and the left is on the other side.
  expect(placeOf('our end, left', drill('minusX'))).toEqual({ xM: 20, yM: -4 });
  expect(new Set(CORNERS.map((_, corner) => cornerSaid(corner, drill('minusX')))).size).toBe(4);
});

it('names the lines that a hand catches on by the end that the drill plays to', () => {
  const rink = rinkOf({ preset: '200x85ft' });
  const at = { xM: rink.lines.blueLineMinusX.centreXM, yM: 3.3 };
  const said = (attacked: 'plusX' | 'minusX') =>
    snapOf(at, rinkSnaps(rink, attacked), 0.4)?.to.map(({ words }) => words);
  expect(said('plusX')).toEqual(['on our blue line']);
  expect(said('minusX')).toEqual(['on their blue line']);
});
