import type { Cue } from '../drill/drill.ts';
import { LINE_IDS } from '../rink/lines.ts';
import type { MendCandidate, MendCase } from './mend.ts';
import { rounded, spotOf } from './mend-places.ts';
import { OTHER_CUE, SECOND_OF_DELAY } from './mend-rows.ts';

/**
 * Another cue for the act of the finding: a line that is really crossed, a wider circle, the whistle, or none, so that it follows the act
 * before. Empty when the act has no cue.
 */
export const cuesChanged = (of: MendCase): readonly MendCandidate[] => {
  const spot = spotOf(of, of.finding.spots[0]);
  const act = spot?.acts.find(({ id }) => id === of.finding.act);
  if (!spot || !act?.cue) return [];
  const { cue } = act;
  const path = ['spots', spot.id, 'acts', act.id, 'cue'];
  const says = { spot: spot.id, number: 0, unit: '' };
  const candidates: MendCandidate[] = [
    { says: { ...says, verb: 'cueOff' }, writes: [{ path, value: undefined }], size: OTHER_CUE.value + 1 },
  ];
  if (cue.on !== 'whistle') {
    candidates.push({
      says: { ...says, verb: 'cueWhistle' },
      writes: [{ path, value: { on: 'whistle' } }],
      size: OTHER_CUE.value + 2,
    });
  }
  if (cue.on === 'reaches') {
    for (const byM of [0.5, 1, 2, 3, 4, 6]) {
      const withinM = rounded(cue.withinM + byM);
      candidates.push({
        says: { ...says, verb: 'cueWithin', number: withinM, unit: 'm' },
        writes: [{ path: [...path, 'withinM'], value: withinM }],
        size: byM,
      });
    }
  }
  for (const line of linesCrossed(of, cue)) {
    const far = 'line' in cue ? Math.abs(LINE_IDS.indexOf(line) - LINE_IDS.indexOf(cue.line)) : 0;
    candidates.push({
      says: { ...says, verb: 'cueLine', line },
      writes: [{ path: [...path, 'line'], value: line }],
      // The next line is a smaller change than one farther off.
      size: OTHER_CUE.value * (0.5 + far / 4),
    });
  }
  return candidates;
};

const linesCrossed = (of: MendCase, cue: Cue) => {
  if (cue.on !== 'spotCrosses' && cue.on !== 'puckCrosses') return [];
  const crossed = of.run.events.flatMap(event =>
    event.kind === cue.on && (cue.on === 'puckCrosses' || ('spot' in event && event.spot === cue.spot))
      ? [event.line]
      : [],
  );
  return [...new Set(crossed)].filter(line => line !== cue.line);
};

/** The wait before the act of the finding made shorter. Empty when the act before is no wait. */
export const holdsLess = (of: MendCase): readonly MendCandidate[] => {
  const spot = spotOf(of, of.finding.spots[0]);
  const at = spot?.acts.findIndex(({ id }) => id === of.finding.act) ?? -1;
  const before = spot?.acts[at - 1];
  if (!spot || before?.kind !== 'hold') return [];
  return [0.25, 0.5, 1, 1.5, 2, 3]
    .filter(byS => byS <= before.seconds)
    .map(byS => ({
      says: { verb: 'holdFor', spot: spot.id, number: rounded(before.seconds - byS), unit: 's' },
      writes: [
        { path: ['spots', spot.id, 'acts', before.id, 'seconds'], value: rounded(before.seconds - byS) },
      ],
      size: byS * SECOND_OF_DELAY.value,
    }));
};
