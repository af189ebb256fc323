import { type Finding, levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { MIDDLE_FIRST } from '../scenes/middle-first.plan.ts';
import { planOf, spotId } from '../scenes/plan-of.ts';
import { drawDrill } from './draw-drill.ts';
import { drillLinesOf } from './drill-lines.ts';
import { drawnMarks, usedMarks } from './used-marks.ts';

const rink = rinkOf({ preset: '200x85ft' });
const at = (xM: number, yM: number) => ({ xM, yM });

describe('flags', () => {
  const finding = (xM: number, yM: number): Finding =>
    ({
      kind: 'tooFastIntoBoards',
      weight: 'look',
      atM: at(xM, yM),
      timeS: 1,
      spots: [],
      measured: 1,
      limit: 1,
      unit: 'm',
    }) as unknown as Finding;
  /** Corners of every flag as they were drawn, from its place. */
  const boxesOf = (findings: readonly Finding[]) => {
    const calls = recordingOf(pen => drawDrill(pen, planOf([]), rink, { findings }));
    return calls.flatMap((call, index) => {
      if (call.call !== 'group' || call.name !== 'flag') return [];
      const placed = calls[index + 1];
      const drawn = calls[index + 2];
      if (placed?.call !== 'place' || drawn?.call !== 'path') throw new Error('a flag is a placed path');
      const corners = [...drawn.outline.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].slice(1).map(([, x, y]) => ({
        x: placed.where.x! + Number(x),
        y: placed.where.y! + Number(y),
      }));
      const xs = corners.map(({ x }) => x);
      const ys = corners.map(({ y }) => y);
      return [
        { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) },
      ];
    });
  };

  it('stand clear of each other at one place, and inside the sheet in its corners', () => {
    for (const place of [at(0, 0), at(29.5, 12.5), at(-29.5, -12.5), at(0, 12.9), at(-30, 0)]) {
      const boxes = boxesOf([
        finding(place.xM, place.yM),
        finding(place.xM, place.yM),
        finding(place.xM, place.yM),
      ]);
      expect(boxes).toHaveLength(3);
      boxes.forEach((box, index) => {
        expect(box.left).toBeGreaterThanOrEqual(rink.area.minXM);
        expect(box.right).toBeLessThanOrEqual(rink.area.maxXM);
        expect(-box.bottom).toBeGreaterThanOrEqual(rink.area.minYM);
        expect(-box.top).toBeLessThanOrEqual(rink.area.maxYM);
        for (const other of boxes.slice(index + 1)) {
          const isApart =
            box.right <= other.left + 1e-3 ||
            other.right <= box.left + 1e-3 ||
            box.bottom <= other.top + 1e-3 ||
            other.bottom <= box.top + 1e-3;
          expect(isApart).toBe(true);
        }
      });
    }
  });
});

describe('a small drawing', () => {
  const chase = (whom: string) =>
    ({ kind: 'chase', whom: spotId(whom), effortRatio: 1, cue: { on: 'whistle' } }) as const;
  const carrier = {
    role: 'X1',
    side: 'them',
    atM: at(13, -2.7),
    acts: [
      {
        kind: 'carry',
        throughM: [at(6, -4.6), at(-15, -6)],
        facing: 'forward',
        effortRatio: 0.8,
        stops: false,
        cue: { on: 'whistle' },
      },
    ],
  } as const;
  const crowd = planOf(
    [
      carrier,
      { role: 'F1', atM: at(14.3, 2.3), waitingCount: 4, acts: [chase('X1')] },
      { role: 'F2', atM: at(17.5, -5), waitingCount: 4, acts: [chase('X1')] },
      {
        role: 'D1',
        atM: at(7.4, -3.6),
        acts: [{ kind: 'gap', whom: spotId('X1'), distanceM: 2.2, cue: { on: 'whistle' } }],
      },
    ],
    [{ atM: at(12.3, -2.7), ownerSpot: spotId('X1'), count: 1 }],
  );
  const playable = playableOf(crowd, rink, levelOf('pro'));
  if (playable.kind === 'unplayable') throw new Error('the crowd cannot be played');
  const run = runDrill(playable);
  const textsAt = (k: number, lettering: string) =>
    recordingOf(pen => drawDrill(pen, crowd, rink, { run, findings: [] }), { k }).flatMap(call =>
      call.call === 'text' && call.lettering === lettering ? [call.words] : [],
    );

  it('says the one whistle of a start once, where the board says it at every spot', () => {
    expect(textsAt(1, 'cueFull')).toEqual(['w', 'w', 'w', 'w']);
    expect(textsAt(2, 'cueFull')).toEqual(['w']);
  });

  it('keeps the lines and leaves out words that would cover something', () => {
    const packed = planOf([
      carrier,
      { role: 'F1', atM: at(14.3, 2.3), acts: [chase('X1')] },
      ...Array.from({ length: 182 }, (_, index) => ({
        role: `P${index}`,
        atM: at(-28 + (index % 14) * 4.3, -12 + Math.floor(index / 14) * 2),
      })),
    ]);
    const drawnAt = (k: number) => {
      const calls = recordingOf(pen => drawDrill(pen, packed, rink), { k });
      return {
        words: calls.flatMap(call =>
          call.call === 'text' && call.lettering === 'labelWord' ? [call.words] : [],
        ),
        acts: calls.filter(call => call.call === 'group' && call.name === 'act').length,
      };
    };
    expect(drawnAt(1)).toEqual({ words: ['chases X1'], acts: 2 });
    expect(drawnAt(1.75)).toEqual({ words: [], acts: 2 });
    expect(textsAt(1.75, 'labelWord').length).toBeGreaterThan(0);
  });

  it('draws the way of a gap to the end of the rep, beside the one it is kept to', () => {
    const ways = drillLinesOf(crowd, rink, { run }).filter(each => each.spot === spotId('D1'));
    const line = ways.at(-1);
    if (line?.kind !== 'route') throw new Error('no way of the gap');
    const track = run.tracks.find(each => each.spot === spotId('D1'))!;
    const ends = run.events.find(event => event.kind === 'actEnds' && event.spot === spotId('D1'));
    const last = Math.min(run.sampleCount - 1, Math.round((ends?.timeS ?? run.durationS) * run.stepHz));
    expect(line.points.at(-1)).toEqual({ x: track.xM[last], y: -track.yM[last]! });
  });

  it('draws a gap by all of its way: so much of it backward as was skated backward, wherever its middle falls', () => {
    const index = run.tracks.findIndex(each => each.spot === spotId('D1'));
    const track = run.tracks[index]!;
    const began = run.events.find(event => event.kind === 'actStarts' && event.spot === spotId('D1'))!;
    for (const share of [0.3, 0.49, 0.51, 0.7]) {
      const changesS = began.timeS + (run.durationS - began.timeS) * share;
      const facingRad = track.facingRad.map((_, at) => {
        const wayRad = Math.atan2(track.yMps[at]!, track.xMps[at]!);
        return at / run.stepHz < changesS ? wayRad : wayRad + Math.PI;
      });
      const seen: typeof run = {
        ...run,
        events: run.events.filter(event => event.kind !== 'turnsRound'),
        tracks: run.tracks.map((each, at) => (at === index ? { ...each, facingRad } : each)),
      };
      const ways = drillLinesOf(crowd, rink, { run: seen }).filter(each => each.spot === spotId('D1'));
      expect(ways.map(each => each.kind === 'route' && [each.backward, each.pivot])).toEqual([
        [false, false],
        [true, false],
      ]);
      const placeAt = Math.round(changesS * run.stepHz);
      const joint = ways[1]?.kind === 'route' ? ways[1].points[0]! : { x: Number.NaN, y: Number.NaN };
      expect(Math.hypot(joint.x - track.xM[placeAt]!, joint.y + track.yM[placeAt]!)).toBeLessThan(0.2);
    }
  });

  it('has in its key the mark the gap was played with', () => {
    expect(usedMarks(crowd)).toContain('gap');
    const played = drawnMarks([{ plan: crowd, run, rink }]);
    expect(played).not.toContain('gap');
    expect(played).toContain('backward');
    expect(drawnMarks([{ plan: crowd, rink }])).toEqual(usedMarks(crowd));
  });

  it('says of a gap that is kept going forward that it is kept, not that somebody is chased, and what ring and ticks are', () => {
    const behind = planOf([
      carrier,
      // The carrier is past her from the first step on: she skates after her, forward.
      {
        role: 'D1',
        atM: at(16, 2),
        acts: [{ kind: 'gap', whom: spotId('X1'), distanceM: 2.2, cue: { on: 'whistle' } }],
      },
    ]);
    const late = playableOf(behind, rink, levelOf('pro'));
    if (late.kind === 'unplayable') throw new Error('it cannot be played');
    const of = { plan: behind, run: runDrill(late), rink };
    const lines = drillLinesOf(behind, rink, { run: of.run }).filter(line => line.spot === spotId('D1'));
    expect(lines.some(line => line.kind === 'route' && !line.backward)).toBe(true);
    const marks = drawnMarks([of], { ticks: true });
    expect(marks).toContain('gapSkated');
    expect(marks).not.toContain('chase');
    expect(marks).toContain('ticks');
    expect(drawnMarks([of])).not.toContain('ticks');
    expect(marks.includes('pivot')).toBe(lines.some(line => line.kind === 'route' && line.pivot));
  });
});

describe('the whole drawing', () => {
  it('names every spot and act, so that a screen knows what was pressed', () => {
    const groups = recordingOf(pen => drawDrill(pen, MIDDLE_FIRST, rink)).flatMap(call =>
      call.call === 'group' ? [call] : [],
    );
    expect(groups.filter(group => group.name === 'spot').map(group => group.data.spot)).toEqual([
      'Co',
      'X2',
      'X1',
      'D1',
      'F3',
      'G',
    ]);
    const acts = Object.values(MIDDLE_FIRST.spots).flatMap(spot => Object.keys(spot.acts));
    expect(
      groups
        .filter(group => group.name === 'act')
        .map(group => group.data.act)
        .sort(),
    ).toEqual(acts.sort());
  });

  it('carries its word with every bank pass', () => {
    const plan = planOf([
      {
        role: 'D1',
        atM: at(-20, 6),
        acts: [{ kind: 'pass', toSpot: spotId('F1'), way: 'bank', speedMps: 14 }],
      },
      { role: 'F1', atM: at(-2, 8) },
    ]);
    const words = recordingOf(pen => drawDrill(pen, plan, rink)).flatMap(call =>
      call.call === 'text' && call.lettering === 'labelWord' ? [call.words] : [],
    );
    expect(words).toEqual(['bank']);
  });
});
