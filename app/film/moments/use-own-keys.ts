import { inOrder, type MomentKey, type Team } from '@icewright/book';
import { useKeys } from '../../shell/keys.ts';
import { isMarking, keyWords } from './key-words.ts';

/** Binds the coach's own keys while the film room stands; those without a habit only where somebody is told how the game stands. */
export const useOwnKeys = (
  team: Team,
  onPress: (key: MomentKey) => void,
  { rest, withStands }: { readonly rest: boolean; readonly withStands: boolean },
): void =>
  useKeys(
    (rest ? [] : inOrder(team.momentKeys))
      .filter(([, one]) => withStands || isMarking(one))
      .map(([, one]) => ({
        keys: one.key,
        says: isMarking(one) ? `keep ${one.beforeS} s before: ${keyWords(one, team)}` : keyWords(one, team),
        act: () => onPress(one),
      })),
  );
