import { type Act, type ActId, levelOf, playableOf, rinkOf, runDrill } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { MIDDLE_FIRST } from '../scenes/middle-first.plan.ts';
import { planOf, spotId } from '../scenes/plan-of.ts';
import { cueSignsOf } from './cue-letters.ts';
import { drawDrillOnly } from './draw-drill.ts';
import { drillLinesOf } from './drill-lines.ts';
import { freePlace } from './free-place.ts';
import { drawnMarks } from './used-marks.ts';

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

  it('draws who skates to a pass without the puck until it comes', () => {
    const plan = planOf(
      [
        {
          role: 'F1',
          atM: at(18, -6),
          acts: [{ kind: 'pass', toSpot: spotId('F2'), way: 'direct', speedMps: 13 }],
        },
        {
          role: 'F2',
          atM: at(8, 10),
          acts: [{ kind: 'carry', throughM: [at(22, 3)], facing: 'forward', effortRatio: 0.8, stops: false }],
        },
      ],
      [{ atM: at(18, -6), ownerSpot: spotId('F1'), count: 1 }],
    );
    const playable = playableOf(plan, rink, levelOf('collegeWomen'));
    if (playable.kind === 'unplayable') throw new Error('a pass cannot be played');
    const run = runDrill(playable);
    const wayOf = (known: { run?: typeof run }) => {
      const line = drillLinesOf(plan, rink, known).find(each => each.kind === 'route');
      if (line?.kind !== 'route') throw new Error('no route');
      return line;
    };
    const taken = run.events.find(event => event.kind === 'receive' && event.spot === 'F2')!;
    const comes = wayOf({ run }).puckComesAt!;
    // The stick meets it: she herself is no farther from it than a stick and an arm.
    expect(Math.hypot(comes.x - taken.atM.xM, -comes.y - taken.atM.yM)).toBeLessThan(2);
    expect(Math.hypot(comes.x - 8, -comes.y - 10)).toBeGreaterThan(1);
    expect(wayOf({}).puckComesAt).toBeUndefined();
    const strokesOf = (known: { run?: typeof run }): number => {
      const calls = recordingOf(pen => drawDrillOnly(pen, plan, rink, known));
      const own = calls.findIndex(each => each.call === 'group' && each.data.spot === 'F2');
      const drawn = calls.slice(
        own,
        calls.findIndex((each, at) => at > own && each.call === 'end'),
      );
      return drawn.filter(each => each.call === 'path' && each.mark === 'skate').length;
    };
    // Plain, then the wave.
    expect(strokesOf({ run })).toBe(strokesOf({}) + 1);
    expect(drawnMarks([{ plan, run, rink }])).toContain('skating');
    expect(drawnMarks([{ plan, rink }])).not.toContain('skating');
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
