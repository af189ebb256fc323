import * as Y from 'yjs';
import type { Shape } from '../documents/shape.ts';
import { builtItem, type Plain } from './build.ts';
import { isSame } from './plain.ts';
import { editText } from './text.ts';

/** Changes to Y.Maps that touch only what differs; values are checked before they come here. */

export function writeField(map: Y.Map<unknown>, shape: Shape, key: string, value: unknown): void {
  const found = map.get(key);
  if (shape.texts.has(key) && found instanceof Y.Text) editText(found, value as string);
  else if (shape.texts.has(key)) map.set(key, new Y.Text(value as string));
  else if (!isSame(found, value)) map.set(key, value);
}

export function writeItem(list: Y.Map<unknown>, id: string, value: Plain, shape: Shape): void {
  const found = list.get(id);
  if (!(found instanceof Y.Map) || found.get('kind') !== value.kind) {
    list.set(id, builtItem(value, shape));
    return;
  }
  for (const key of [...found.keys()]) {
    // A field this version does not know may be a newer one's: left alone.
    const known = shape.fields === null || Object.hasOwn(shape.fields, key);
    if (known && !Object.hasOwn(value, key) && !shape.lists.has(key)) found.delete(key);
  }
  for (const [key, field] of Object.entries(value)) {
    const item = shape.lists.get(key);
    const inner = found.get(key);
    if (item === undefined) writeField(found, shape, key, field);
    else if (inner instanceof Y.Map) writeList(inner, field as Plain, item);
  }
}

export function writeList(list: Y.Map<unknown>, value: Plain, item: Shape): void {
  for (const id of [...list.keys()]) if (!Object.hasOwn(value, id)) list.delete(id);
  for (const [id, inner] of Object.entries(value)) writeItem(list, id, inner as Plain, item);
}
