import { type Finding, levelOf, playableOf, type Run, rinkOf, runDrill } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { PUCK_ACTS } from '../scenes/drill-puck-acts.ts';
import { MIDDLE_FIRST } from '../scenes/middle-first.plan.ts';
import { drawScore } from './draw-score.ts';
import { STAVE_LINE_PX, scoreLayout, staveY } from './score-layout.ts';

const rink = rinkOf({ preset: '200x85ft' });
const playable = playableOf(MIDDLE_FIRST, rink, levelOf('collegeWomen'));
if (playable.kind === 'unplayable') throw new Error('Middle first cannot be played');
const run = runDrill(playable);
const calls = recordingOf(pen => drawScore(pen, run, MIDDLE_FIRST, rink, { width: 920 }));

describe('the score', () => {
  it('has five lines for 0 to 8 m/s on a skater’s stave', () => {
    const stave = scoreLayout(MIDDLE_FIRST, run, { width: 920 }).staves.find(each => each.spot === 'F3')!;
    expect(staveY(stave, 0)).toBe(stave.zeroY);
    expect(staveY(stave, 8)).toBeCloseTo(stave.zeroY - 4 * STAVE_LINE_PX, 9);
  });

  it('writes speeds in the lengths of the team: 8 m/s are 26 ft/s', () => {
    const saidIn = (lengths: 'metres' | 'feet') =>
      recordingOf(pen => drawScore(pen, run, MIDDLE_FIRST, rink, { width: 920, lengths })).flatMap(call =>
        call.call === 'text' && / (m|ft)\/s$/.test(call.words) ? [call.words] : [],
      );
    expect(saidIn('metres')).toEqual(['8 m/s']);
    expect(saidIn('feet')).toEqual(['26 ft/s']);
  });

  it('puts a bar with its time where the puck crosses a line, and the time axis is linear', () => {
    const at = scoreLayout(MIDDLE_FIRST, run, { width: 920 }).xOf;
    const crossing = run.events.find(
      event => event.kind === 'puckCrosses' && event.line === 'blueLineMinusX',
    )!;
    const word = calls.find(call => call.call === 'text' && call.words === 'our blue line');
    expect(word?.call === 'text' && word.x).toBeCloseTo(at(crossing.timeS) + 4, 6);
    expect(at(2) - at(1)).toBeCloseTo(at(5) - at(4), 9);
  });

  it('lets no two words of the bars stand on each other, and leaves none out that has room above', () => {
    const texts = (lettering: string) =>
      calls.flatMap(call => (call.call === 'text' && call.lettering === lettering ? [call] : []));
    const words = texts('barWord');
    const figures = texts('barFigure');
    expect(words.length).toBeGreaterThan(2);
    for (const y of new Set(words.map(word => word.y))) {
      const starts = words.filter(word => word.y === y);
      const ends = figures.filter(figure => figure.y === y);
      ends.slice(0, -1).forEach(({ x }, index) => {
        expect(starts[index + 1]!.x).toBeGreaterThan(x + 12);
      });
    }
    // A pass just before the puck is over the line: two bars nearer to each other than their words are long.
    const close = {
      ...run,
      events: [
        { kind: 'puckCrosses', timeS: 2.7, line: 'blueLinePlusX', atM: { xM: 0, yM: 0 } },
        { kind: 'shot', timeS: 2.8, spot: 'X1', act: 'a', speedMps: 20, puck: 0, atM: { xM: 0, yM: 0 } },
      ],
    } as unknown as Run;
    const said = recordingOf(pen => drawScore(pen, close, MIDDLE_FIRST, rink, { width: 720 })).flatMap(
      call => (call.call === 'text' && /^bar/.test(call.lettering) ? [call.words] : []),
    );
    expect(said).toEqual(['their blue line', '2.7', 'shot', '2.8']);
  });

  it('ties every pass that was taken from stave to stave, and the shot to the goalie of that end', () => {
    const ties = calls.filter(call => call.call === 'path' && call.mark === 'scorePass');
    expect(ties).toHaveLength(run.events.filter(event => event.kind === 'receive').length);
    const goalie = scoreLayout(MIDDLE_FIRST, run, { width: 920 }).staves.find(stave => stave.spot === 'G')!;
    const puck = calls.find(call => call.call === 'circle' && call.mark === 'puck' && call.radius === 4);
    expect(puck?.call === 'circle' && puck.y).toBe(goalie.zeroY);
  });

  it('wears the marks of the ice: a wave for the carrier, arcs for the one who goes backward', () => {
    expect(calls.some(call => call.call === 'path' && call.mark === 'scoreBack')).toBe(true);
    expect(calls.some(call => call.call === 'path' && call.mark === 'scoreStop')).toBe(true);
  });

  it('ties each pass of a rep with several pucks to its own taker, and marks what is picked up', () => {
    const wide = playableOf(PUCK_ACTS, rink, levelOf('collegeWomen'));
    if (wide.kind === 'unplayable') throw new Error('puck acts cannot be played');
    const rep = runDrill(wide);
    const drawn = recordingOf(pen => drawScore(pen, rep, PUCK_ACTS, rink, { width: 920 }));
    const layout = scoreLayout(PUCK_ACTS, rep, { width: 920 });
    const taken = rep.events.filter(event => event.kind === 'receive');
    expect(taken.length).toBeGreaterThan(0);
    const ties = drawn.flatMap(call => (call.call === 'path' && call.mark === 'scorePass' ? [call] : []));
    expect(ties.length).toBeGreaterThanOrEqual(taken.length);
    const picked = rep.events.find(event => event.kind === 'pickUp')!;
    const dots = drawn.flatMap(call => (call.call === 'circle' && call.mark === 'puck' ? [call.x] : []));
    expect(dots.some(x => Math.abs(x - layout.xOf(picked.timeS)) < 0.01)).toBe(true);
  });

  it('flies the flags of the findings at their time, with the numbers they have on the ice', () => {
    const finding = {
      kind: 'bodiesTouch',
      weight: 'look',
      timeS: 3,
      atM: { xM: 0, yM: 0 },
      spots: ['F3'],
      value: 1,
      threshold: 1,
      unit: 'm',
      status: 'estimate',
      source: 'a test',
    } as unknown as Finding;
    const drawn = recordingOf(pen =>
      drawScore(pen, run, MIDDLE_FIRST, rink, {
        width: 920,
        findings: [finding, { ...finding, timeS: 3.02 }],
      }),
    );
    const numbers = drawn.flatMap(call =>
      call.call === 'text' && call.lettering === 'flagLook' ? [call] : [],
    );
    expect(numbers.map(({ words }) => words)).toEqual(['1', '2']);
  });

  it('keeps the seconds of the picture still when it is told how many there are', () => {
    const still = scoreLayout(MIDDLE_FIRST, run, { width: 920, spanS: 20 });
    expect(still.xOf(20)).toBe(still.right);
    expect(still.xOf(10) - still.xOf(0)).toBeCloseTo((still.right - still.left) / 2, 9);
  });
});
