// The face of the book for the other rooms.
export * from './documents/drill.ts';
export * from './documents/game.ts';
export * from './documents/practice.ts';
export * from './documents/team.ts';
