import { findBoardsTooFast } from './find-boards-too-fast.ts';
import { findBodiesTouch } from './find-bodies-touch.ts';
import { findGapNotHeld } from './find-gap-not-held.ts';
import { findPathsCross } from './find-paths-cross.ts';
import { findThroughNet } from './find-through-net.ts';
import type { Finding, Track } from './run-result.ts';
import type { RunState } from './run-state.ts';

/** What can hurt somebody, and what does not hold, read from the finished tracks. */
export const findingsOfTracks = (run: RunState, tracks: readonly Track[]): readonly Finding[] => [
  ...findPathsCross(tracks, run.actors, run.playable.level),
  ...findBodiesTouch(tracks, run.actors),
  ...findGapNotHeld(tracks, run.actors, run.rink.layout.blueLineCentreXM),
  ...findThroughNet(run, tracks),
  ...tracks.flatMap((track, i) =>
    findBoardsTooFast(track, run.rink.boards, run.actors[i]!.model.stopDecelMps2, run.playable.level),
  ),
];
