import { inOrder, type MomentKey, type Team } from '@icewright/book';
import { useKeys } from '../../shell/keys.ts';
import { keyWords } from './own-keys.tsx';

/** Binds the coach's own keys while the film room stands. */
export const useOwnKeys = (team: Team, onPress: (key: MomentKey) => void, rest: boolean): void =>
  useKeys(
    (rest ? [] : inOrder(team.momentKeys)).map(([, one]) => ({
      keys: one.key,
      says: `keep ${one.beforeS} s before: ${keyWords(one, team)}`,
      act: () => onPress(one),
    })),
  );
