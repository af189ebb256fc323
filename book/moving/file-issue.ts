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

/** Why a value does not fit, with what stands there instead. */
export function reasonOf(issue: FileIssue, root: unknown): string {
  const value = valueAt(root, issue.path);
  // Of a name that nobody knows, what else stands beside it says nothing.
  if (issue.code === 'unrecognized_keys') return wantedOf(issue);
  const found = value === undefined ? 'it is missing' : `found ${shown(value)}`;
  return `${wantedOf(issue)} (${found})`;
}

export const shownPath = (path: readonly PropertyKey[]): string => path.map(String).join('.');

function wantedOf(issue: FileIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `${KINDS[issue.expected ?? ''] ?? issue.expected ?? 'another kind of value'} is needed here`;
    case 'too_big':
      return `at most ${issue.maximum}${LENGTHS[issue.origin ?? ''] ?? ''}`;
    case 'too_small':
      return `at least ${issue.minimum}${LENGTHS[issue.origin ?? ''] ?? ''}`;
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
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
};

const LENGTHS: Readonly<Record<string, string>> = { string: ' characters', array: ' entries' };

const oneOf = (values: readonly unknown[]): string =>
  values.length === 1 ? shown(values[0]) : `one of ${values.map(String).join(', ')}`;

/** A value as it stands in the file, cut where it is long. */
export function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    const isThere = (isPlain(value) || Array.isArray(value)) && Object.hasOwn(value, key);
    value = isThere ? (value as Record<PropertyKey, unknown>)[key] : undefined;
  }
  return value;
}
