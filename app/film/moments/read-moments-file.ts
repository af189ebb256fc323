import {
  cuesOfVtt,
  type EventTable,
  eventTableOf,
  isMomentsTable,
  type MomentsTaken,
  readMomentsJson,
  readMomentsTable,
  readMomentsVtt,
  type VttCue,
} from '@icewright/book';
import { framesOf, type TakeInto } from './take-moments.ts';

/** What a file of moments is: moments that say all of themselves, or something whose meaning has to be asked. */
export type MomentsFile =
  | { readonly kind: 'moments'; readonly taken: MomentsTaken }
  | { readonly kind: 'table'; readonly table: EventTable }
  | { readonly kind: 'cues'; readonly cues: readonly VttCue[] }
  | { readonly kind: 'refused'; readonly sentence: string };

export function readMomentsFile(fileName: string, text: string, into: TakeInto): MomentsFile {
  const { game, team, film } = into;
  const taggedAt = new Date().toISOString();
  if (/\.vtt$/i.test(fileName)) {
    const cues = cuesOfVtt(text);
    if ('sentence' in cues) return { kind: 'refused', ...cues };
    const by = signed(fileName);
    const taken = readMomentsVtt(cues, { game, team, film, frames: framesOf(into), by, taggedAt });
    return taken ? { kind: 'moments', taken } : { kind: 'cues', cues };
  }
  if (/\.json$/i.test(fileName)) {
    const read = readMomentsJson(text, game, team.habits);
    return read.kind === 'refused' ? read : { kind: 'moments', taken: read.taken };
  }
  const table = eventTableOf(text);
  if ('sentence' in table) return { kind: 'refused', ...table };
  if (!isMomentsTable(table)) return { kind: 'table', table };
  const taken = readMomentsTable(table, {
    game,
    team,
    film,
    framesOf: one => (one === film ? framesOf(into) : undefined),
    taggedAt,
  });
  return 'sentence' in taken ? { kind: 'refused', ...taken } : { kind: 'moments', taken };
}

/** Who marked what a file brings, where it does not say: the file, as far as a list has room for its name. */
export const signed = (fileName: string): string => fileName.slice(0, 40);
