import { describe, expect, it } from 'vitest';
import { at, drillOf, planOf, playableFrom, skate } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';

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
      const short = runDrill(playable, { trackFindings: false });
      expect({ ...short, findings: [] }).toEqual({ ...whole, findings: [] });
      for (const finding of short.findings) expect(whole.findings).toContainEqual(finding);
    }
    const kinds = runDrill(playableFrom(plan)).findings.map(({ kind }) => kind);
    expect(kinds).toContain('pathsCrossTooFast');
    expect(runDrill(playableFrom(plan), { trackFindings: false }).findings).toEqual([]);
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
