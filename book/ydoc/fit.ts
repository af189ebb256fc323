import { longTextLimit } from '../documents/fields.ts';
import type { Issue } from '../documents/issue.ts';
import { isOptional, type Shape } from '../documents/shape.ts';
import type { Plain } from './build.ts';
import { isPlain } from './plain.ts';

export interface Fitted {
  /** Undefined when nothing valid could be made of it. */
  readonly value: Plain | undefined;
  readonly issues: readonly Issue[];
}

/**
 * The valid part of a raw value, and an issue for each part left out. A field that does not fit is left out where the
 * schema lets it be absent, else replaced from `fallback`; without one its item is left out. Nothing is deleted from
 * the document itself. Results are remembered by the raw value's identity, so an unchanged part costs nothing and
 * keeps its own identity.
 */
export function fitted(raw: Plain, shape: Shape, fallback?: Plain): Fitted {
  const known = remembered.get(raw);
  if (known?.shape === shape) return known.result;
  const result = shape.fields === null ? fitWhole(raw, shape) : fitFields(raw, shape, shape.fields, fallback);
  remembered.set(raw, { shape, result });
  return result;
}

const remembered = new WeakMap<Plain, { shape: Shape; result: Fitted }>();
const rememberedLists = new WeakMap<Plain, { shape: Shape; result: Fitted }>();

function fitWhole(raw: Plain, shape: Shape): Fitted {
  const parsed = shape.schema.safeParse(raw);
  if (parsed.success) return { value: parsed.data as Plain, issues: [] };
  return { value: undefined, issues: parsed.error.issues.map(issue => issueFrom(issue, raw, [])) };
}

function fitFields(
  raw: Plain,
  shape: Shape,
  fields: NonNullable<Shape['fields']>,
  fallback: Plain | undefined,
): Fitted {
  const value: Plain = {};
  const issues: Issue[] = [];
  let whole = true;
  for (const [key, schema] of Object.entries(fields)) {
    const item = shape.lists.get(key);
    const found = Object.hasOwn(raw, key) ? raw[key] : undefined;
    if (item !== undefined) {
      const list = fittedList(found, item);
      value[key] = list.value;
      issues.push(...list.issues.map(issue => ({ ...issue, path: [key, ...issue.path] })));
      continue;
    }
    if (found === undefined && isOptional(schema)) continue;
    const parsed = schema.safeParse(shape.texts.has(key) ? shownText(found) : found);
    if (parsed.success) {
      value[key] = parsed.data;
      if (shape.texts.has(key) && parsed.data !== found) issues.push(tooLong(key, found));
      continue;
    }
    issues.push(...parsed.error.issues.map(issue => issueFrom(issue, found, [key])));
    if (isOptional(schema)) continue;
    if (fallback !== undefined && Object.hasOwn(fallback, key)) value[key] = fallback[key];
    else whole = false;
  }
  return { value: whole ? value : undefined, issues };
}

function fittedList(raw: unknown, item: Shape): Fitted {
  if (!isPlain(raw)) {
    return {
      value: {},
      issues: [{ code: 'notAList', path: [], value: raw, message: 'A list is missing here.' }],
    };
  }
  const known = rememberedLists.get(raw);
  if (known?.shape === item) return known.result;
  const value: Plain = {};
  const issues: Issue[] = [];
  for (const [id, inner] of Object.entries(raw)) {
    const one: Fitted = isPlain(inner)
      ? fitted(inner, item)
      : {
          value: undefined,
          issues: [
            { code: 'notAnItem', path: [], value: inner, message: 'This is not an item of the list.' },
          ],
        };
    if (one.value !== undefined && id.length > 0 && id.length <= 64 && id !== '__proto__')
      value[id] = one.value;
    issues.push(...one.issues.map(issue => ({ ...issue, path: [id, ...issue.path] })));
  }
  const result = { value, issues };
  rememberedLists.set(raw, { shape: item, result });
  return result;
}

export const shownText = (text: unknown): unknown =>
  typeof text === 'string' && text.length > longTextLimit ? text.slice(0, longTextLimit) : text;

const tooLong = (key: string, value: unknown): Issue => ({
  code: 'tooLong',
  path: [key],
  value,
  message: `Only the first ${longTextLimit} characters are shown.`,
});

interface SchemaIssue {
  readonly code?: string | undefined;
  readonly path: readonly PropertyKey[];
  readonly message: string;
}

function issueFrom(issue: SchemaIssue, root: unknown, prefix: readonly string[]): Issue {
  let value = root;
  for (const key of issue.path)
    value = isPlain(value) || Array.isArray(value) ? (value as Plain)[key as string] : undefined;
  return {
    code: issue.code ?? 'invalid',
    path: [...prefix, ...issue.path.map(String)],
    value,
    message: issue.message,
  };
}
