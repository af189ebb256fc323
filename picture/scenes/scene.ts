import type { Drawing } from '../pen/pen.ts';

/** One picture of the gallery. A file in this folder whose default export is a scene is one; its name is its file's. */
export interface Scene {
  readonly title: string;
  readonly viewBox: readonly [x: number, y: number, width: number, height: number];
  readonly k?: number;
  readonly thinFloor?: number;
  /** Decimals of the numbers; px drawings need fewer. */
  readonly digits?: number;
  /** Shows what the engine computes, which may well improve: looked at, and not kept as a golden file. */
  readonly computed?: true;
  readonly draw: Drawing;
}
