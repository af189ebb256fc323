import type { Drill, Game, Meeting, Practice, Team } from '@icewright/book';
import { backOutAlong } from './drills/back-out-along.ts';
import { drillOf } from './drills/drill-of.ts';
import { dropAndFollow } from './drills/drop-and-follow.ts';
import { fiveTogether } from './drills/five-together.ts';
import { fourCorners } from './drills/four-corners.ts';
import { gapLadder } from './drills/gap-ladder.ts';
import { loseItWinIt } from './drills/lose-it-win-it.ts';
import { loseItWinItHalfIce } from './drills/lose-it-win-it-half-ice.ts';
import { middleFirst } from './drills/middle-first.ts';
import { offTheBoards } from './drills/off-the-boards.ts';
import { offTheWall } from './drills/off-the-wall.ts';
import { overTheStick } from './drills/over-the-stick.ts';
import { pastTheStick } from './drills/past-the-stick.ts';
import { roundAndStop } from './drills/round-and-stop.ts';
import { secondPuck } from './drills/second-puck.ts';
import { shotThenHome } from './drills/shot-then-home.ts';
import { shotThenHomeAgainstTwo } from './drills/shot-then-home-against-two.ts';
import { startWithThePass } from './drills/start-with-the-pass.ts';
import { threeOnTheHeels } from './drills/three-on-the-heels.ts';
import { upAndBack } from './drills/up-and-back.ts';
import { winItSmallNets } from './drills/win-it-small-nets.ts';
import { type DemoFilm, huntGame, joinGame } from './games.ts';
import { demoMeeting } from './meetings.ts';
import { demoPractices } from './practices.ts';
import { demoTeam } from './team.ts';

/** One document of the demo as plain values, with the id it is kept under. */
export interface DemoValue {
  readonly id: string;
  readonly value: Team | Game | Drill | Practice | Meeting;
}

export const DEMO_TEAM_ID = 'team-lanterns';

const DRILLS = {
  'drill-middle-first': middleFirst,
  'drill-three-on-the-heels': threeOnTheHeels,
  'drill-gap-ladder': gapLadder,
  'drill-off-the-boards': offTheBoards,
  'drill-start-with-the-pass': startWithThePass,
  'drill-second-puck': secondPuck,
  'drill-four-corners': fourCorners,
  'drill-five-together': fiveTogether,
  'drill-lose-it-win-it': loseItWinIt,
  'drill-lose-it-win-it-half-ice': loseItWinItHalfIce,
  'drill-off-the-wall': offTheWall,
  'drill-shot-then-home': shotThenHome,
  'drill-shot-then-home-against-two': shotThenHomeAgainstTwo,
  'drill-up-and-back': upAndBack,
  'drill-over-the-stick': overTheStick,
  'drill-past-the-stick': pastTheStick,
  'drill-drop-and-follow': dropAndFollow,
  'drill-back-out-along': backOutAlong,
  'drill-round-and-stop': roundAndStop,
  'drill-win-it-small-nets': winItSmallNets,
};

/**
 * The whole demo: a team, two games on film, twenty drills, three practices, a meeting.
 * Days lie around `today` (`2026-11-25`), so that the demo always has a next practice; `at` is an instant in UTC.
 */
export function demoValues(
  films: { readonly hunt: DemoFilm; readonly join: DemoFilm },
  now: { readonly today: string; readonly at: string },
): DemoValue[] {
  const day = (offset: number): string => dayAfter(now.today, offset);
  const games = {
    'game-hunt': huntGame(films.hunt, day(-18), now.at),
    'game-join': joinGame(films.join, day(-4), now.at),
  };
  const drills = Object.fromEntries(Object.entries(DRILLS).map(([id, said]) => [id, drillOf(said, now.at)]));
  const practices = demoPractices({ first: day(-15), second: day(-8), next: day(1) });
  const meetings = { 'meeting-together': demoMeeting(day(-3)) };
  const contents = {
    ...entries(games, value => ({
      kind: 'game',
      title: `Quillback Bay, ${value.place === 'home' ? 'at home' : 'away'}`,
      day: value.day,
    })),
    ...entries(drills, value => ({ kind: 'drill', title: value.title, day: day(-20) })),
    ...entries(practices, value => ({ kind: 'practice', title: value.title, day: value.day })),
    ...entries(meetings, value => ({ kind: 'meeting', title: value.title, day: value.day })),
  };
  const team = demoTeam({ at: now.at, contents: contents as Team['contents'] });
  return [
    { id: DEMO_TEAM_ID, value: team },
    ...Object.entries({ ...games, ...drills, ...practices, ...meetings }).map(([id, value]) => ({
      id,
      value,
    })),
  ];
}

function entries<Value>(
  of: Record<string, Value>,
  entryOf: (value: Value) => object,
): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(of).map(([id, value]) => [id, { ...entryOf(value), removed: false }]),
  );
}

function dayAfter(today: string, days: number): string {
  const then = new Date(`${today}T12:00:00Z`);
  then.setUTCDate(then.getUTCDate() + days);
  return then.toISOString().slice(0, 10);
}
