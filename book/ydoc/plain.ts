import * as Y from 'yjs';
import type { Plain } from './build.ts';

/** Which types changed, those that hold them included: a transaction's `changedParentTypes`. */
export type ChangedTypes = Pick<Y.Transaction['changedParentTypes'], 'has'>;
type ChangedType = Parameters<ChangedTypes['has']>[0];

/**
 * A Y.Map as plain values, keeping the identity of every part that equals the same part of `previous`. With `changed`, all
 * that changed since `previous`, only those parts are read.
 */
export function plainOf(map: Y.Map<unknown>, previous: unknown, changed?: ChangedTypes): Plain {
  const before = isPlain(previous) ? previous : null;
  if (
    before !== null &&
    changed &&
    readFrom.get(before) === map &&
    !changed.has(map as unknown as ChangedType)
  )
    return before;
  const out: Plain = {};
  let same = before !== null;
  let count = 0;
  map.forEach((value, key) => {
    // Written by nobody's screen; as a key of a plain object it would change what the object is.
    if (key === '__proto__') return;
    const was = before !== null && Object.hasOwn(before, key) ? before[key] : undefined;
    const now = plainValue(value, was, changed);
    if (now !== was) same = false;
    out[key] = now;
    count += 1;
  });
  const plain = same && Object.keys(before!).length === count ? before! : out;
  readFrom.set(plain, map);
  return plain;
}

/**
 * The Y.Map that a value was last read from. What an undo or a second write puts in a map's place is another one, and a
 * transaction does not call a type changed that is new in it.
 */
const readFrom = new WeakMap<Plain, Y.Map<unknown>>();

function plainValue(value: unknown, was: unknown, changed: ChangedTypes | undefined): unknown {
  if (value instanceof Y.Map) return plainOf(value, was, changed);
  if (value instanceof Y.Text) return value.toString();
  if (value instanceof Y.AbstractType) return value.toJSON();
  return shared(value, was);
}

/** `previous` when it equals `value`, part by part. */
export function shared(value: unknown, previous: unknown): unknown {
  return isSame(value, previous) ? previous : value;
}

export function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every(key => Object.hasOwn(b, key) && isSame((a as Plain)[key], (b as Plain)[key]))
  );
}

/** A copy of our own, with fields that are `undefined` left away; a value of a caller may be changed later by it. */
export const ownCopy = <Value>(value: Value): Value =>
  value === undefined ? value : (JSON.parse(JSON.stringify(value)) as Value);

export const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
