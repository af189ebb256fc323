import type { ActKind, DrillPlan, Flow, PassWay } from '../drill/drill.ts';
import { isOurEnd, lineWords } from '../drill/line-words.ts';
import type { Lengths } from '../run/finding-sentence.ts';
import { feetOf } from '../units/feet.ts';
import type { SpotId } from '../units/ids.ts';
import type { Mend, MendSays, MendWhere } from './mend.ts';

/** A mend as one plain sentence that says what to do, and what becomes of the finding where it is only eased. Roles name the spots; lengths in metres or feet, speeds in m/s or ft/s, times in seconds. */
export const mendSentence = (mend: Mend, plan: DrillPlan, lengths: Lengths = 'metres'): string => {
  const sentence = changeSentence(mend.says, plan, lengths);
  if (mend.easesTo === undefined) return sentence;
  const { unit } = mend.finding;
  const isFeet = lengths === 'feet' && unit === 'm';
  const value = trimmed(isFeet ? feetOf(mend.easesTo) : mend.easesTo, 1);
  return `${sentence.slice(0, -1)}: ${value} ${isFeet ? 'ft' : unit} then, better if not enough.`;
};

const changeSentence = (says: MendSays, plan: DrillPlan, lengths: Lengths): string => {
  const who = roleOf(plan, says.spot);
  const { number } = says;
  const length = lengths === 'feet' ? `${trimmed(feetOf(number), 0)} ft` : `${trimmed(number, 1)} m`;
  const speed = lengths === 'feet' ? `${trimmed(feetOf(number), 0)} ft/s` : `${trimmed(number, 1)} m/s`;
  const seconds = `${trimmed(number, 2)} s`;
  switch (says.verb) {
    case 'endSooner':
      return `End the route of ${who} ${length} sooner.`;
    case 'endSoonerAndStop':
      return `End the route of ${who} ${length} sooner, with a stop.`;
    case 'stopAtEnd':
      return `Let ${who} stop at the end of the route.`;
    case 'skateAt':
      return `Let ${who} skate at ${number} % there.`;
    case 'startLater':
      return `${startOf(who, says.deed)} ${seconds} later.`;
    case 'startSooner':
      return `${startOf(who, says.deed)} ${seconds} sooner.`;
    case 'moveStart':
      return `Start ${who} ${length} nearer ${whereWords(says.where ?? 'middle', plan)}.`;
    case 'bend':
      return `Lead the route of ${who} ${length} nearer ${whereWords(says.where ?? 'middle', plan)} there.`;
    case 'bringIn':
      return `Bring ${who} onto the ice, ${length} from the boards.`;
    case 'passAt':
      return `Let ${who} pass at ${speed}.`;
    case 'passWay':
      return `Let ${who} ${WAY_WORDS[says.way ?? 'direct']}, at ${speed}.`;
    case 'cueLine':
      return `Let ${who} start when ${says.line ? lineWords(says.line, plan) : 'another line'} is crossed.`;
    case 'cueWithin':
      return `Let ${who} start from within ${length} of that place.`;
    case 'cueOff':
      return `Let ${who} go on without waiting for the cue.`;
    case 'cueWhistle':
      return `Start ${who} on the whistle.`;
    case 'holdFor':
      return `Let ${who} wait ${seconds} before that.`;
    case 'givePuck':
      return `Give ${who} a puck.`;
    case 'addPucks':
      return `Lay ${number} more ${number === 1 ? 'puck' : 'pucks'} beside ${who}.`;
    case 'movePucks':
      return `Lay the pucks beside ${who}.`;
    case 'fetch':
      return `Let ${who} pick up a puck first.`;
    case 'gapOf':
      return `Ask ${who} for a gap of ${length}.`;
    case 'gapInstead':
      return `Let ${who} keep a gap of ${length} instead of closing in.`;
    case 'goEvery':
      return `Start a rep every ${seconds}${says.ends ? `, ${ENDS_WORDS[says.ends]}` : ''}.`;
    case 'pauseFor':
      return `Leave ${seconds} between two reps.`;
    case 'ends':
      return `Run it ${ENDS_WORDS[says.ends ?? 'one']}.`;
    case 'morePucks':
      return `Lay out ${number} more ${number === 1 ? 'puck' : 'pucks'}.`;
    case 'turnLine':
      return `Turn the line of ${who} ${number === 180 ? 'half' : 'a quarter'} round.`;
  }
};

/** `ourEnd` is that of minusX; what people call it hangs on the end that we play towards. */
const whereWords = (where: MendWhere, plan: DrillPlan): string => {
  if (isOurEnd('minusX', plan) || where === 'middle' || where === 'boards') return WHERE_WORDS[where];
  return WHERE_WORDS[where === 'ourEnd' ? 'theirEnd' : 'ourEnd'];
};

const WHERE_WORDS: Readonly<Record<MendWhere, string>> = {
  ourEnd: 'our end',
  theirEnd: 'their end',
  middle: 'the middle',
  boards: 'the boards',
};

const ENDS_WORDS: Readonly<Record<Flow['ends'], string>> = {
  one: 'at one end',
  both: 'at both ends at once',
  byTurns: 'at the two ends by turns',
};

const WAY_WORDS: Readonly<Record<PassWay, string>> = {
  direct: 'pass straight',
  bank: 'pass off the boards',
  saucer: 'pass through the air',
  rim: 'rim the puck',
  drop: 'drop the puck',
};

const startOf = (who: string, deed: ActKind | undefined): string => {
  if (deed === undefined) return `Start ${who}`;
  if (deed === 'pass') return `Let ${who} pass`;
  return deed === 'shoot' ? `Let ${who} shoot` : `Let ${who} go on`;
};

/** 1.5, 2, 0.25: no zeros that say nothing. */
const trimmed = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

const roleOf = (plan: DrillPlan, spot: SpotId): string => plan.spots[spot]?.role ?? '?';
