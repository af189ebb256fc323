import { isPlain } from '../ydoc/plain.ts';

/** What a schema says of a value that does not fit, as far as a reason is made of it. */
export interface FileIssue {
  readonly code: string;
  readonly path: readonly PropertyKey[];
  readonly message: string;
  readonly expected?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly origin?: string;
  readonly values?: readonly unknown[];
  readonly options?: readonly unknown[];
  readonly keys?: readonly string[];
}

/** Why a value does not fit, as a coach would say it, with what stands there instead. */
export function reasonOf(issue: FileIssue, root: unknown): string {
  const value = valueAt(root, issue.path);
  // Of a name that nobody knows, what else stands beside it says nothing.
  if (issue.code === 'unrecognized_keys') return wantedOf(issue);
  return `${wantedOf(issue)}, and ${foundSaid(value)}`;
}

export const shownPath = (path: readonly PropertyKey[]): string => path.map(String).join('.');

/** One sentence without its stop: where, what, and in brackets the place in the file for whoever writes one. */
export const refusalSaid = (where: string, reason: string, path = ''): string =>
  `${where === '' ? '' : `${where}: `}${reason}${path === '' ? '' : ` (${path})`}`;

/** The same, standing alone. */
export const asSentence = (said: string): string => `${said[0]!.toUpperCase()}${said.slice(1)}.`;

function wantedOf(issue: FileIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `${KINDS[issue.expected ?? ''] ?? 'another kind of value'} is needed here`;
    case 'too_big':
      return isCounted(issue)
        ? `at most ${issue.maximum} ${COUNTED[issue.origin!]} fit here`
        : `at most ${issue.maximum} is possible`;
    case 'too_small':
      return isCounted(issue)
        ? `at least ${issue.minimum} must stand here`
        : `at least ${issue.minimum} is needed`;
    case 'invalid_format':
      return SHAPES[String(issue.path.at(-1))] ?? 'this does not fit';
    case 'invalid_value':
      return `this must be ${oneOf(issue.values ?? [])}`;
    case 'invalid_union':
      return issue.options === undefined ? 'there is no such kind' : `this must be ${oneOf(issue.options)}`;
    case 'unrecognized_keys':
      return `nothing here is called ${oneOf(issue.keys ?? [])}`;
    case 'custom':
      return issue.message;
    default:
      return 'this does not fit';
  }
}

const KINDS: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'a text',
  boolean: 'yes or no (true or false)',
  array: 'a list',
  object: 'a group of named values',
  record: 'a group of named values',
};

const COUNTED: Readonly<Record<string, string>> = { string: 'letters', array: 'of them' };

const isCounted = ({ origin }: FileIssue): boolean => origin !== undefined && COUNTED[origin] !== undefined;

/** Texts that have a form of their own. */
const SHAPES: Readonly<Record<string, string>> = {
  day: 'a day such as 2026-11-07 is needed here',
  starts: 'a time such as 19:40 is needed here',
  usualStart: 'a time such as 19:40 is needed here',
  key: 'one letter or figure is needed here',
  strength: 'numbers of skaters such as 5v4 are needed here',
  hash: 'the name of a film by its content is needed here',
};

const oneOf = (values: readonly unknown[]): string =>
  values.length === 1 ? shown(values[0]) : `one of ${values.map(String).join(', ')}`;

/** What stands in the file instead. */
export function foundSaid(value: unknown): string {
  if (value === undefined) return 'it is missing';
  if (typeof value === 'string') return value === '' ? 'it is empty' : `“${shortened(value)}” stands there`;
  if (typeof value === 'object' && value !== null)
    return Object.keys(value).length === 0 ? 'it is empty' : 'something else stands there';
  return value === null ? 'nothing stands there' : `${String(value)} stands there`;
}

/** A value as a sentence names it, cut where it is long. */
export const shown = (value: unknown): string =>
  typeof value === 'string' ? `“${shortened(value)}”` : shortened(JSON.stringify(value) ?? 'nothing');

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 60)}…` : text);

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    const isThere = (isPlain(value) || Array.isArray(value)) && Object.hasOwn(value, key);
    value = isThere ? (value as Record<PropertyKey, unknown>)[key] : undefined;
  }
  return value;
}
