import type { Team } from '@icewright/book';
import type { FlowSetting } from '@icewright/engine';

/** What is asked of the block besides the drill itself. Not kept: the next practice has other people. */
export interface WhoIsHere {
  readonly skaters: number;
  readonly goalies: number;
  readonly beyondLines: FlowSetting['beyondLines'];
}

/** While nobody is on the roster a block is counted for a full team, and says so: common practice, no source. */
const FULL_TEAM = { skaters: 20, goalies: 2 } as const;

/** Everybody on the roster; a full team while nobody is. */
export function rosterOf(team: Pick<Team, 'skaters'>): WhoIsHere {
  if (isRosterEmpty(team)) return { ...FULL_TEAM, beyondLines: 'join' };
  const all = Object.values(team.skaters);
  const goalies = all.filter(one => one.position === 'G').length;
  return { skaters: all.length - goalies, goalies, beyondLines: 'join' };
}

export const isRosterEmpty = ({ skaters }: Pick<Team, 'skaters'>): boolean =>
  Object.keys(skaters).length === 0;
