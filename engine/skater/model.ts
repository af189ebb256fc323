/**
 * One skater's powers. Law of motion at effort E in direction û: v̇ = (E·V·û − v)/τ.
 * The spreads are of a level's population; `reachM` is from the middle of the body, two hands on the stick.
 */
export interface SkaterModel {
  readonly topSpeedMps: number;
  readonly tauS: number;
  /** Read-and-choose reaction. */
  readonly reactionS: number;
  /** Reaction to an expected event, such as a whistle. */
  readonly expectedReactionS: number;
  readonly reachM: number;
  readonly lungeReachM: number;
  readonly lateralAccelMps2: number;
  readonly stopDecelMps2: number;
  readonly glideDecelMps2: number;
  readonly minTurnRadiusM: number;
  readonly backwardRatio: number;
  readonly carryRatio: number;
  /** Time a change between forward and backward costs. */
  readonly transitionS: number;
  readonly topSpeedSdRatio: number;
  /** Spread of an arrival time (logistic, as a standard deviation). */
  readonly spreadS: number;
  readonly controlRatePerS: number;
  readonly stickLengthM: number;
  readonly typicalPassMps: number;
  readonly hardPassMps: number;
  readonly passDirectionSdRad: number;
  readonly wristShotMps: number;
  readonly slapShotMps: number;
  readonly laneOpenM: number;
  readonly blueLineGapM: number;
  /** Closing speed of crossing paths that is flagged. */
  readonly pathsCrossLimitMps: number;
}

/**
 * The same numbers as one kind of object for the compiler, whoever made them: a run reads them at every step, and a model that was filled key by key, or copied with
 * some numbers changed, is each a kind of its own. Units and ranges as in `SkaterModel`; our own choice.
 */
export const modelOf = (numbers: SkaterModel): SkaterModel => ({
  topSpeedMps: numbers.topSpeedMps,
  tauS: numbers.tauS,
  reactionS: numbers.reactionS,
  expectedReactionS: numbers.expectedReactionS,
  reachM: numbers.reachM,
  lungeReachM: numbers.lungeReachM,
  lateralAccelMps2: numbers.lateralAccelMps2,
  stopDecelMps2: numbers.stopDecelMps2,
  glideDecelMps2: numbers.glideDecelMps2,
  minTurnRadiusM: numbers.minTurnRadiusM,
  backwardRatio: numbers.backwardRatio,
  carryRatio: numbers.carryRatio,
  transitionS: numbers.transitionS,
  topSpeedSdRatio: numbers.topSpeedSdRatio,
  spreadS: numbers.spreadS,
  controlRatePerS: numbers.controlRatePerS,
  stickLengthM: numbers.stickLengthM,
  typicalPassMps: numbers.typicalPassMps,
  hardPassMps: numbers.hardPassMps,
  passDirectionSdRad: numbers.passDirectionSdRad,
  wristShotMps: numbers.wristShotMps,
  slapShotMps: numbers.slapShotMps,
  laneOpenM: numbers.laneOpenM,
  blueLineGapM: numbers.blueLineGapM,
  pathsCrossLimitMps: numbers.pathsCrossLimitMps,
});

export const LEVEL_IDS = ['u10', 'u14', 'u18', 'collegeWomen', 'collegeMen', 'pro'] as const;

export type LevelId = (typeof LEVEL_IDS)[number];
