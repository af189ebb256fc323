import type { FrozenScene } from '../film/frozen-scene.ts';
import { type Numbers, numbersIn } from '../film/numbers-in.ts';
import type { Estimate } from '../units/points.ts';
import { FULL_SIDE } from './full-side.ts';
import type { Judgement } from './judgement.ts';
import { isSeenWhole } from './seen-whole.ts';
import type { Standard } from './standard.ts';
import { oursOf } from './who.ts';
import { zoneAreaOf } from './zone-area.ts';

/** Judges how many of us are in a zone; see `judgeStandard`. */
export const judgeNumbers = (
  scene: FrozenScene,
  standard: Extract<Standard, { kind: 'numbers' }>,
): Judgement => {
  const everyone = oursOf(scene, () => true);
  const area = zoneAreaOf(scene.rink, standard.zone, scene.attacks);
  const ids = everyone.map(index => scene.skaters[index]!.id);
  const counted: Numbers =
    area === null
      ? { certainCount: ids.length, possibleCount: ids.length, certain: ids, unsure: [] }
      : numbersIn(scene, area, 'us');
  // Of those not placed anybody may stand there, in the picture too, unless somebody said that he does not.
  const placedInM = scene.allOfUsPlacedInM;
  const isNobodyElseThere =
    scene.isEveryonePlaced === true ||
    (placedInM !== undefined && (area === null || isSeenWhole(scene.rink, area, placedInM)));
  const unseen = isNobodyElseThere ? 0 : Math.max(0, FULL_SIDE.forwards + FULL_SIDE.defenders - ids.length);
  const needed = standard.atLeastCount;
  const answer =
    counted.certainCount >= needed ? 'yes' : counted.possibleCount + unseen < needed ? 'no' : 'cannotTell';
  const why =
    answer !== 'cannotTell' ? 'clear' : counted.possibleCount >= needed ? 'straddles' : 'notEveryonePlaced';
  return {
    answer,
    why,
    who: [...counted.certain, ...counted.unsure],
    whom: [standard.zone],
    reading: countEstimate(counted),
    threshold: needed,
    unit: '',
  };
};

/** A count with the sd of the unsure ones taken as in or out by even chance. */
const countEstimate = ({ certainCount, unsure }: Numbers): Estimate => ({
  value: certainCount + unsure.length / 2,
  sd: Math.sqrt(unsure.length) / 2,
});
