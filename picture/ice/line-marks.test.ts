import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { drawBackward, drawCarry, drawForward, drawPassLine, drawShotLine } from './line-marks.ts';
import { pieceOf, pointAt, polylineOf } from './polyline.ts';
import { distanceOf } from './sheet-point.ts';

const level = polylineOf([
  { x: 0, y: 0 },
  { x: 20, y: 0 },
]);
const outline = (draw: Parameters<typeof recordingOf>[0], mark: string): string =>
  recordingOf(draw).flatMap(call => (call.call === 'path' && call.mark === mark ? [call.outline] : []))[0] ??
  '';
const pointsIn = (path: string) =>
  [...path.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(match => ({
    x: Number(match[1]),
    y: Number(match[2]),
  }));

describe('marks of skating', () => {
  it('waves 0.36 m to either side with the puck, and goes straight for the last stride', () => {
    const points = pointsIn(outline(pen => drawCarry(pen, level, 'head'), 'skate'));
    const heights = points.map(point => point.y);
    expect(Math.max(...heights)).toBeGreaterThan(0.33);
    expect(Math.max(...heights.map(Math.abs))).toBeLessThanOrEqual(0.36);
    for (const point of points) if (point.x > 20 - 1.9) expect(Math.abs(point.y)).toBeLessThan(1e-6);
  });

  it('bulges half circles against the way she goes, which is the way she faces', () => {
    const path = outline(pen => drawBackward(pen, level, 'head'), 'back');
    // M start A r r 0 large sweep end: an arc from below to above whose middle lies behind its ends.
    expect(path.match(/A/g)!.length).toBeGreaterThan(20);
    for (const arc of path.matchAll(/M(-?[\d.]+),(-?[\d.]+)A([\d.]+),[\d.]+,0,0,1,(-?[\d.]+),(-?[\d.]+)/g)) {
      const [, x1, y1, , x2, y2] = arc.map(Number) as [number, number, number, number, number, number];
      expect(x1).toBeCloseTo(x2, 2);
      expect(y1).toBeGreaterThan(y2);
    }
  });

  it('tells a pass, a shot, skating and a stop apart without colour', () => {
    const shapes = [
      recordingOf(pen => drawForward(pen, level, 'head')),
      recordingOf(pen => drawForward(pen, level, 'stop')),
      recordingOf(pen => drawCarry(pen, level, 'head')),
      recordingOf(pen => drawBackward(pen, level, 'head')),
      recordingOf(pen => drawPassLine(pen, level.points)),
      recordingOf(pen => drawShotLine(pen, { x: 0, y: 0 }, { x: 20, y: 0 })),
    ].map(calls => JSON.stringify(calls));
    expect(new Set(shapes).size).toBe(shapes.length);
  });

  it('leaves a half disc on the boards that opens into the ice', () => {
    const path = outline(
      pen =>
        drawPassLine(pen, [
          { x: 0, y: 3 },
          { x: 5, y: 0 },
          { x: 10, y: 3 },
        ]),
      'bounce',
    );
    const [start] = pointsIn(path);
    expect(start?.y).toBeCloseTo(0, 3);
    expect(path).toMatch(/A0\.36,0\.36,0,1,1|A0\.36,0\.36,0,0,1/);
  });
});

describe('a line with its length', () => {
  const points = fc.array(
    fc.record({ x: fc.integer({ min: -30, max: 30 }), y: fc.integer({ min: -13, max: 13 }) }),
    {
      minLength: 2,
      maxLength: 12,
    },
  );

  it('puts a place after so many metres of it', () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (each, share) => {
        const line = polylineOf(each);
        const before = pieceOf(line, 0, share * line.length);
        const after = pieceOf(line, share * line.length, line.length);
        expect(before.length + after.length).toBeCloseTo(line.length, 6);
        const { at } = pointAt(line, share * line.length);
        expect(distanceOf(at, before.points[before.points.length - 1]!)).toBeLessThan(1e-6);
      }),
    );
  });
});
