import type { DrillPlan, SmallGame } from '../drill/drill.ts';
import type { SpotId } from '../units/ids.ts';
import { type None, noneBecause } from '../units/none.ts';
import { GAME_CHANGE_S } from './flow-rows.ts';
import { playBlock } from './play-block.ts';
import type { RepFacts, SpotFacts } from './rep-facts.ts';

/** A small game over its minutes. Seconds. */
export interface GameFlow {
  /** Skaters of each side, as those here are shared by how many play at once. */
  readonly usCount: number;
  readonly themCount: number;
  readonly goCount: number;
  /** Goes of those who have the fewest and the most, and the mean. */
  readonly fewestGoes: number;
  readonly mostGoes: number;
  readonly meanGoes: number;
  /** Between two goes on the mean; null when nobody goes twice. */
  readonly restS: number | null;
  /** Rest for each second of play over the minutes; null when nobody plays. */
  readonly restRatio: number | null;
  /** Skaters that are missing in each go. */
  readonly shortCount: number;
}

export type NoGame = 'nobodyPlays' | 'goLongerThanBlock';

/**
 * A small area game over its minutes (> 0), with so many skaters (a whole number ≥ 0): goes of `shiftS`, a change between
 * them, each side in turn. Seconds. None when it is for nobody, nobody is here, or one go does not fit. By the same discrete events as `flowOf`.
 */
export const gameFlowOf = (game: SmallGame, skaters: number, minutes: number): GameFlow | None<NoGame> => {
  const atOnce = game.usCount + game.themCount;
  if (atOnce === 0 || skaters < 1) return noneBecause('nobodyPlays');
  if (game.shiftS > minutes * 60) return noneBecause('goLongerThanBlock');
  const usCount = Math.round((skaters * game.usCount) / atOnce);
  const themCount = skaters - usCount;
  const counts = [...dealt(usCount, game.usCount), ...dealt(themCount, game.themCount)];
  const block = playBlock(
    repOf(game, usCount, themCount),
    counts,
    { afterS: game.shiftS + GAME_CHANGE_S.value, ends: 'one' },
    minutes * 60,
  );
  const goes = block.ways.map(way => way.goCount);
  const sum = goes.reduce((all, one) => all + one, 0);
  const rests = block.queues.reduce((all, queue) => all + queue.restCount, 0);
  const restSumS = block.queues.reduce((all, queue) => all + queue.restSumS, 0);
  const playS = (sum * game.shiftS) / skaters;
  return {
    usCount,
    themCount,
    goCount: block.repCount,
    fewestGoes: Math.min(...goes),
    mostGoes: Math.max(...goes),
    meanGoes: sum / skaters,
    restS: rests === 0 ? null : restSumS / rests,
    restRatio: playS > 0 ? (minutes * 60 - playS) / playS : null,
    shortCount: Math.max(0, game.usCount - usCount) + Math.max(0, game.themCount - themCount),
  };
};

/**
 * How many skaters each game has, by its id: those who have no place in the drawn lines, shared by how many play at once. Without
 * drawn skaters that is everybody. `skaters` is a whole number ≥ 0. Empty without games.
 */
export const skatersOfGames = (plan: DrillPlan, skaters: number): Readonly<Record<string, number>> => {
  const games = Object.entries(plan.games ?? {}).sort(([, a], [, b]) => a.rank - b.rank);
  const inLines = Object.values(plan.spots)
    .filter(spot => spot.kind === 'skater')
    .reduce((sum, spot) => sum + 1 + spot.waitingCount, 0);
  let left = Math.max(0, skaters - inLines);
  let places = games.reduce((sum, [, game]) => sum + game.usCount + game.themCount, 0);
  const shares: Record<string, number> = {};
  for (const [id, game] of games) {
    const atOnce = game.usCount + game.themCount;
    const share = places === 0 ? 0 : Math.round((left * atOnce) / places);
    shares[id] = share;
    left -= share;
    places -= atOnce;
  }
  return shares;
};

/** So many dealt to so many places, by turns. */
const dealt = (count: number, places: number): readonly number[] =>
  Array.from({ length: places }, (_, place) => Math.floor((count + places - 1 - place) / places));

/**
 * One go as a rep: everybody plays all of it and then stands at the end of the one line of that side. Dealt to `count` places by
 * turns, a line of `here` is so many lines, and who played at a place comes back `here` places on.
 */
const repOf = (game: SmallGame, usCount: number, themCount: number): RepFacts => {
  const side = (name: string, count: number, here: number): SpotFacts[] =>
    Array.from({ length: count }, (_, place) => ({
      spot: `${name} ${place}` as SpotId,
      goesTo: `${name} ${(place + here) % count}` as SpotId,
      fromS: 0,
      toS: game.shiftS,
      movingS: game.shiftS,
      freeS: game.shiftS,
      backS: 0,
      distanceM: 0,
      highSpeedS: 0,
      puckS: 0,
      receiveCount: 0,
      shotCount: 0,
    }));
  return {
    durationS: game.shiftS,
    spots: [...side('us', game.usCount, usCount), ...side('them', game.themCount, themCount)],
    shots: [],
    takenPuckCount: 0,
  };
};
