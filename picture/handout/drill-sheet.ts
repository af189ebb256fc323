import type { Finding } from '@icewright/engine';
import type { DrillDrawn } from '../drill/draw-drill-at.ts';

/** One drill as it is handed out: everything resolved to words. */
export interface DrillSheet extends DrillDrawn {
  /** The line over the page: whose it is, the booklet, the day. Empty: no line. */
  readonly cover: string;
  readonly title: string;
  readonly says: string;
  readonly keyPoints: readonly string[];
  readonly figures: readonly { readonly name: string; readonly words: string }[];
  /** In the order of the flags on the drawing. */
  readonly findings: readonly { readonly weight: Finding['weight']; readonly words: string }[];
  /** Of this drill; the standing ones follow them. */
  readonly cautions: readonly string[];
}
