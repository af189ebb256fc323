import type { Drill } from '@icewright/book';
import type { Finding, Lengths, Rink, Run } from '@icewright/engine';
import { drawDrillOnly, svgPieces, UPRIGHT_RAD } from '@icewright/picture';

/** The drill as the pen draws it, without the sheet below it, in pieces that stand beside each other; turned by who shows it. */
export function drillMarkup(of: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly run: Run | null;
  readonly findings: readonly Finding[];
  readonly isUpright: boolean;
  readonly lengths: Lengths;
}): readonly string[] {
  return svgPieces(
    pen =>
      drawDrillOnly(pen, of.drill, of.rink, {
        ...(of.run === null ? {} : { run: of.run }),
        findings: of.findings,
        goalieWays: true,
        level: of.drill.level,
        lengths: of.lengths,
      }),
    // A centimetre is a seventh of a pixel here.
    { idPrefix: 'board', digits: 2, turnRad: of.isUpright ? UPRIGHT_RAD : 0 },
  );
}
