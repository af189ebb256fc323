import { RINK_PRESETS, rinkOf } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { type PenCall, recordingOf } from '../pen/recording-pen.ts';
import { drawRink, rinkViewBox } from './rink.ts';

const FOOT_M = 0.3048;

const circlesOf = (calls: readonly PenCall[], mark: string) =>
  calls.flatMap(call => (call.call === 'circle' && call.mark === mark ? [call] : []));
const outlinesOf = (calls: readonly PenCall[], mark: string) =>
  calls.flatMap(call => (call.call === 'path' && call.mark === mark ? [call.outline] : []));

describe('the drawn sheet', () => {
  it('has the markings of the 200 × 85 ft rule book where it puts them', () => {
    // Western Hockey League, Official Rules 2019-2020, 1.5 and 1.9: goal line 11 ft from the end boards, end spots
    // 20 ft in front of it and 22 ft from the long axis, 2 ft wide, circles of 15 ft with 2 in lines.
    const calls = recordingOf(pen => drawRink(pen, rinkOf({ preset: '200x85ft' })));
    const spots = circlesOf(calls, 'redSpot');
    expect(spots).toHaveLength(8);
    const end = spots.filter(spot => Math.abs(spot.x) > 15);
    for (const spot of end) {
      expect(Math.abs(spot.x)).toBeCloseTo((100 - 11 - 20) * FOOT_M, 3);
      expect(Math.abs(spot.y)).toBeCloseTo(22 * FOOT_M, 3);
      expect(spot.radius).toBeCloseTo(FOOT_M, 3);
    }
    const [blue] = circlesOf(calls, 'bluePaint');
    // Drawn through the middle of its 2 in line, so that the outer edge has 15 ft.
    expect(blue?.radius).toBeCloseTo(15 * FOOT_M - FOOT_M / 12, 3);
    const goalLine = outlinesOf(calls, 'redPaint')[0];
    expect(goalLine).toMatch(/^M-27\.127,/);
  });

  it('keeps true size: the boards are as long and wide as the sheet, and 0.06 m more for their own half line', () => {
    for (const preset of RINK_PRESETS) {
      const rink = rinkOf({ preset });
      const [, outline = ''] = [
        null,
        outlinesOf(
          recordingOf(pen => drawRink(pen, rink)),
          'boards',
        )[0],
      ];
      const numbers = outline.match(/-?\d+(\.\d+)?/g)?.map(Number) ?? [];
      const largest = Math.max(...numbers.map(Math.abs));
      expect(largest, preset).toBeCloseTo(rink.boards.lengthM / 2 + 0.06, 2);
    }
  });

  it('cuts small ice to its area, and keeps the whole sheet whole', () => {
    for (const preset of RINK_PRESETS) {
      const rink = rinkOf({ preset });
      const clips = recordingOf(pen => drawRink(pen, rink)).filter(call => call.call === 'clip');
      expect(clips, preset).toHaveLength(preset === 'halfIce' || preset === 'crossIce' ? 1 : 0);
      const [x, y, width, height] = rinkViewBox(rink);
      expect(x).toBeLessThan(rink.area.minXM);
      expect(x + width).toBeGreaterThan(rink.area.maxXM);
      expect(y).toBeLessThan(-rink.area.maxYM);
      expect(rinkViewBox(rink, true).slice(2)).toEqual([height, width]);
    }
  });
});
