import { findPeople, rinkOf } from '@icewright/engine';
import type { PeopleAsk, PeopleSaid } from './people-messages.ts';

/** Looks for people in one picture; whoever no longer wants them ends the worker. */
addEventListener('message', ({ data }: MessageEvent<PeopleAsk>) => {
  const say = (said: PeopleSaid): void => postMessage(said);
  try {
    const found = findPeople(data, data.fit, rinkOf(data.sheet), data.known);
    say('kind' in found ? { kind: found.reason } : { kind: 'found', people: found });
  } catch (error) {
    say({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
  }
});
