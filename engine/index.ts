// The face of the engine for the other rooms. Nothing inside the engine imports it.
export * from './drill/drill.ts';
export * from './drill/run-result.ts';
export * from './habit/standard.ts';
export * from './pass/pass-parts.ts';
export * from './puck/bounce.ts';
export * from './puck/path.ts';
export * from './puck/path-parts.ts';
export * from './puck/puck-model.ts';
export * from './puck/puck-rows.ts';
export * from './puck/rim.ts';
export * from './puck/saucer.ts';
export * from './puck/slide.ts';
export * from './rink/lines.ts';
export * from './units/ends.ts';
export * from './units/ids.ts';
export * from './units/points.ts';
export * from './units/provenance.ts';
