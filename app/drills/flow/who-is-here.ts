import type { Team } from '@icewright/book';
import type { FlowSetting } from '@icewright/engine';

/** What is asked of the block besides the drill itself. Not kept: the next practice has other people. */
export interface WhoIsHere {
  readonly skaters: number;
  readonly goalies: number;
  readonly beyondLines: FlowSetting['beyondLines'];
}

/** Everybody on the roster. */
export function rosterOf({ skaters }: Pick<Team, 'skaters'>): WhoIsHere {
  const all = Object.values(skaters);
  const goalies = all.filter(one => one.position === 'G').length;
  return { skaters: all.length - goalies, goalies, beyondLines: 'join' };
}
