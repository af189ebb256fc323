import { findBoardsTooFast } from './find-boards-too-fast.ts';
import { findPathsCross } from './find-paths-cross.ts';
import type { Finding, Track } from './run-result.ts';
import type { RunState } from './run-state.ts';

/** What can hurt somebody, read from the finished tracks. */
export const findingsOfTracks = (run: RunState, tracks: readonly Track[]): readonly Finding[] => [
  ...findPathsCross(tracks, run.actors, run.playable.level),
  ...tracks.flatMap((track, i) =>
    findBoardsTooFast(track, run.rink.boards, run.actors[i]!.model.stopDecelMps2, run.playable.level),
  ),
];
