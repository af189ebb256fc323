import type { Flow } from './drill.ts';

/** Without a flow of its own a drill runs so: the next rep when the one before has ended, at one end, each back to the own line. */
export const USUAL_FLOW: Flow = { next: { on: 'end' }, ends: 'one', pauseS: 0, goesTo: {} };
