import { draftIssueSentence, draftIssuesOf, draftPlaceSaid, type Id } from '@icewright/engine';
import { newId } from '../documents/ids.ts';
import { currentSchema } from '../documents/kinds.ts';
import type { Habit } from '../documents/team.ts';
import { isPlain, ownCopy } from '../ydoc/plain.ts';
import {
  type DrillDocument,
  type DrillFile,
  drillFile,
  drillFileFormat,
  drillFileLimit,
  drillFileVersion,
} from './drill-file.ts';
import { type FileIssue, foundSaid, reasonOf, refusalSaid, shownPath } from './file-issue.ts';

export interface ImportedDrill {
  readonly id: Id<'document'>;
  readonly value: DrillDocument;
  /** Habits of the file that the team has no habit of the same words for. */
  readonly otherHabits: readonly string[];
}

export type ImportedDrills =
  | { readonly kind: 'ok'; readonly drills: readonly ImportedDrill[] }
  | {
      readonly kind: 'refused';
      /** In a coach's words: where, and what is wrong there; the place in the file in brackets. Without its stop. */
      readonly said: string;
      /** Where in the file; empty for the file as a whole. */
      readonly path: string;
    };

/** The drills of a drill file as documents of this team, or where and why the file is refused. All of it or nothing. */
export function importDrills(
  text: string,
  to: { readonly habits: Readonly<Record<string, Pick<Habit, 'title'>>>; readonly madeAt: string },
): ImportedDrills {
  if (text.length > drillFileLimit) {
    return refused('', `the file is over ${drillFileLimit / 2 ** 20} million characters long`);
  }
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refused('', 'this file is not JSON, or it is cut off');
  }
  if (!isPlain(file) || file.format !== drillFileFormat)
    return refused('', 'this is not a drill file of Icewright');
  if (typeof file.version === 'number' && file.version > drillFileVersion) {
    return refused(
      '',
      `the file was made by a newer Icewright (version ${file.version}, this one reads up to ${drillFileVersion})`,
    );
  }
  const parsed = drillFile.safeParse(file);
  if (!parsed.success) {
    const issue = parsed.error.issues[0] as unknown as FileIssue;
    return refused(shownPath(issue.path), reasonOf(issue, file), whereSaid(issue.path, file));
  }
  const unread = findUnread(file, parsed.data, []);
  if (unread !== null)
    return refused(shownPath(unread), 'nothing here has this name', whereSaid(unread, file));
  return documentsOf(parsed.data, to);
}

function documentsOf(file: DrillFile, to: Parameters<typeof importDrills>[1]): ImportedDrills {
  const ids = file.drills.map(() => newId<'document'>());
  const drills: ImportedDrill[] = [];
  for (const [index, { habits, variantOf, ...rest }] of file.drills.entries()) {
    const of = variantOf === undefined ? undefined : ids[variantOf.drill];
    if (variantOf !== undefined && (of === undefined || variantOf.drill === index)) {
      const reason =
        of === undefined ? 'there is no such drill in the file' : 'a drill is no version of itself';
      const path = ['drills', String(index), 'variantOf', 'drill'];
      return refused(shownPath(path), `${reason}, and ${foundSaid(variantOf.drill)}`, titled(rest.title));
    }
    const astray = draftIssuesOf(rest).find(({ code }) => ASTRAY.includes(code));
    if (astray !== undefined) {
      const reason = draftIssueSentence(astray, rest).replace(/\.$/, '');
      return refused(shownPath(['drills', String(index), ...astray.path]), reason, titled(rest.title));
    }
    const found = habits.map(words => ({ words, id: findHabit(words, to.habits) }));
    drills.push({
      id: ids[index]!,
      otherHabits: found.filter(({ id }) => id === undefined).map(({ words }) => words),
      value: ownCopy({
        ...rest,
        kind: 'drill',
        schema: currentSchema.drill,
        habits: [...new Set(found.flatMap(({ id }) => (id === undefined ? [] : [id])))],
        ...(of === undefined ? {} : { variantOf: { drill: of, as: variantOf!.as } }),
        madeAt: to.madeAt,
      } as DrillDocument),
    });
  }
  return { kind: 'ok', drills };
}

/** The team's habit of the same words, however they are spaced and capitalised. */
function findHabit(
  words: string,
  habits: Readonly<Record<string, Pick<Habit, 'title'>>>,
): Id<'habit'> | undefined {
  const plain = (text: string) => text.trim().replace(/\s+/g, ' ').toLocaleLowerCase('en');
  return Object.entries(habits).find(([, habit]) => plain(habit.title) === plain(words))?.[0] as
    | Id<'habit'>
    | undefined;
}

/** The first part of the file that was not read: taking the rest would be taking half of it. */
function findUnread(given: unknown, read: unknown, path: readonly string[]): readonly string[] | null {
  if (typeof given !== 'object' || given === null) return null;
  for (const [key, inner] of Object.entries(given)) {
    const at = [...path, key];
    if (!Object.hasOwn(read as object, key)) return at;
    const unread = findUnread(inner, (read as Record<string, unknown>)[key], at);
    if (unread !== null) return unread;
  }
  return null;
}

/** Who or what is named and is not there: no form of the file can say it, and no rep can be played with it. */
const ASTRAY: readonly string[] = ['noSuchSpot', 'noSuchGear'];

/** Where in a file, as a coach would say it: who, in which drill. Empty for the file as a whole. */
function whereSaid(path: readonly PropertyKey[], file: unknown): string {
  const [list, index, ...rest] = path.map(String);
  if (list !== 'drills') return list === undefined ? '' : (PARTS[list] ?? `“${list}” in the file`);
  if (index === undefined) return 'the drills of the file';
  const drill = Object((file as { readonly drills?: unknown }).drills)[index];
  const place = draftPlaceSaid(rest, drill);
  const within = titled(Object(drill).title, Number(index));
  return place === '' ? within : `${place}, in ${within}`;
}

/** What stands beside the drills. */
const PARTS: Readonly<Record<string, string>> = {
  version: 'the version of the file',
  $schema: 'the name of the schema at the head of the file',
};

const titled = (title: unknown, index = 0): string =>
  typeof title === 'string' && title.trim() !== '' ? `“${title}”` : `drill ${index + 1} of the file`;

const refused = (path: string, reason: string, where = ''): ImportedDrills => ({
  kind: 'refused',
  path,
  said: refusalSaid(where, reason, path),
});
