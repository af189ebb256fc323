import { boardsDistance, levelOf, rinkOf } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { BODY_ACTS } from '../scenes/drill-body-acts.ts';
import { PUCK_ACTS } from '../scenes/drill-puck-acts.ts';
import { spotId } from '../scenes/plan-of.ts';
import { drawDrillOnly } from './draw-drill.ts';
import { drillLinesOf } from './drill-lines.ts';
import { KEY_SIGNS } from './key-signs.ts';
import { KEY_ENTRIES, usedMarks } from './used-marks.ts';

const rink = rinkOf({ preset: '200x85ft' });
const wide = rinkOf({ preset: '60x30m' });
const puckLines = drillLinesOf(PUCK_ACTS, rink, { level: 'collegeWomen' });
const bodyLines = drillLinesOf(BODY_ACTS, wide, { level: 'collegeWomen' });
const linesBy = (lines: typeof puckLines, role: string) => lines.filter(line => line.spot === spotId(role));

describe('what is drawn of each act', () => {
  it('says how far a saucer carries: 12 m/s for twice the time of falling 0.2 m, a little less by the air', () => {
    const saucer = linesBy(puckLines, 'Co').find(line => line.kind === 'pass');
    // Free fall, any textbook: 2 √(2h/g) of air time with h = 0.2 m, g = 9.81 m/s².
    const noAirM = 12 * 2 * Math.sqrt((2 * 0.2) / 9.81);
    const airM = saucer?.kind === 'pass' ? saucer.airM! : 0;
    expect(airM).toBeLessThan(noAirM);
    expect(airM).toBeGreaterThan(0.97 * noAirM);
    expect(saucer?.kind === 'pass' && saucer.words).toBe(`saucer ${airM.toFixed(1)} m`);
  });

  it('keeps a rim at the boards all the way between passer and receiver', () => {
    const rim = linesBy(puckLines, 'D1').find(line => line.kind === 'pass');
    const legs = rim?.kind === 'pass' ? rim.legs : [];
    expect(legs.length).toBeGreaterThan(6);
    for (const { x, y } of legs.slice(1, -1)) {
      expect(boardsDistance(rink.boards, { xM: x, yM: -y })).toBeCloseTo(0.35, 6);
    }
  });

  it('turns on an arc no tighter than the level can, and lets the route go on along it', () => {
    const [comes, turn, goes] = linesBy(bodyLines, 'F2');
    if (comes?.kind !== 'route' || turn?.kind !== 'route' || goes?.kind !== 'route')
      throw new Error('no routes');
    const first = turn.points[0]!;
    const last = turn.points[turn.points.length - 1]!;
    const apartM = Math.hypot(last.x - first.x, last.y - first.y);
    expect(apartM / 2).toBeGreaterThanOrEqual(levelOf('collegeWomen').model.minTurnRadiusM - 1e-9);
    // Half a turn to the right of one who goes towards +x: it comes back under itself, on the page below.
    expect(last.x).toBeCloseTo(first.x, 6);
    expect(last.y).toBeGreaterThan(first.y);
    expect(goes.points[0]).toEqual(last);
    expect(comes.end).toBe('open');
  });

  it('stops over the way that the level needs from that speed, v² / 2a', () => {
    const [, stop] = linesBy(bodyLines, 'F1');
    if (stop?.kind !== 'route') throw new Error('no way to stop');
    const wayM = Math.hypot(stop.points[1]!.x - stop.points[0]!.x, stop.points[1]!.y - stop.points[0]!.y);
    const speedMps = Math.sqrt(2 * levelOf('collegeWomen').model.stopDecelMps2 * wayM);
    expect(speedMps).toBeGreaterThan(4);
    expect(speedMps).toBeLessThan(levelOf('collegeWomen').model.topSpeedMps);
    expect(stop.end).toBe('stop');
  });

  it('begins what comes after a pick-up at the puck, as a wave', () => {
    const [way, wave] = linesBy(puckLines, 'LW');
    if (way?.kind !== 'route' || wave?.kind !== 'route') throw new Error('no routes');
    expect(way.puckAtEnd?.at).toEqual({ x: 10, y: 9 });
    expect(wave.style).toBe('carry');
    expect(wave.points[0]).toEqual({ x: 10, y: 9 });
  });

  for (const k of [1, 1.75])
    it(`gives every mark that is not the same everywhere its word, at k = ${k}`, () => {
      const words = recordingOf(pen => pen.place({ k }, () => drawDrillOnly(pen, PUCK_ACTS, rink)))
        .flatMap(call => (call.call === 'text' && call.lettering === 'labelWord' ? [call.words] : []))
        .map(each => each.split(' ')[0]);
      expect(words).toEqual(expect.arrayContaining(['rim', 'drop', 'saucer', 'screen', 'left']));
    });

  it('lets no word and no lozenge stand on another', () => {
    for (const [plan, sheet] of [
      [PUCK_ACTS, rink],
      [BODY_ACTS, wide],
    ] as const) {
      const boxes = recordingOf(pen => drawDrillOnly(pen, plan, sheet, { level: 'collegeWomen' })).flatMap(
        call => {
          if (call.call !== 'text') return [];
          if (call.lettering === 'labelWord') {
            return [{ words: call.words, x: call.x, y: call.y, halfX: call.words.length * 0.2, halfY: 0.4 }];
          }
          const isCue = call.lettering === 'cueFull' || call.lettering === 'cueOpen';
          return isCue ? [{ words: call.words, x: call.x, y: call.y, halfX: 0.5, halfY: 0.5 }] : [];
        },
      );
      expect(boxes.length).toBeGreaterThan(8);
      boxes.forEach((one, index) => {
        for (const other of boxes.slice(index + 1)) {
          const overX = one.halfX + other.halfX - Math.abs(one.x - other.x);
          const overY = one.halfY + other.halfY - Math.abs(one.y - other.y);
          expect(Math.min(overX, overY), `${one.words} on ${other.words}`).toBeLessThanOrEqual(0);
        }
      });
    }
  });

  it('has a sign and words in the key for every mark that these two drills use, and they use all but five', () => {
    const used = usedMarks(PUCK_ACTS, BODY_ACTS);
    // The last three are marks of what was played alone.
    expect(KEY_ENTRIES.filter(entry => !used.includes(entry))).toEqual([
      'pass',
      'bank',
      'meant',
      'gapSkated',
      'ticks',
    ]);
    for (const entry of KEY_ENTRIES) {
      expect(recordingOf(KEY_SIGNS[entry]).length).toBeGreaterThan(0);
    }
  });

  it('marks the place that is waited for once, true to size', () => {
    const circles = recordingOf(pen => drawDrillOnly(pen, BODY_ACTS, wide)).filter(
      call => call.call === 'circle' && call.mark === 'place',
    );
    expect(circles).toEqual([expect.objectContaining({ x: -14, y: -10, radius: 1.5 })]);
  });
});
