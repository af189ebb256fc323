import * as Y from 'yjs';

/** Values of fields that somebody else wrote at the same time, and that lost. */
export interface Overruled {
  /**
   * Called for each change that an undo takes back, inside the undo. Where it was the value of a field, and another one had
   * been written beside it by somebody who did not know of it, that other value stands again: without this the field would be missing.
   */
  readonly giveBack: (item: Y.Item) => void;
  /** The newest notes, to be kept. */
  readonly noted: () => readonly OverruledValue[];
  /** Forgets what was noted so far for these. */
  readonly noteOnly: (values: readonly OverruledValue[]) => void;
  readonly onNoted: (listener: () => void) => void;
}

/** The name of a change and the value it had. */
export type OverruledValue = readonly [name: string, value: unknown];

const KEPT_VALUES = 500;

/**
 * Of two values written at once a document keeps one, and forgets the other at the end of the very message that brings them together. So
 * each is noted there, under the name of its place in the writer's list of changes, for as long as the document is open.
 */
export function overruledIn(ydoc: Y.Doc): Overruled {
  const values = new Map<string, unknown>();
  const listeners: (() => void)[] = [];
  ydoc.on('afterTransaction', transaction => {
    const countBefore = values.size;
    Y.iterateDeletedStructs(transaction, transaction.deleteSet, struct => {
      if (!(struct instanceof Y.Item) || struct.parentSub === null) return;
      const knownTo = transaction.beforeState.get(struct.id.client) ?? 0;
      const isNew = struct.id.clock >= knownTo;
      const isField = isNew && struct.right !== null && struct.right.id.client !== struct.id.client;
      if (isField && isPlainContent(struct))
        values.set(nameOf(struct.lastId), struct.content.getContent()[0]);
    });
    if (values.size > countBefore) for (const listener of listeners) listener();
  });
  return {
    giveBack: item => {
      const { parent, parentSub } = item;
      if (parentSub === null || !(parent instanceof Y.Map) || parent._map.get(parentSub) !== item) return;
      for (let left = item.left; left !== null; left = left.left) {
        const name = nameOf(left.lastId);
        if (!values.has(name)) continue;
        parent.set(parentSub, values.get(name));
        return;
      }
    },
    noted: () => [...values].slice(-KEPT_VALUES),
    noteOnly: kept => {
      values.clear();
      for (const [name, value] of kept) values.set(name, value);
    },
    onNoted: listener => {
      listeners.push(listener);
    },
  };
}

const nameOf = ({ client, clock }: Y.ID): string => `${client} ${clock}`;

/** A value, and not an item of a list or a long text, which are merged and not overruled. */
const isPlainContent = ({ content }: Y.Item): boolean =>
  content instanceof Y.ContentAny || content instanceof Y.ContentJSON;
