import type { Status } from '../units/provenance.ts';
import type { SkaterModel } from './model.ts';

/** Name of a model value and its six figures, U10 first, as `levelOf` spreads them over the levels. */
export interface LevelRow {
  readonly key: keyof SkaterModel;
  readonly name: string;
  readonly unit: string;
  /** Printed figure → SI. Directions are printed in degrees. */
  readonly toSi: number;
  readonly cells: readonly [Cell, Cell, Cell, Cell, Cell, Cell];
  /** Plausible band around each figure, as a share of it. */
  readonly bandRatio: number;
}

/** A figure, its status, and its source where it has one. */
export type Cell = readonly [value: number, status: Status, source: string];

const OWN = 'our estimate; a team’s own timed tests replace it';
const e = (value: number, why = OWN): Cell => [value, 'estimate', why];
const d = (value: number, from: string): Cell => [value, 'derived', from];
const s = (value: number, from: string): Cell => [value, 'sourced', from];

const STASTNY = 'Stastny et al. 2023, Biology of Sport 40(3):899–918';
const BUDARICK = 'Budarick et al. 2018, Sports Biomechanics, doi 10.1080/14763141.2018.1503323';
const GAMBLE = 'Gamble et al. 2024, Int J Sports Physiol Perform 19(5):496–504';
const WILSON = 'Wilson et al. 2021, Int J Exerc Sci 14(6):666–676';
const BANDY = 'van den Tillaar et al. 2023, Front Physiol 1055863 (bandy)';
const GIRLS = 'a regression on 61 girls of 8–16 years, 47.85 m';
const TRACKING = 'league tracking summary, season 2023-24';
const BACKWARD = 'measured backward speed of ten skilled men, 6.56 m/s, against forward sprints';
const CARRY_1967 = 'ten professionals timed with and without puck, 1966-67';
const CUT = 'skate forces in 90° cuts, 0.62–0.94 body weight';
const REACTION = 'acoustic simple reaction by age, plus about 0.03 s for a visual cue';
const SOCCER = 'soccer value of Spearman 2018, MIT Sloan Sports Analytics Conference';
const WOMEN_PASS = 'a published ice pass model for women’s hockey';
const GAP = 'coaching text: tight gap 1–1.5 stick lengths';
const SHOTS = 'laboratory slap shots of elite men, 29–33 m/s';
const PRO_SHOT = 'two professionals, slap 36.4 and one-timer 38.0 m/s';
const CAMP = 'radar at a development camp, 2008: up to 33.1 m/s';

const row = (
  key: keyof SkaterModel,
  name: string,
  unit: string,
  cells: LevelRow['cells'],
  bandRatio = 0.15,
  toSi = 1,
): LevelRow => ({ key, name, unit, toSi, cells, bandRatio });

const RAD_PER_DEGREE = Math.PI / 180;

/** The default table: U10, U14, U18 / junior, college women / women elite, college men, professional men. */
export const LEVEL_ROWS: readonly LevelRow[] = [
  row('topSpeedMps', 'top speed', 'm/s', [
    e(6.2),
    d(7.5, GIRLS),
    d(9, STASTNY),
    s(8.2, `${BUDARICK}; ${GAMBLE}`),
    d(9.3, BUDARICK),
    d(10, TRACKING),
  ]),
  row('tauS', 'time constant', 's', [
    e(1.4),
    e(1.3),
    e(1.22),
    d(1.22, `${GAMBLE}; ${WILSON}`),
    e(1.2),
    d(1.15, BANDY),
  ]),
  row(
    'reactionS',
    'reaction, read and choose',
    's',
    [e(0.55), e(0.45), e(0.38), e(0.35), e(0.35), e(0.3)],
    0.3,
  ),
  row(
    'expectedReactionS',
    'reaction, expected event',
    's',
    [d(0.3, REACTION), d(0.24, REACTION), d(0.22, REACTION), e(0.21), e(0.21), e(0.2)],
    0.2,
  ),
  row('reachM', 'reach, two hands', 'm', [e(1.2), e(1.35), e(1.55), e(1.45), e(1.55), e(1.6)]),
  row('lungeReachM', 'reach, lunge', 'm', [e(1.6), e(1.85), e(2.1), s(1.98, WOMEN_PASS), e(2.15), e(2.2)]),
  row('lateralAccelMps2', 'sideways acceleration', 'm/s²', [e(3.5), e(5), e(6.5), e(6.5), d(7, CUT), e(7.5)]),
  row('stopDecelMps2', 'stopping', 'm/s²', [e(3.5), e(4.5), e(5.5), e(5.5), e(6), e(6.5)], 0.2),
  row('glideDecelMps2', 'gliding', 'm/s²', [e(0.3), e(0.3), e(0.25), e(0.25), e(0.25), e(0.25)], 0.5),
  row('minTurnRadiusM', 'tightest turn', 'm', [e(1.5), e(1.4), e(1.2), e(1.2), e(1.2), e(1.1)], 0.25),
  row(
    'backwardRatio',
    'backward speed / forward speed',
    '',
    [e(0.68), e(0.73), e(0.77), e(0.78), d(0.78, BACKWARD), e(0.8)],
    0.1,
  ),
  row(
    'carryRatio',
    'speed with puck / without',
    '',
    [e(0.82), e(0.88), e(0.93), e(0.94), e(0.95), s(0.95, CARRY_1967)],
    0.05,
  ),
  row(
    'transitionS',
    'forward–backward change',
    's',
    [e(0.6), e(0.45), e(0.32), e(0.3), e(0.3), e(0.25)],
    0.3,
  ),
  row(
    'topSpeedSdRatio',
    'spread of top speed between skaters',
    '',
    [e(0.08), e(0.07), e(0.05), s(0.045, BUDARICK), s(0.05, BUDARICK), e(0.04)],
    0.3,
  ),
  row('spreadS', 'spread of arrival', 's', [e(0.6), e(0.5), e(0.4), e(0.35), e(0.35), e(0.3)], 0.3),
  row(
    'controlRatePerS',
    'puck control rate',
    '1/s',
    [e(2.5), e(3.2), e(4), s(4.3, SOCCER), s(4.3, SOCCER), e(5)],
    0.3,
  ),
  row(
    'stickLengthM',
    'stick length',
    'm',
    [e(1.15), e(1.35), e(1.5), d(1.42, WOMEN_PASS), e(1.52), e(1.55)],
    0.05,
  ),
  row(
    'typicalPassMps',
    'pass, typical at 10 m',
    'm/s',
    [e(7), e(9.5), e(13), s(13, WOMEN_PASS), e(14), e(15)],
    0.2,
  ),
  row('hardPassMps', 'pass, hard', 'm/s', [e(10), e(14), e(19), e(19), e(21), e(23)], 0.2),
  row(
    'passDirectionSdRad',
    'spread of pass direction',
    'rad',
    [e(6), e(4), e(2.5), e(2.2), e(2.2), e(1.8)],
    0.4,
    RAD_PER_DEGREE,
  ),
  row('wristShotMps', 'wrist or snap shot', 'm/s', [e(13), e(20), e(27), e(24), e(29), d(32, CAMP)], 0.2),
  row('slapShotMps', 'slap shot', 'm/s', [e(15), e(23), e(32), e(27), d(33, SHOTS), s(37, PRO_SHOT)], 0.2),
  row('laneOpenM', 'lane called open', 'm', [e(2.3), e(2.6), e(3), e(3), e(3), e(2.8)], 0.3),
  row(
    'blueLineGapM',
    'gap at own blue line',
    'm',
    [e(2), e(2), d(1.8, GAP), d(1.8, GAP), d(1.8, GAP), e(1.6)],
    0.3,
  ),
  row(
    'pathsCrossLimitMps',
    'closing speed of crossing paths, limit',
    'm/s',
    [
      e(3, 'our estimate on youth collision speeds of 2.05–2.76 m/s (Swenson et al. 2022)'),
      e(3, 'our estimate on youth collision speeds of 2.05–2.76 m/s (Swenson et al. 2022)'),
      e(5),
      e(5),
      e(5),
      e(5),
    ],
    0.2,
  ),
];
