import { describe, expect, it } from 'vitest';
import { at, drillOf, named, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import { runMemory } from './recorder.ts';
import { runDrill } from './run-drill.ts';
import { inText } from './run-in-text.reference.ts';
import { xMInSample } from './track-columns.ts';

describe('a run without the findings of its tracks', () => {
  it('has the same tracks and events, and of the findings those noted on the way', () => {
    // Two who skate at each other: the tracks have something to say.
    const plan = planOf([
      { role: 'F1', atM: at(-15, 0), acts: [skate([at(15, 0.4)])] },
      { role: 'D1', side: 'them', atM: at(15, 0), acts: [skate([at(-15, -0.2)])] },
    ]);
    for (const one of [plan, drillOf()]) {
      const playable = playableFrom(one);
      const whole = runDrill(playable);
      const short = runDrill(playable, { isShown: false });
      expect({ ...short, findings: [] }).toEqual({ ...whole, findings: [] });
      for (const finding of short.findings) expect(whole.findings).toContainEqual(finding);
    }
    const kinds = runDrill(playableFrom(plan)).findings.map(({ kind }) => kind);
    expect(kinds).toContain('pathsCrossTooFast');
    expect(runDrill(playableFrom(plan), { isShown: false }).findings).toEqual([]);
  });
});

describe('a memory that runs share', () => {
  it('gives the same run whatever was written into it before, with more spots or fewer, longer or shorter', () => {
    const skaters = (count: number, seconds: number) =>
      playableFrom(
        planOf(
          Array.from({ length: count }, (_, i) => ({
            role: `F${i}`,
            atM: at(-20 + i, -8 + 2 * i),
            puck: i === 0,
            acts: [skate([at(15, -6 + 2 * i), at(-10, 5 - i)]), { kind: 'hold', seconds } as const],
          })),
        ),
      );
    for (const isShown of [true, false]) {
      const memory = runMemory();
      // The fifteen seconds need more room than there is at first.
      for (const [count, seconds] of [
        [3, 1],
        [6, 15],
        [2, 1],
        [6, 1],
        [4, 15],
        [8, 1],
        [3, 1],
      ] as const) {
        const playable = skaters(count, seconds);
        const shared = inText(runDrill(playable, { isShown, memory }));
        expect(shared).toEqual(inText(runDrill(playable, { isShown })));
      }
    }
  });
});

describe('the facing of a track', () => {
  it('is the direction of the way, to the last digits, all round two circles either way', () => {
    for (const turn of [1, -1]) {
      const throughM = Array.from({ length: 24 }, (_, i) => {
        const rad = turn * (Math.PI / 6) * (i + 1);
        return at(8 * Math.cos(rad), 8 * Math.sin(rad));
      });
      const run = runDrill(
        playableFrom(
          planOf([{ role: 'F1', atM: at(8, 0), facingRad: (turn * Math.PI) / 2, acts: [skate(throughM)] }]),
        ),
      );
      const { facingRad, xMps, yMps, actIndex } = run.tracks[0]!;
      let most = 0;
      let checked = 0;
      for (let i = 60; i < run.sampleCount && actIndex[i] === 0; i++) {
        most = Math.max(most, Math.abs(facingRad[i]! - Math.atan2(yMps[i]!, xMps[i]!)));
        checked++;
      }
      expect(checked).toBeGreaterThan(1000);
      expect(most).toBeLessThan(1e-13);
    }
  });
});

describe('a run in long strides', () => {
  it('samples a drawn route and a pass where a run in short ones has them', () => {
    const playable = playableFrom(
      planOf([
        {
          role: 'A',
          atM: at(-20, -6),
          puck: true,
          acts: [
            {
              kind: 'pass',
              toSpot: named('B'),
              way: 'direct',
              speedMps: 14,
              cue: { on: 'after', seconds: 1 },
            },
            skate([at(-5, -9), at(10, -2)], { stops: true }),
          ],
        },
        { role: 'B', atM: at(-18, 6), acts: [skate([at(-4, 9), at(6, 3), at(20, 5)])] },
      ]),
    );
    const short = runDrill(playable);
    const long = runDrill(playable, { strideHz: 40 });
    expect(long.events.map(({ kind }) => kind)).toEqual(short.events.map(({ kind }) => kind));
    for (const [i, { timeS }] of long.events.entries()) expect(timeS).toBeCloseTo(short.events[i]!.timeS, 8);
    // It may go on to the end of its last stride.
    expect(long.sampleCount - short.sampleCount).toBeLessThan(3);
    short.tracks.forEach((track, i) => {
      for (let at = 0; at < short.sampleCount; at++) {
        expect(Math.abs(track.xM[at]! - long.tracks[i]!.xM[at]!)).toBeLessThan(2e-3);
        expect(Math.abs(track.yM[at]! - long.tracks[i]!.yM[at]!)).toBeLessThan(2e-3);
        expect(Math.abs(track.xMps[at]! - long.tracks[i]!.xMps[at]!)).toBeLessThan(0.1);
      }
    });
    for (let at = 0; at < short.sampleCount; at++) {
      expect(Math.abs(short.pucks[0]!.xM[at]! - long.pucks[0]!.xM[at]!)).toBeLessThan(0.02);
      expect(Math.abs(short.pucks[0]!.yM[at]! - long.pucks[0]!.yM[at]!)).toBeLessThan(0.02);
    }
  });

  it('has the same samples whether they are written at once or when they are read', () => {
    for (const strideHz of [40, 30]) {
      const playable = playableFrom(drillOf());
      const atOnce = runDrill(playable, { strideHz });
      const whenRead = runDrill(playable, { strideHz, isShown: false });
      // One sample alone is read before the column it stands in.
      const single = whenRead.tracks.map(track => xMInSample(track, 101));
      expect(single).toEqual(atOnce.tracks.map(track => track.xM[101]));
      expect(inText({ ...whenRead, findings: [] })).toEqual(inText({ ...atOnce, findings: [] }));
      expect(whenRead.tracks.map(track => xMInSample(track, 102))).toEqual(
        atOnce.tracks.map(track => track.xM[102]),
      );
    }
  });
});
