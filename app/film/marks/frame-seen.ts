import type { PlayerState } from '../player.ts';

/** The picture that is on screen, −1 while another stands in for it. */
export const frameSeen = (state: PlayerState): number =>
  state.playing || state.onVideo || state.shownFrame === state.frameIndex ? state.frameIndex : -1;
