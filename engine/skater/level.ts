import type { Row } from '../units/provenance.ts';
import { LEVEL_ROWS } from './level-rows.ts';
import { LEVEL_IDS, type LevelId, modelOf, type SkaterModel } from './model.ts';

/** A level of play: its words, its skater, and every number of that skater with its source. */
export interface Level {
  readonly id: LevelId;
  readonly words: string;
  readonly rows: Readonly<Record<keyof SkaterModel, Row>>;
  readonly model: SkaterModel;
}

const WORDS: Readonly<Record<LevelId, string>> = {
  u10: 'Under 10',
  u14: 'Under 14',
  u18: 'Under 18 and junior',
  collegeWomen: 'College women and women elite',
  collegeMen: 'College men',
  pro: 'Professional men',
};

/** The level's defaults, SI units. Most figures are estimates and say so in `rows`. */
export const levelOf = (id: LevelId): Level => LEVELS[id];

const built = (id: LevelId): Level => {
  const column = LEVEL_IDS.indexOf(id);
  const rows = {} as Record<keyof SkaterModel, Row>;
  const model = {} as Record<keyof SkaterModel, number>;
  for (const row of LEVEL_ROWS) {
    const [printed, status, source] = row.cells[column]!;
    const value = printed * row.toSi;
    const slack = value * row.bandRatio;
    rows[row.key] = {
      name: row.name,
      value,
      unit: row.unit,
      range: [value - slack, value + slack],
      source,
      status,
    };
    model[row.key] = value;
  }
  return { id, words: WORDS[id], rows, model: modelOf(model) };
};

const LEVELS = Object.fromEntries(LEVEL_IDS.map(id => [id, built(id)])) as Readonly<Record<LevelId, Level>>;
