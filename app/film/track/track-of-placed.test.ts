import { expect, it } from 'vitest';
import { placedOfTrack, trackOfPlaced } from './track-of-placed.ts';

const hand = (xPx: number, frameIndex = 90) => ({ frameIndex, filmTimeS: 3, feet: { xPx, yPx: 5 } });
const track = (change: object) => ({ film: 'f', side: 'us', role: 'F1', hands: { h: hand(1) }, ...change });
const placed = (change: object) => ({
  side: 'us',
  kind: 'skater',
  role: 'F1',
  feet: { xPx: 1, yPx: 5 },
  ...change,
});
const found = (tracks: object, of: object) =>
  trackOfPlaced(tracks as never, { film: 'f', frameIndex: 90 } as never, placed(of) as never)?.track;

it('the track of a placed skater is that with a hand on his feet; else of the same person, else of the same role', () => {
  const tracks = {
    role: track({ hands: { h: hand(50) } }),
    person: track({ role: 'D1', skater: 's', hands: { h: hand(60) } }),
    feet: track({ role: 'F3', hands: { h: hand(1) } }),
  };
  expect(found(tracks, { skater: 's' })).toBe('feet');
  expect(found(tracks, { skater: 's', feet: { xPx: 8, yPx: 5 } })).toBe('person');
  expect(found(tracks, { feet: { xPx: 8, yPx: 5 } })).toBe('role');
});

it('nobody of the other side, of another film or of another picture is', () => {
  expect(found({ a: track({ side: 'them' }) }, {})).toBeUndefined();
  expect(found({ a: track({ film: 'g' }) }, {})).toBeUndefined();
  expect(found({ a: track({ hands: { h: hand(1, 91) } }) }, {})).toBeUndefined();
});

it('the placed skater of a track is whom it began with, else the same person; a role alone does not tell', () => {
  const freeze = (skaters: object, change: object = {}) => ({
    film: 'f',
    frameIndex: 90,
    skaters,
    ...change,
  });
  const tracks = { a: track({ skater: 's' }), b: track({ hands: { h: hand(40) } }) };
  const of = (freezes: object, id: string, frameIndex = 90) =>
    placedOfTrack({ freezes, tracks } as never, id, frameIndex).map(one => one.placed as string);
  const onFeet = placed({});
  const elsewhere = placed({ feet: { xPx: 77, yPx: 9 }, role: 'D2' });
  expect(of({ z: freeze({ x: onFeet, y: elsewhere }) }, 'a')).toEqual(['x']);
  expect(of({ z: freeze({ x: placed({ feet: { xPx: 40, yPx: 5 } }) }) }, 'b')).toEqual(['x']);
  // Where no hand was yet: only the person tells.
  const later = (one: object) => ({ z: freeze({ x: one }, { frameIndex: 120 }) });
  expect(of(later(placed({ skater: 's', role: 'D1' })), 'a', 120)).toEqual(['x']);
  expect(of(later(placed({ skater: 's', side: 'them' })), 'a', 120)).toEqual([]);
  expect(of(later(onFeet), 'a', 120)).toEqual([]);
  // Another picture, another film, nobody.
  expect(of({ z: freeze({ x: onFeet }) }, 'a', 91)).toEqual([]);
  expect(of({ z: freeze({ x: onFeet }, { film: 'g' }) }, 'a')).toEqual([]);
  expect(of({}, 'nobody')).toEqual([]);
});
