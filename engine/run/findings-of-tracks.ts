import { findBoardsTooFast } from './find-boards-too-fast.ts';
import { findBodiesTouch } from './find-bodies-touch.ts';
import { findContact } from './find-contact.ts';
import { findGapNotHeld } from './find-gap-not-held.ts';
import { findPathsCross } from './find-paths-cross.ts';
import { findPuckLeft } from './find-puck-left.ts';
import { findShotAcross } from './find-shot-across.ts';
import { findThroughNet } from './find-through-net.ts';
import type { Finding, PuckTrack, Track } from './run-result.ts';
import type { RunState } from './run-state.ts';

/**
 * What can hurt somebody, and what does not hold, read from the finished tracks of a rep: see each `find…`. `before`: what was noted while the
 * rep was played. In no order.
 */
export const findingsOfTracks = (
  run: RunState,
  tracks: readonly Track[],
  pucks: readonly PuckTrack[],
  before: readonly Finding[],
): readonly Finding[] => [
  ...findPathsCross(tracks, run.actors, run.playable.level, run.recorder.mostStepsM),
  ...findBodiesTouch(tracks, run.actors, run.recorder.mostStepsM),
  ...findGapNotHeld(tracks, run.actors, run.rink.layout.blueLineCentreXM),
  ...findThroughNet(run, tracks),
  ...tracks.flatMap((track, i) =>
    findBoardsTooFast(track, run.rink.boards, run.actors[i]!.model.stopDecelMps2, run.playable.level),
  ),
  ...findShotAcross(run, tracks, pucks, run.events),
  ...findContact(run, tracks, run.events),
  ...findPuckLeft(
    run.playable.spots,
    run.actors.map(({ model }) => model.lungeReachM),
    tracks,
    pucks,
    before,
  ),
];
