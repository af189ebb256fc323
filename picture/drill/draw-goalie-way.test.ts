import { levelOf, playableOf, rinkOf, runDrill, type SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { sheetPoint } from '../ice/sheet-point.ts';
import { recordingOf } from '../pen/recording-pen.ts';
import { MIDDLE_FIRST } from '../scenes/middle-first.plan.ts';
import { drawScore } from '../score/draw-score.ts';
import { scoreLayout } from '../score/score-layout.ts';
import { drawDrillOnly } from './draw-drill.ts';

const rink = rinkOf({ preset: '200x85ft' });
const [goalieId] = Object.entries(MIDDLE_FIRST.spots).find(([, { kind }]) => kind === 'goalie')! as [
  SpotId,
  unknown,
];
const playable = playableOf(MIDDLE_FIRST, rink, levelOf('collegeWomen'));
if (playable.kind === 'unplayable') throw new Error('Middle first cannot be played');
const run = runDrill(playable);
const track = run.tracks.find(({ spot }) => spot === goalieId)!;
const drawn = (setting: Parameters<typeof drawDrillOnly>[3]) =>
  recordingOf(pen => drawDrillOnly(pen, MIDDLE_FIRST, rink, setting)).flatMap(call =>
    call.call === 'circle' && call.mark === 'goalieLast' ? [call] : [],
  );

describe('a goalie who goes by the puck', () => {
  it('has her way drawn in the studio, to where she is at the end of the rep, and elsewhere not', () => {
    const last = sheetPoint({ xM: track.xM.at(-1)!, yM: track.yM.at(-1)! });
    const [mark] = drawn({ run, goalieWays: true });
    expect(mark?.x).toBeCloseTo(last.x, 6);
    expect(mark?.y).toBeCloseTo(last.y, 6);
    expect(drawn({ run })).toEqual([]);
    expect(drawn({ goalieWays: true })).toEqual([]);
  });

  it('has none where she stayed', () => {
    const still = { ...track, xM: track.xM.map(() => track.xM[0]!), yM: track.yM.map(() => track.yM[0]!) };
    const tracks = run.tracks.map(each => (each === track ? still : each));
    expect(drawn({ run: { ...run, tracks }, goalieWays: true })).toEqual([]);
  });

  it('has her place between the posts on her stave of the score, over time', () => {
    const size = { width: 920 };
    const { staves, xOf } = scoreLayout(MIDDLE_FIRST, run, size);
    const stave = staves.find(({ spot }) => spot === goalieId)!;
    const [line, none] = recordingOf(pen => drawScore(pen, run, MIDDLE_FIRST, rink, size)).flatMap(call =>
      call.call === 'path' && call.mark === 'scoreGoalie' ? [call.outline] : [],
    );
    expect(none).toBeUndefined();
    const points = [...line!.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    );
    const [x, y] = points.at(-1)!;
    // Up on the stave is up on the sheet, and half the net is nine pixels.
    const postM = rink.layout.postCentreYM;
    expect(y).toBeCloseTo(stave.zeroY - (9 * track.yM.at(-1)!) / postM, 1);
    expect(x).toBeCloseTo(xOf((run.sampleCount - 1) / run.stepHz), 1);
    expect(Math.max(...points.map(([, each]) => Math.abs(each - stave.zeroY)))).toBeGreaterThan(2);
  });
});
