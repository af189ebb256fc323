import { useKeys } from '../shell/keys.ts';
import { NOTHING } from './edit/selection.ts';
import type { StudioState } from './use-studio.ts';

/** The keys of the whole page: they play the rep, and let go of everything. */
export function useStudioKeys(studio: StudioState, onLetGo: () => void): void {
  const { playback, hand } = studio;
  useKeys([
    { keys: 'Space', says: 'run, stop', act: playback.toggle },
    {
      keys: 'ArrowLeft',
      says: 'elsewhere: a tenth of a second back',
      act: () => playback.seek(playback.timeS - 0.1),
    },
    {
      keys: 'ArrowRight',
      says: 'elsewhere: a tenth of a second on',
      act: () => playback.seek(playback.timeS + 0.1),
    },
    { keys: 'Home', says: 'to the whistle', act: () => playback.seek(0) },
    {
      keys: 'Escape',
      says: 'let go of everything',
      act: () => {
        const wasHolding = hand.isHolding;
        hand.putBack();
        onLetGo();
        studio.say('');
        if (wasHolding) return;
        studio.select(NOTHING);
        studio.flag.choose(null);
      },
    },
  ]);
}
