import { levelOf, manyRun, playableOf, rinkOf, runMemory, talliedAt } from '@icewright/engine';
import { atTurn } from '../people/people-of.ts';
import type { ManyAnswered, ManyAsked, ManyDrill, ManyPart } from './many-messages.ts';

// Plays reps on a core of its own. One message, one short chunk: a newer drill never waits for long.

const memory = runMemory();
let drillId = -1;
let drill: ManyDrill | undefined;

self.addEventListener('message', ({ data }: MessageEvent<ManyAsked>) => {
  self.postMessage(answerTo(data));
});

const answerTo = (asked: ManyAsked): ManyAnswered => {
  try {
    if (asked.drill) {
      drill = asked.drill;
      drillId = asked.drillId;
    }
    if (!drill || drillId !== asked.drillId) throw new Error(`drill ${asked.drillId} was never told`);
    return { kind: 'part', part: partOf(drill, asked) };
  } catch (error) {
    return { kind: 'failed', why: error instanceof Error ? error.message : String(error) };
  }
};

const partOf = ({ plan, rink, level, seed, people = {} }: ManyDrill, { chunk }: ManyAsked): ManyPart => {
  const { fromRep, repCount } = chunk;
  const models = atTurn(people, fromRep);
  if (chunk.kind === 'successes') {
    const { free, outcome, value } = chunk;
    const tunable = { plan, rink: rinkOf(rink), level: levelOf(level), free, outcome, seed, models };
    return talliedAt(tunable, value, fromRep, repCount, memory);
  }
  const playable = playableOf(plan, rinkOf(rink), levelOf(level));
  if (playable.kind === 'unplayable') throw new Error(`a drill with ${playable.issues.length} issues`);
  return manyRun(playable, { seed, fromRep, repCount, outcomes: chunk.outcomes, memory, models });
};
