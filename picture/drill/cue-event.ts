import type { Cue, IcePoint, Run, RunEvent, SpotId } from '@icewright/engine';
import { placeOnTrack, trackOf } from './run-reading.ts';

/** When and where a cue was first given in a rep; null when it never was, or when nothing on the ice gives it. */
export const cueEventOf = (run: Run, cue: Cue): { readonly timeS: number; readonly atM: IcePoint } | null => {
  if (cue.on === 'reaches') return reachedAt(run, cue);
  return run.events.find(event => givesCue(event, cue)) ?? null;
};

const givesCue = (event: RunEvent, cue: Cue): boolean => {
  switch (cue.on) {
    case 'receive':
    case 'shot':
    case 'caught':
      return event.kind === cue.on && event.spot === cue.spot;
    case 'losesPuck':
      return isLost(event, cue.spot);
    case 'spotCrosses':
      return event.kind === cue.on && event.spot === cue.spot && event.line === cue.line;
    case 'puckCrosses':
      return event.kind === cue.on && event.line === cue.line;
    default:
      return false;
  }
};

/** Cut off, stolen, left, or off the stick and nobody's. */
const isLost = (event: RunEvent, spot: SpotId): boolean => {
  if (event.kind === 'intercept' || event.kind === 'steal') return event.from === spot;
  return (event.kind === 'leave' || event.kind === 'loose') && event.spot === spot;
};

const reachedAt = (
  run: Run,
  cue: Extract<Cue, { on: 'reaches' }>,
): { readonly timeS: number; readonly atM: IcePoint } | null => {
  const track = trackOf(run, cue.spot);
  if (!track) return null;
  for (let sample = 0; sample < run.sampleCount; sample++) {
    const dx = track.xM[sample]! - cue.atM.xM;
    const dy = track.yM[sample]! - cue.atM.yM;
    if (dx * dx + dy * dy > cue.withinM * cue.withinM) continue;
    const timeS = sample / run.stepHz;
    return { timeS, atM: placeOnTrack(run, track, timeS) };
  }
  return null;
};
