import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { rinkOf } from './rink-of.ts';
import { houseOf, isInZone, isOnIce, lineXOf, RINK_ZONES } from './zones.ts';

const rink = rinkOf({ preset: '200x85ft' });
const anyPoint = fc.record({
  xM: evenly(-30.4, 30.4),
  yM: evenly(-12.9, 12.9),
});

describe('zones', () => {
  it('every point is in exactly one of the three zones', () => {
    fc.assert(
      fc.property(anyPoint, pointM => {
        const zones = (['ourZone', 'neutralZone', 'theirZone'] as const).filter(zone =>
          isInZone(rink, zone, pointM, 'plusX'),
        );
        expect(zones).toHaveLength(1);
      }),
    );
  });

  it('a half turn of the point and of the end we defend changes nothing', () => {
    fc.assert(
      fc.property(anyPoint, ({ xM, yM }) => {
        for (const zone of RINK_ZONES)
          expect(isInZone(rink, zone, { xM, yM }, 'plusX')).toBe(
            isInZone(rink, zone, { xM: -xM, yM: -yM }, 'minusX'),
          );
      }),
    );
  });

  it('the house holds the slot, not the corner, and only at our end', () => {
    const { goalLineXM, endSpotM } = rink.layout;
    expect(isInZone(rink, 'house', { xM: goalLineXM - 4, yM: 0 }, 'plusX')).toBe(true);
    expect(isInZone(rink, 'house', { xM: goalLineXM - 4, yM: 0 }, 'minusX')).toBe(false);
    expect(isInZone(rink, 'house', { xM: goalLineXM - 1, yM: endSpotM.yM }, 'plusX')).toBe(false);
    for (const corner of houseOf(rink, 'minusX'))
      expect(isInZone(rink, 'house', corner, 'minusX')).toBe(true);
  });

  it('the middle lane lies inside the dot lines', () => {
    expect(isInZone(rink, 'middleLane', { xM: 3, yM: 6.7 }, 'plusX')).toBe(true);
    expect(isInZone(rink, 'middleLane', { xM: 3, yM: -6.72 }, 'plusX')).toBe(false);
  });

  it('a blue line belongs to the end zone it closes', () => {
    const line = lineXOf(rink, 'blueLinePlusX');
    expect(isInZone(rink, 'ourZone', { xM: line.minXM + 0.01, yM: 0 }, 'plusX')).toBe(true);
    expect(isInZone(rink, 'neutralZone', { xM: line.minXM - 0.01, yM: 0 }, 'plusX')).toBe(true);
  });

  it('half ice ends at its divider', () => {
    const half = rinkOf({ preset: 'halfIce' });
    expect(isOnIce(half, { xM: 5, yM: 0 })).toBe(true);
    expect(isOnIce(half, { xM: -5, yM: 0 })).toBe(false);
    expect(isOnIce(half, { xM: 30.4, yM: 12.9 })).toBe(false);
  });
});
