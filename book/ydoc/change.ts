import * as Y from 'yjs';
import { longTextLimit } from '../documents/fields.ts';
import type { Issue } from '../documents/issue.ts';
import { isOptional, type Shape, shapeOf } from '../documents/shape.ts';
import type { Plain } from './build.ts';
import { fitted } from './fit.ts';
import { isPlain, ownCopy, plainOf } from './plain.ts';
import { findKind, rootOf } from './root.ts';
import { editText } from './text.ts';
import { isOlder, upgrade, upgradedCopy } from './upgrade.ts';
import { writeField, writeItem, writeList } from './write.ts';

export type Path = readonly string[];

/** A change that would break the schema is refused and changes nothing. */
export type Changed =
  | { readonly kind: 'done' }
  | { readonly kind: 'refused'; readonly issues: readonly Issue[] };

/** Runs `fn` as one change of one person: one step of undo, one message on the line. */
export const transact = <Result>(ydoc: Y.Doc, origin: unknown, fn: () => Result): Result =>
  ydoc.transact(fn, origin);

/**
 * Puts `value` at `path`: a field, an inner part of a field, an item of a list or a whole list. An item that is there
 * already is changed field by field, so that others' changes to its other fields stay.
 */
export function setAt(ydoc: Y.Doc, path: Path, newValue: unknown, origin: unknown): Changed {
  const value = ownCopy(newValue);
  return changed(ydoc, origin, on => {
    const place = findPlace(on, path);
    if (place === null) return refused('noSuchPlace', path, value);
    const { map, shape, key, inner } = place;
    if (place.kind === 'item') return setItem(place, value, path);
    if (place.kind === 'list') return setList(place, value, path);
    const next = inner.length === 0 ? value : withInner(plainOf(map, undefined)[key], inner, value);
    const issues = issuesOfField(map, shape, key, next);
    if (issues.length > 0) return { kind: 'refused', issues: under(path, inner, issues) };
    writeField(map, shape, key, next);
    return done;
  });
}

/** Takes away an item of a list, or a field that may be absent. */
export function removeAt(ydoc: Y.Doc, path: Path, origin: unknown): Changed {
  return changed(ydoc, origin, on => {
    const place = findPlace(on, path);
    if (place === null || place.kind === 'list') return refused('noSuchPlace', path, undefined);
    const { map, shape, key, inner } = place;
    if (place.kind === 'item') {
      map.delete(key);
      return done;
    }
    if (inner.length > 0) {
      return setAt(
        on,
        path.slice(0, path.length - inner.length),
        withInner(map.get(key), inner, undefined),
        origin,
      );
    }
    const issues = issuesOfField(map, shape, key, undefined);
    if (issues.length > 0) return { kind: 'refused', issues: under(path, inner, issues) };
    map.delete(key);
    return done;
  });
}

/** Makes a long text say `newText` by its smallest change, so that two people can write in it at once. */
export function changeText(ydoc: Y.Doc, path: Path, newText: string, origin: unknown): Changed {
  return changed(ydoc, origin, on => {
    const place = findPlace(on, path);
    const text = place?.map.get(place.key);
    if (!(text instanceof Y.Text)) return refused('notAText', path, newText);
    if (newText.length > longTextLimit) return refused('tooLong', path, newText);
    editText(text, newText, longTextLimit);
    return done;
  });
}

/**
 * One change of one person. An older document is brought up first, in the same transaction; the change is tried on a
 * copy before that, so that a refused one leaves the original as it was.
 */
export function changed(ydoc: Y.Doc, origin: unknown, change: (on: Y.Doc) => Changed): Changed {
  return ydoc.transact(() => {
    if (!isOlder(ydoc)) return change(ydoc);
    const tried = change(upgradedCopy(ydoc));
    if (tried.kind === 'refused') return tried;
    upgrade(ydoc);
    return change(ydoc);
  }, origin);
}

interface Place {
  readonly kind: 'field' | 'item' | 'list';
  readonly map: Y.Map<unknown>;
  /** Of the object that holds the field; for an item its own; for a list that of its items. */
  readonly shape: Shape;
  readonly key: string;
  /** The rest of the path, inside a field that is one value. */
  readonly inner: Path;
}

function findPlace(ydoc: Y.Doc, path: Path): Place | null {
  const kind = findKind(ydoc);
  if (kind === null || path.length === 0 || path.includes('__proto__')) return null;
  let map = rootOf(ydoc);
  let shape = shapeOf(kind);
  for (let index = 0; ; index += 2) {
    const key = path[index]!;
    const item = shape.lists.get(key);
    if (item === undefined) {
      if (shape.fields !== null && !Object.hasOwn(shape.fields, key)) return null;
      return { kind: 'field', map, shape, key, inner: path.slice(index + 1) };
    }
    const list = map.get(key);
    if (!(list instanceof Y.Map)) return null;
    const id = path[index + 1];
    if (id === undefined) return { kind: 'list', map: list, shape: item, key, inner: [] };
    if (path.length === index + 2) return { kind: 'item', map: list, shape: item, key: id, inner: [] };
    const found = list.get(id);
    if (!(found instanceof Y.Map)) return null;
    map = found;
    shape = item;
  }
}

function setItem({ map, shape, key }: Place, value: unknown, path: Path): Changed {
  if (!isPlain(value) || key.length === 0 || key.length > 64) return refused('notAnItem', path, value);
  const { issues } = fitted(value, shape);
  if (issues.length > 0) return { kind: 'refused', issues: under(path, [], issues) };
  writeItem(map, key, value, shape);
  return done;
}

function setList({ map, shape }: Place, value: unknown, path: Path): Changed {
  if (!isPlain(value)) return refused('notAList', path, value);
  const issues = Object.entries(value).flatMap(([id, item]) =>
    isPlain(item)
      ? fitted(item, shape).issues.map(issue => ({ ...issue, path: [id, ...issue.path] }))
      : [{ code: 'notAnItem', path: [id], value: item, message: 'This is not an item of the list.' }],
  );
  if (issues.length > 0) return { kind: 'refused', issues: under(path, [], issues) };
  writeList(map, value, shape);
  return done;
}

/** What is wrong with `value` as the field `key` of this object; `undefined` asks whether it may be absent. */
function issuesOfField(map: Y.Map<unknown>, shape: Shape, key: string, value: unknown): readonly Issue[] {
  const schema = shape.fields?.[key];
  if (schema === undefined) {
    const { [key]: _, ...others } = plainOf(map, undefined);
    return fitted(value === undefined ? others : { ...others, [key]: value }, shape).issues;
  }
  if (value === undefined && isOptional(schema)) return [];
  const parsed = schema.safeParse(value);
  if (parsed.success) return [];
  return parsed.error.issues.map(issue => ({
    code: issue.code ?? 'invalid',
    path: [key, ...issue.path.map(String)],
    value,
    message: issue.message,
  }));
}

/** A copy of a value with one inner part replaced, or taken away for `undefined`. */
function withInner(value: unknown, inner: Path, part: unknown): unknown {
  const [key, ...rest] = inner;
  if (key === undefined) return part;
  const copy: Plain = Array.isArray(value)
    ? ([...value] as unknown as Plain)
    : isPlain(value)
      ? { ...value }
      : {};
  const next = withInner(copy[key], rest, part);
  if (next === undefined) delete copy[key];
  else copy[key] = next;
  return copy;
}

const done: Changed = { kind: 'done' };

/** Issues of a field start with its key; put the way to the object that holds it before. */
const under = (path: Path, inner: Path, issues: readonly Issue[]): Issue[] => {
  const isField = issues[0]?.path[0] === path[path.length - 1 - inner.length];
  const prefix = path.slice(0, path.length - inner.length - (isField ? 1 : 0));
  return issues.map(issue => ({ ...issue, path: [...prefix, ...issue.path] }));
};

const refused = (code: string, path: Path, value: unknown): Changed => ({
  kind: 'refused',
  issues: [{ code, path, value, message: `Nothing can be put at ${path.join('.')}.` }],
});
