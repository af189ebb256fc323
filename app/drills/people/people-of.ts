import type { Drill, Skater, Team } from '@icewright/book';
import { type Id, levelOf, type SkaterModel, type SpotId } from '@icewright/engine';
import { timedModelOf, timedSprintOf } from '../../parts/timed-model.ts';

/** Somebody of the team with a sprint of her own. */
export interface TimedSkater {
  readonly id: Id<'skater'>;
  readonly skater: Skater;
  readonly model: SkaterModel;
}

/** Who skates a drill instead of the level's skater, spot by spot. */
export interface People {
  /** In many reps those of a spot take turns; a spot that is not here is skated by the level. */
  readonly bySpot: Readonly<Record<SpotId, readonly SkaterModel[]>>;
  /** For one rep: their mean. */
  readonly inOneRep: Readonly<Record<SpotId, SkaterModel>>;
  /** How many people of the team these are. */
  readonly count: number;
}

const NOBODY: People = { bySpot: {}, inOneRep: {}, count: 0 };

/** Everybody whose times fit a sprint, in the order of the roster. */
export const timedSkatersOf = (team: Team, level: Drill['level']): readonly TimedSkater[] =>
  (Object.entries(team.skaters) as [Id<'skater'>, Skater][])
    .sort(([, one], [, other]) => one.rank - other.rank)
    .flatMap(([id, skater]) => {
      const sprint = timedSprintOf(skater.timed);
      return sprint === null ? [] : [{ id, skater, model: timedModelOf(sprint, levelOf(level).model) }];
    });

/**
 * Who skates the drill. As a mix every skater of ours is skated in turn by all of the team's timed people of her position, as far as
 * her role says one, else by all of them; goalies, coaches and the other side are of the level.
 */
export const peopleOf = (
  drill: Pick<Drill, 'people' | 'spots' | 'level'>,
  timed: readonly TimedSkater[],
): People => {
  const { people } = drill;
  if (people === undefined || timed.length === 0) return NOBODY;
  const chosen = (Object.entries(drill.spots) as [SpotId, Drill['spots'][SpotId]][]).flatMap(
    ([spotId, spot]): [SpotId, readonly TimedSkater[]][] => {
      if (spot.kind !== 'skater') return [];
      if (people.as === 'timedTeam')
        return spot.side === 'us' ? [[spotId, ofPosition(timed, spot.role)]] : [];
      const named = timed.find(({ id }) => id === people.bySpot[spotId]);
      return named === undefined ? [] : [[spotId, [named]]];
    },
  );
  if (chosen.length === 0) return NOBODY;
  return {
    bySpot: Object.fromEntries(chosen.map(([spot, all]) => [spot, all.map(({ model }) => model)])),
    inOneRep: Object.fromEntries(chosen.map(([spot, all]) => [spot, meanOf(all.map(({ model }) => model))])),
    count: new Set(chosen.flatMap(([, all]) => all.map(({ id }) => id))).size,
  };
};

/** Defenders' roles begin with D, as coaches write them; whoever is nothing by her role may be anybody. */
const ofPosition = (timed: readonly TimedSkater[], role: string): readonly TimedSkater[] => {
  const position = { D: 'D', F: 'F' }[role.slice(0, 1).toUpperCase()];
  const own = timed.filter(({ skater }) => skater.position === position);
  if (own.length > 0) return own;
  const skaters = timed.filter(({ skater }) => skater.position !== 'G');
  return skaters.length > 0 ? skaters : timed;
};

const meanOf = (models: readonly SkaterModel[]): SkaterModel => {
  const mean = (of: (model: SkaterModel) => number) =>
    models.reduce((sum, model) => sum + of(model), 0) / models.length;
  return { ...models[0]!, topSpeedMps: mean(one => one.topSpeedMps), tauS: mean(one => one.tauS) };
};

/** After so many reps the next of each spot's people take over: as many as one worker plays in one go. */
export const REPS_A_TURN = 25;

/** Who skates from this rep on, for a turn: each spot begins with another of its people. */
export const atTurn = (bySpot: People['bySpot'], fromRep: number): Readonly<Record<SpotId, SkaterModel>> => {
  const turn = Math.floor(fromRep / REPS_A_TURN);
  return Object.fromEntries(
    Object.entries(bySpot).map(([spot, models], index) => [spot, models[(turn + index) % models.length]!]),
  );
};
