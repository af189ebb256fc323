import type { Drill } from '@icewright/book';
import { type Finding, findingSentence, type Lengths } from '@icewright/engine';
import { findRun } from './played-drill.ts';

const HURTS: ReadonlySet<Finding['kind']> = new Set([
  'pathsCrossTooFast',
  'tooFastIntoBoards',
  'bodiesTouch',
  'throughNet',
  'shotAcrossGroup',
  'contactBelowAge',
]);

/** What the engine flags in a drill that may hurt somebody, as sentences for paper and for players. */
export const hurtingSentences = (drill: Drill, lengths: Lengths): readonly string[] =>
  (findRun(drill)?.findings ?? [])
    .filter(finding => HURTS.has(finding.kind))
    .map(finding => findingSentence(finding, drill, lengths));
