import { draftPlaceSaid } from '@icewright/engine';
import type { DocumentKind } from '../documents/kinds.ts';
import { isPlain } from '../ydoc/plain.ts';

/**
 * Where in a document something is, as a coach would say it: "the block “Warm up”: minutes". `path` is keys from the document down,
 * the document any value at all, also a damaged one. Empty for the document as a whole. Our own words.
 */
export function documentPlaceSaid(
  kind: DocumentKind,
  path: readonly PropertyKey[],
  document: unknown,
): string {
  if (kind === 'drill') return draftPlaceSaid(path, document);
  const keys = path.map(String);
  let [at, within] = [document, document];
  const parts: string[] = [];
  let last = '';
  for (const [index, key] of keys.entries()) {
    within = at;
    at = isPlain(within) || Array.isArray(within) ? (within as Record<string, unknown>)[key] : undefined;
    const list = keys[index - 1];
    if (list !== undefined && THINGS[list] !== undefined) {
      parts.push(thingSaid(THINGS[list], at));
      last = '';
    } else if (!/^\d+$/.test(key)) last = key;
  }
  return [...parts, ...(last === '' ? [] : [fieldSaid(last)])].join(': ');
}

/** "the drill “Back to the middle”"; without a name of its own it is the third drill of the file, or whatever the caller counts. */
export const documentSaid = (kind: string, document: unknown, otherwise: string): string => {
  const name = nameIn(document);
  return name === '' ? otherwise : `the ${kind} “${name}”`;
};

/** What an item of each list is. */
const THINGS: Readonly<Record<string, string>> = {
  blocks: 'block',
  contents: 'line in the list of documents',
  films: 'film',
  moments: 'moment',
  follows: 'note of what came of a moment',
  opinions: 'second opinion',
  freezes: 'freeze',
  pins: 'pin',
  skaters: 'skater',
  tracks: 'track',
  hands: 'place set by hand',
  marks: 'mark',
  staff: 'person of the staff',
  habits: 'habit',
  momentKeys: 'key',
  units: 'group that plays together',
  items: 'item',
};

const thingSaid = (thing: string, item: unknown): string => {
  const name = nameIn(item);
  const timeS = isPlain(item) ? item.filmTimeS : undefined;
  if (name !== '') return `the ${thing} “${name}”`;
  if (typeof timeS === 'number') return `the ${thing} at ${timeS.toFixed(1)} s of the film`;
  return `${/^[aeiou]/.test(thing) ? 'an' : 'a'} ${thing}`;
};

function nameIn(value: unknown): string {
  if (!isPlain(value)) return '';
  const name = [value.title, value.name, value.opponent, value.fileName, value.says].find(
    each => typeof each === 'string' && each.trim() !== '',
  );
  return typeof name === 'string' ? name : '';
}

const FIELDS: Readonly<Record<string, string>> = {
  atM: 'place on the ice',
  xM: 'place along the sheet, in metres',
  yM: 'place across the sheet, in metres',
  xPx: 'place in the picture, across',
  yPx: 'place in the picture, down',
  filmTimeS: 'time in the film, in seconds',
  wantedRatio: 'wanted share, of one',
  costGoals: 'what a miss costs, in goals',
  iceMinutes: 'minutes on the ice',
  changeoverMinutes: 'minutes to change over',
  budgetMinutes: 'minutes it may take',
  rank: 'order',
  madeAt: 'when it was made',
  says: 'words',
  starts: 'start',
  preset: 'sheet of ice',
  schema: 'version',
};

/** Our names are words written together with a unit at their end. */
function fieldSaid(key: string): string {
  const known = FIELDS[key];
  if (known !== undefined) return known;
  const [, name = key, unit] = /^(.+?)(Mps|M|S|Px|Rad|Ratio|Count)?$/.exec(key) ?? [];
  const words = name.replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
  const said = UNITS[unit ?? ''];
  return said === undefined ? words : `${words}, ${said}`;
}

const UNITS: Readonly<Record<string, string>> = {
  Mps: 'in metres a second',
  M: 'in metres',
  S: 'in seconds',
  Px: 'in pixels',
  Rad: 'in radians',
  Ratio: 'of one',
  Count: 'how many',
};
