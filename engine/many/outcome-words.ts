import type { Cue, DrillPlan } from '../drill/drill.ts';
import { lineWords } from '../drill/line-words.ts';
import type { SpotId } from '../units/ids.ts';
import type { Outcome } from './outcome.ts';

/** A wanted outcome in words: a sentence without its line, the words before the line, and the three ways it can come out. */
export interface OutcomeWords {
  readonly want: string;
  /** Empty when the outcome has no line. */
  readonly beforeLine: string;
  readonly yes: string;
  readonly other: string;
  readonly no: string;
  /** Why a rep may not come to where it is asked. */
  readonly unasked: string;
  /** Over the strip that shows where; undefined where a place says nothing. */
  readonly where?: string;
}

/** The words of an outcome; a spot or act that is not in the plan is called "?". */
export const outcomeWords = (outcome: Outcome, plan: DrillPlan): OutcomeWords => {
  switch (outcome.kind) {
    case 'caughtBefore': {
      const by = outcome.by === undefined ? 'somebody' : roleOf(plan, outcome.by);
      return {
        want: `${by} catches ${roleOf(plan, outcome.spot)}`,
        beforeLine: 'before',
        yes: 'in time',
        other: 'later',
        no: 'not',
        unasked: 'nobody is chased',
        where: `Where ${roleOf(plan, outcome.spot)} was caught`,
      };
    }
    case 'levelWithPuck': {
      const who = roleOf(plan, outcome.spot);
      return {
        want: `${who} is level with the puck`,
        beforeLine: 'when it crosses',
        yes: 'in time',
        other: isShotIn(plan) ? 'later, before a shot' : 'later',
        no: 'not',
        unasked: 'the puck does not get there',
        where: `Where ${who} got level with the puck`,
      };
    }
    case 'puckRegained':
      return {
        want: outcome.side === 'us' ? 'we win the puck' : 'they win the puck',
        beforeLine: 'before it is over',
        yes: 'in time',
        other: 'later',
        no: 'not',
        unasked: 'the other side never has it',
        where: 'Where the puck was won',
      };
    case 'passArrives': {
      const act = plan.spots[outcome.spot]?.acts[outcome.act];
      const to = act?.kind === 'pass' ? roleOf(plan, act.toSpot) : '?';
      return {
        want: `the pass from ${roleOf(plan, outcome.spot)} arrives at ${to}`,
        beforeLine: '',
        yes: 'arrives',
        other: 'cut off',
        no: 'goes by',
        unasked: 'the pass is not made',
        where: 'Where the pass ended',
      };
    }
    case 'standardHeld':
      return {
        want: 'the habit is held',
        beforeLine: '',
        yes: 'held',
        other: 'not held',
        no: '',
        unasked: 'its moment does not come, or it cannot be told',
        where: 'Where who decides it was',
      };
    case 'cueInTime': {
      const cue = plan.spots[outcome.spot]?.acts[outcome.act]?.cue;
      return {
        want: `${roleOf(plan, outcome.spot)} is ready when ${cueWords(cue, plan)}`,
        beforeLine: '',
        yes: 'ready',
        other: 'the cue comes first',
        no: 'no cue',
        unasked: 'the act is not there',
      };
    }
  }
};

const isShotIn = (plan: DrillPlan): boolean =>
  Object.values(plan.spots).some(spot => Object.values(spot.acts).some(act => act.kind === 'shoot'));

const roleOf = (plan: DrillPlan, spot: SpotId): string => plan.spots[spot]?.role ?? '?';

const cueWords = (cue: Cue | undefined, plan: DrillPlan): string => {
  switch (cue?.on) {
    case 'receive':
      return `${roleOf(plan, cue.spot)} has the puck`;
    case 'shot':
      return `${roleOf(plan, cue.spot)} shoots`;
    case 'losesPuck':
      return `${roleOf(plan, cue.spot)} loses the puck`;
    case 'caught':
      return `${roleOf(plan, cue.spot)} is caught`;
    case 'spotCrosses':
      return `${roleOf(plan, cue.spot)} crosses ${lineWords(cue.line, plan)}`;
    case 'reaches':
      return `${roleOf(plan, cue.spot)} is there`;
    case 'puckCrosses':
      return `the puck crosses ${lineWords(cue.line, plan)}`;
    default:
      return 'the act is due';
  }
};
