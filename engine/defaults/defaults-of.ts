import * as carryRows from '../carry/carry-rows.ts';
import * as drillRows from '../drill/drill-rows.ts';
import * as versionRows from '../drill/version-rows.ts';
import * as filmRows from '../film/film-rows.ts';
import * as flowRows from '../flow/flow-rows.ts';
import { POWER } from '../habit/chances-needed.ts';
import { CHANGE_TO_SEE, LEAST_KAPPA } from '../habit/habit-change.ts';
import { HALF_TIME } from '../habit/habit-need.ts';
import * as ideasRows from '../ideas/ideas-rows.ts';
import * as manyRows from '../many/many-rows.ts';
import * as mendRows from '../mends/mend-rows.ts';
import * as bodyRows from '../motion/body-rows.ts';
import * as featureRows from '../offer/feature-rows.ts';
import * as offerRows from '../offer/offer-rows.ts';
import * as viewRows from '../offer/view-rows.ts';
import { PASS_ROWS } from '../pass/pass-rows.ts';
import * as peopleRows from '../people/people-rows.ts';
import * as meetingRows from '../practice/meeting-rows.ts';
import * as netRows from '../puck/net-rows.ts';
import { PUCK_ROWS } from '../puck/puck-rows.ts';
import type { Rink } from '../rink/rink.ts';
import * as contestRows from '../run/contest-rows.ts';
import * as findingRows from '../run/finding-rows.ts';
import * as goalieRows from '../run/goalie-rows.ts';
import * as passWayRows from '../run/pass-way-rows.ts';
import { levelOf } from '../skater/level.ts';
import type { LevelId } from '../skater/model.ts';
import { RACE_ROWS } from '../skater/race-rows.ts';
import { ROUTE_ROWS } from '../skater/route-rows.ts';
import * as trackRows from '../track/track-rows.ts';
import type { Row } from '../units/provenance.ts';

/** Rows that belong together, under a name a coach would look for. */
export interface DefaultGroup {
  readonly name: string;
  readonly rows: readonly Row[];
}

/**
 * Every default the figures rest on, for one level and one sheet: value and unit as stored (SI), plausible range, source,
 * and whether it is sourced, derived or an estimate. For the screen that answers "why" and for print.
 */
export const defaultsOf = (level: LevelId, rink: Rink): readonly DefaultGroup[] => [
  { name: `Skaters, ${levelOf(level).words}`, rows: Object.values(levelOf(level).rows) },
  { name: 'Puck, boards and nets', rows: [...Object.values(PUCK_ROWS), ...rowsIn(netRows)] },
  {
    name: 'Passes, lanes and who is first',
    rows: [...Object.values(PASS_ROWS), ...Object.values(RACE_ROWS)],
  },
  {
    name: 'Playing a drill and its findings',
    rows: [
      ...rowsIn(drillRows),
      ...rowsIn(versionRows),
      ...rowsIn(bodyRows),
      ...rowsIn(findingRows),
      ...rowsIn(goalieRows),
      ...rowsIn(mendRows),
      ...Object.values(ROUTE_ROWS),
    ],
  },
  { name: 'Many reps: how people differ', rows: rowsIn(manyRows) },
  { name: 'Blocks of many reps, and small games', rows: rowsIn(flowRows) },
  { name: 'Contests for the puck', rows: rowsIn(contestRows) },
  { name: 'Passes through the air', rows: rowsIn(passWayRows) },
  { name: 'From the picture to the ice', rows: rowsIn(filmRows) },
  {
    name: 'Pins offered by the machine',
    rows: [...rowsIn(featureRows), ...rowsIn(viewRows), ...rowsIn(offerRows)],
  },
  { name: 'Carrying pins through a pan', rows: rowsIn(carryRows) },
  { name: 'Following skaters on film', rows: rowsIn(trackRows) },
  { name: 'People found in a picture', rows: rowsIn(peopleRows) },
  { name: 'Ideas and likeness to the game', rows: rowsIn(ideasRows) },
  { name: 'Habits and change', rows: [CHANGE_TO_SEE, POWER, LEAST_KAPPA, HALF_TIME] },
  { name: 'Meetings', rows: rowsIn(meetingRows) },
  { name: 'The sheet', rows: rink.rows },
];

const rowsIn = (module: Readonly<Record<string, unknown>>): readonly Row[] =>
  Object.values(module).filter(isRow);

const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && 'status' in value && 'source' in value && 'range' in value;
