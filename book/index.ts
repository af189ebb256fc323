// The face of the book for the other rooms.
export * from './blank/empty.ts';
export * from './documents/drill.ts';
export * from './documents/game.ts';
export * from './documents/ids.ts';
export * from './documents/issue.ts';
export * from './documents/kinds.ts';
export * from './documents/order.ts';
export * from './documents/practice.ts';
export * from './documents/team.ts';
export * from './film/film-hash.ts';
export * from './ydoc/change.ts';
export * from './ydoc/move-item.ts';
export * from './ydoc/new-document.ts';
export * from './ydoc/root.ts';
export * from './ydoc/snapshot.ts';
export * from './ydoc/undo.ts';
