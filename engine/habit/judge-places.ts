import type { FrozenScene } from '../film/frozen-scene.ts';
import { type Group, groupOf } from './group-of.ts';
import type { Judgement, JudgeReason } from './judgement.ts';
import { agreed, idOf, type PlaceStandard, verdictOf } from './place-verdict.ts';
import type { StandardAnswer, Whom } from './standard.ts';
import { carrierIndex, theirsOf } from './who.ts';

/** Judges where one, every or any of us is; see `judgeStandard`. */
export const judgePlaces = (scene: FrozenScene, standard: PlaceStandard): Judgement => {
  const base = { threshold: standard.withinM, unit: 'm' as const };
  const nothing = (why: JudgeReason): Judgement => ({
    ...base,
    answer: 'cannotTell',
    why,
    who: [],
    whom: [],
  });
  const lacking = whatLacks(scene, standard.whom);
  if (lacking !== null) return nothing(lacking);
  const group = groupOf(scene, standard.who, standard.whom);
  if (group === 'noCarrier') return nothing('noCarrier');
  if (group.places.length === 0) return nothing(group.lacksRoles ? 'roleNotSaid' : 'nobodyOfWho');

  const verdicts = group.places.map(place => verdictOf(scene, standard, place));
  const { answer, why } = combined(
    group.rule,
    verdicts.map(verdict => verdict.answer),
    group,
  );
  // First those who gave the answer, then the furthest off (for "any" the nearest).
  const sign = group.rule === 'any' ? 1 : -1;
  const ordered = verdicts
    .map((verdict, index) => ({ verdict, place: group.places[index]! }))
    .sort(
      ({ verdict: a }, { verdict: b }) =>
        Number(b.answer === answer) - Number(a.answer === answer) ||
        sign * (a.reading.value - b.reading.value),
    );
  const { verdict: deciding } = ordered[0]!;
  const notMeant = wrongHands(scene, standard);
  return {
    ...base,
    answer: notMeant === null ? answer : 'cannotTell',
    why: notMeant ?? (why === 'straddles' ? deciding.why : why),
    who: ordered.map(({ place }) => idOf(scene, place)),
    whom: deciding.whom,
    reading: deciding.reading,
  };
};

const whatLacks = (scene: FrozenScene, whom: Whom): JudgeReason | null => {
  if (whom === 'puck' && scene.puck === undefined) return 'noPuck';
  if (whom === 'carrier' && carrierIndex(scene) < 0) return scene.puck === undefined ? 'noPuck' : 'noCarrier';
  if ((whom === 'nearestOfThem' || whom === 'lastOfThem') && theirsOf(scene).length === 0)
    return 'nobodyOfThem';
  return null;
};

/**
 * Coming back is asked while they have the puck, joining the rush while we have it; of our carrier anything may be asked. Where it is not said who has it, the standard is
 * judged: the person who froze the picture chose it for the habit.
 */
const wrongHands = (scene: FrozenScene, { kind, who }: PlaceStandard): JudgeReason | null => {
  if (who === 'puckCarrier') return null;
  const side = scene.skaters[carrierIndex(scene)]?.side;
  if (kind === 'levelWith' && side === 'us') return 'puckIsOurs';
  if (kind === 'upWith' && side === 'them') return 'puckIsTheirs';
  return null;
};

const combined = (
  rule: Group['rule'],
  answers: readonly StandardAnswer[],
  { isWhole, lacksRoles = false }: Group,
): { answer: StandardAnswer; why: JudgeReason } => {
  const clear = (answer: StandardAnswer) => ({ answer, why: 'clear' as const });
  const missing: { answer: StandardAnswer; why: JudgeReason } = {
    answer: 'cannotTell',
    why: lacksRoles ? 'roleNotSaid' : 'notEveryonePlaced',
  };
  if (rule === 'one') {
    const answer = agreed(answers);
    if (answer !== 'cannotTell') return clear(answer);
    return { answer, why: answers.includes('cannotTell') ? 'straddles' : 'whoIsUnsure' };
  }
  // What settles it at once, and what all must be for the other answer.
  const [settles, other] = rule === 'every' ? (['no', 'yes'] as const) : (['yes', 'no'] as const);
  if (answers.includes(settles)) return clear(settles);
  if (answers.includes('cannotTell')) return { answer: 'cannotTell', why: 'straddles' };
  return isWhole ? clear(other) : missing;
};
