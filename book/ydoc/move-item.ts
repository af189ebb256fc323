import * as Y from 'yjs';
import { findRankBetween, inOrder } from '../documents/order.ts';
import { type Changed, changed, type Path } from './change.ts';
import { plainOf } from './plain.ts';
import { rootOf } from './root.ts';

/** Puts an item of the list at `listPath` to place `toIndex` (0 first, counted without it) by giving it a new rank. */
export function moveItem(ydoc: Y.Doc, listPath: Path, id: string, toIndex: number, origin: unknown): void {
  changed(ydoc, origin, (on): Changed => {
    const list = listPath.reduce<unknown>(
      (at, key) => (at instanceof Y.Map ? at.get(key) : undefined),
      rootOf(on),
    );
    if (!(list instanceof Y.Map) || !list.has(id)) return { kind: 'refused', issues: [] };
    const others = inOrder(plainOf(list, undefined) as Record<string, { rank: number }>).filter(
      ([other]) => other !== id,
    );
    const rank = findRankBetween(others[toIndex - 1]?.[1].rank, others[toIndex]?.[1].rank);
    if (rank !== null) {
      (list.get(id) as Y.Map<unknown>).set('rank', rank);
      return { kind: 'done' };
    }
    // No number fits between the neighbours: number the whole list anew.
    const ids = others.map(([other]) => other);
    ids.splice(toIndex, 0, id);
    for (const [index, each] of ids.entries()) (list.get(each) as Y.Map<unknown>).set('rank', index + 1);
    return { kind: 'done' };
  });
}
