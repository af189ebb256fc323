import * as Y from 'yjs';
import type { Shape } from '../documents/shape.ts';

export type Plain = Record<string, unknown>;

/**
 * A Y.Map of one item with all its lists and texts inside from birth. If two people made the same inner map later,
 * each on their own, a merge would keep one and lose the other.
 */
export function builtItem(value: Plain, shape: Shape): Y.Map<unknown> {
  const map = new Y.Map<unknown>();
  fill(map, value, shape);
  return map;
}

export function fill(map: Y.Map<unknown>, value: Plain, shape: Shape): void {
  for (const [key, item] of shape.lists) map.set(key, builtList((value[key] ?? {}) as Plain, item));
  for (const key of shape.texts) map.set(key, new Y.Text((value[key] ?? '') as string));
  for (const [key, field] of Object.entries(value)) {
    if (!shape.lists.has(key) && !shape.texts.has(key)) map.set(key, field);
  }
}

function builtList(value: Plain, item: Shape): Y.Map<unknown> {
  const list = new Y.Map<unknown>();
  for (const [id, inner] of Object.entries(value)) list.set(id, builtItem(inner as Plain, item));
  return list;
}
