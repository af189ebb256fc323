import type { Habit } from '../documents/team.ts';
import {
  type DrillDocument,
  type DrillFile,
  type DrillInFile,
  drillFile,
  drillFileFormat,
  drillFileVersion,
  drillSchemaId,
} from './drill-file.ts';
import { stableJson } from './stable-json.ts';

export interface DrillToExport {
  readonly id: string;
  readonly drill: DrillDocument;
}

/**
 * One drill or several as a drill file, in this order. The same drills give the same bytes. Throws on drills that the
 * file cannot hold (over its limits): a file that lacks a part would be a trap.
 */
export function exportDrills(
  drills: readonly DrillToExport[],
  habits: Readonly<Record<string, Pick<Habit, 'title'>>>,
): string {
  const places = new Map(drills.map(({ id }, index) => [id, index]));
  const file: DrillFile = {
    $schema: drillSchemaId,
    format: drillFileFormat,
    version: drillFileVersion,
    drills: drills.map(({ drill }) => inFile(drill, habits, places)),
  };
  drillFile.parse(file);
  return stableJson(file);
}

function inFile(
  drill: DrillDocument,
  habits: Readonly<Record<string, Pick<Habit, 'title'>>>,
  places: ReadonlyMap<string, number>,
): DrillInFile {
  const {
    kind: _kind,
    schema: _schema,
    from: _from,
    madeAt: _madeAt,
    people: _people,
    variantOf,
    wanted,
    ...rest
  } = drill;
  const place = variantOf === undefined ? undefined : places.get(variantOf.drill);
  return {
    ...rest,
    habits: drill.habits.flatMap(id => {
      const title = habits[id]?.title.trim() ?? '';
      return title === '' ? [] : [title];
    }),
    ...(wanted === undefined || wanted.kind === 'habitHeld' ? {} : { wanted }),
    // A version of a drill that is not in the file is a drill of its own there.
    ...(variantOf === undefined || place === undefined
      ? {}
      : { variantOf: { drill: place, as: variantOf.as } }),
  };
}
