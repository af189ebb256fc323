import { type Act, type ActId, type Finding, levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { MIDDLE_FIRST } from '../scenes/middle-first.plan.ts';
import { planOf, spotId } from '../scenes/plan-of.ts';
import { cueSignsOf } from './cue-letters.ts';
import { drawDrill } from './draw-drill.ts';
import { drillLinesOf } from './drill-lines.ts';
import { freePlace } from './free-place.ts';
import { drawKey } from './key.ts';
import { drawnMarks, KEY_ENTRIES, usedMarks } from './used-marks.ts';

const rink = rinkOf({ preset: '200x85ft' });
const at = (xM: number, yM: number) => ({ xM, yM });

describe('a drill as lines', () => {
  it('takes a pass where the receiver first needs the puck', () => {
    const pass = drillLinesOf(MIDDLE_FIRST, rink).find(line => line.kind === 'pass' && line.spot === 'X2');
    expect(pass?.kind === 'pass' && pass.legs).toEqual([
      { x: 13.6, y: -6.8 },
      { x: 6.4, y: -10.3 },
    ]);
  });

  it('bends a bank pass at the boards, as far from both as a mirror says', () => {
    const plan = planOf([
      {
        role: 'D1',
        atM: at(-20, 6),
        acts: [{ kind: 'pass', toSpot: spotId('F1'), way: 'bank', speedMps: 14 }],
      },
      { role: 'F1', atM: at(-2, 8) },
    ]);
    const [line] = drillLinesOf(plan, rink);
    if (line?.kind !== 'pass') throw new Error('no pass');
    const [from, bounce, to] = line.legs as [
      { x: number; y: number },
      { x: number; y: number },
      { x: number; y: number },
    ];
    expect(bounce.y).toBeCloseTo(-rink.boards.widthM / 2, 9);
    expect((bounce.x - from.x) / (from.y - bounce.y)).toBeCloseTo((to.x - bounce.x) / (to.y - bounce.y), 9);
  });

  it('writes a gap in the lengths of the team', () => {
    const plan = planOf([
      { role: 'D1', atM: at(-10, 0), acts: [{ kind: 'gap', whom: spotId('X1'), distanceM: 3.048 }] },
      { role: 'X1', side: 'them', atM: at(0, 0) },
    ]);
    const wordsOf = (lengths?: 'feet') =>
      drillLinesOf(plan, rink, lengths === undefined ? {} : { lengths }).map(
        line => 'words' in line && line.words,
      );
    expect(wordsOf()).toEqual(['gap 3.0 m']);
    expect(wordsOf('feet')).toEqual(['gap 10 ft']);
  });

  it('with a run, puts a tick at every whole second where the run has the skater', () => {
    const playable = playableOf(MIDDLE_FIRST, rink, levelOf('collegeWomen'));
    if (playable.kind === 'unplayable') throw new Error('Middle first cannot be played');
    const run = runDrill(playable);
    const line = drillLinesOf(MIDDLE_FIRST, rink, { run }).find(
      each => each.kind === 'route' && each.spot === 'F3',
    );
    if (line?.kind !== 'route') throw new Error('no route');
    const start = run.events.find(event => event.kind === 'actStarts' && event.spot === 'F3')!.timeS;
    const track = run.tracks.find(each => each.spot === 'F3')!;
    expect(line.ticks.length).toBeGreaterThan(2);
    line.ticks.forEach((tick, index) => {
      const sample = Math.round((start + index + 1) * run.stepHz);
      expect(tick.x).toBeCloseTo(track.xM[sample]!, 9);
    });
  });

  it('tells two passes apart whose acts have the same id, as ids are a spot’s own', () => {
    const same = (toSpot: string, more: object) => ({
      ['act-1' as ActId]: {
        rank: 0,
        kind: 'pass',
        toSpot: spotId(toSpot),
        way: 'direct',
        speedMps: 12,
        ...more,
      } as Act,
    });
    const base = planOf(
      [
        { role: 'D1', atM: at(-20, 6) },
        { role: 'F1', atM: at(-12, 2) },
        { role: 'F2', atM: at(-4, 6) },
      ],
      [{ atM: at(-20, 6), ownerSpot: spotId('D1'), count: 1 }],
    );
    const plan = {
      ...base,
      spots: {
        ...base.spots,
        [spotId('D1')]: { ...base.spots[spotId('D1')]!, acts: same('F1', {}) },
        [spotId('F1')]: {
          ...base.spots[spotId('F1')]!,
          acts: same('F2', { cue: { on: 'receive', spot: spotId('F1') } }),
        },
      },
    };
    const playable = playableOf(plan, rink, levelOf('pro'));
    if (playable.kind === 'unplayable') throw new Error('two passes cannot be played');
    const passes = drillLinesOf(plan, rink, { run: runDrill(playable) }).filter(line => line.kind === 'pass');
    expect(passes).toHaveLength(2);
    expect(passes[0]).not.toEqual({ ...passes[1], spot: passes[0]!.spot });
  });

  it('without a run but with a level, has the ticks of the speed profile: nearer together while speeding up', () => {
    const line = drillLinesOf(MIDDLE_FIRST, rink, { level: 'collegeWomen' }).find(
      each => each.kind === 'route' && each.spot === 'X2',
    );
    if (line?.kind !== 'route') throw new Error('no route');
    const gaps = line.ticks.slice(1).map((tick, index) => {
      const before = line.ticks[index]!;
      return Math.hypot(tick.x - before.x, tick.y - before.y);
    });
    expect(gaps.length).toBeGreaterThan(2);
    expect(gaps[1]!).toBeGreaterThan(gaps[0]!);
  });
});

describe('cues', () => {
  it('give one letter to what several wait for, and one full lozenge to where it fires', () => {
    const signs = cueSignsOf(MIDDLE_FIRST);
    const waits = signs.filter(sign => sign.way === 'waits');
    expect(waits.map(sign => `${sign.spot} ${sign.letter}`)).toEqual(['X1 a', 'D1 a', 'F3 b']);
    const fires = signs.filter(sign => sign.way === 'fires');
    expect(fires.map(sign => sign.letter).sort()).toEqual(['a', 'b', 'w']);
  });

  it('finds a free place beside the anchor, and the same one each time', () => {
    const obstacles = [{ at: { x: 0, y: -2 }, radius: 1 }];
    const find = () => freePlace({ x: 0, y: 0 }, [2], 0.7, obstacles, point => point.y < 1);
    expect(find()).toEqual(find());
    expect(Math.hypot(find().x, find().y + 2)).toBeGreaterThan(1.7);
    expect(find().y).toBeLessThan(1);
  });
});

describe('the key', () => {
  it('holds the marks used on the drawing and no others', () => {
    expect(usedMarks(MIDDLE_FIRST)).toEqual([
      'skating',
      'withPuck',
      'backward',
      'pivot',
      'stop',
      'pass',
      'shot',
      'fires',
      'waits',
      'whistle',
      'us',
      'them',
      'goalie',
      'coach',
      'line',
      'pucks',
    ]);
    expect(usedMarks()).toEqual([]);
  });

  it('says every entry with a word, inside its width', () => {
    const words = recordingOf(pen =>
      drawKey(pen, KEY_ENTRIES, { x: 0, y: 0, width: 400, lettering: 'cardKey', scale: 3 }),
    ).flatMap(call => (call.call === 'text' && call.lettering === 'cardKey' ? [call] : []));
    expect(words).toHaveLength(KEY_ENTRIES.length);
    for (const word of words) expect(word.x).toBeLessThan(400);
  });
});

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
    const line = drillLinesOf(crowd, rink, { run }).find(each => each.spot === spotId('D1'));
    if (line?.kind !== 'route') throw new Error('no way of the gap');
    const track = run.tracks.find(each => each.spot === spotId('D1'))!;
    const ends = run.events.find(event => event.kind === 'actEnds' && event.spot === spotId('D1'));
    const last = Math.min(run.sampleCount - 1, Math.round((ends?.timeS ?? run.durationS) * run.stepHz));
    expect(line.points.at(-1)).toEqual({ x: track.xM[last], y: -track.yM[last]! });
  });

  it('has in its key the mark the gap was played with', () => {
    expect(usedMarks(crowd)).toContain('gap');
    const played = drawnMarks([{ plan: crowd, run, rink }]);
    expect(played).not.toContain('gap');
    expect(played).toContain('backward');
    expect(drawnMarks([{ plan: crowd, rink }])).toEqual(usedMarks(crowd));
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
