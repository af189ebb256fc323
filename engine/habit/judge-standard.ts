import type { FrozenScene } from '../film/frozen-scene.ts';
import { judgeNumbers } from './judge-numbers.ts';
import { judgePlaces } from './judge-places.ts';
import type { Judgement } from './judgement.ts';
import type { Standard } from './standard.ts';

/**
 * Judges a standard on a frozen picture: `yes` or `no` only when the 95 % interval of what is measured lies on one
 * side of the threshold, else `cannotTell` with the reason. Among equals it is not guessed who is meant: when two
 * may be the first forward back (or the nearest, or the last), the answer stands only if it is the same for each.
 * "Every" needs all of them (the one furthest off decides), and a yes needs all of them placed; "any" needs one. Source:
 * normal intervals of the measured distances; the words of the standard are ours.
 */
export const judgeStandard = (scene: FrozenScene, standard: Standard): Judgement =>
  standard.kind === 'numbers' ? judgeNumbers(scene, standard) : judgePlaces(scene, standard);
