import type { Finding, Run } from '@icewright/engine';
import { drawFlag, FLAG_M, type FlagWay, flagMiddle, USUAL_WAY } from '../ice/things.ts';
import type { Pen } from '../pen/pen.ts';
import type { ScoreLayout } from './score-layout.ts';
import { pointOn } from './score-puck.ts';

const PX_A_METRE = 9.5;

/** Short poles first: a flag belongs to its own stave. */
const WAYS: readonly FlagWay[] = [0.9, 1.4, 2].flatMap(poles =>
  ([1, -1] as const).flatMap(up => ([1, -1] as const).map((side): FlagWay => ({ side, up, poles }))),
);

/** Findings at their time on the stave of whom they speak, with the number they have on the ice. */
export const drawScoreFlags = (
  pen: Pen,
  findings: readonly Finding[],
  run: Run,
  layout: ScoreLayout,
): void => {
  const taken: { readonly x: number; readonly y: number }[] = [];
  findings.forEach((finding, index) => {
    const spot = finding.spots[0] ?? layout.staves[0]?.spot;
    const at = spot && pointOn(layout, run, spot, Math.min(finding.timeS, run.durationS));
    if (!at) return;
    const middleOf = (way: FlagWay) => {
      const middle = flagMiddle(way, PX_A_METRE);
      return { x: at.x + middle.x, y: at.y + middle.y };
    };
    const free = WAYS.filter(way => isInside(middleOf(way), layout));
    const way =
      free.find(each => taken.every(other => isApart(other, middleOf(each)))) ?? free[0] ?? USUAL_WAY;
    taken.push(middleOf(way));
    pen.place({ x: at.x, y: at.y, scale: PX_A_METRE, k: 1 }, () =>
      drawFlag(pen, { xM: 0, yM: 0 }, index + 1, finding.weight, way),
    );
  });
};

const isInside = (middle: { readonly x: number; readonly y: number }, layout: ScoreLayout): boolean =>
  middle.x > layout.left &&
  middle.x < layout.right + PX_A_METRE &&
  middle.y > layout.top &&
  middle.y < layout.ruleY;

const isApart = (
  one: { readonly x: number; readonly y: number },
  other: { readonly x: number; readonly y: number },
): boolean =>
  Math.abs(one.x - other.x) > FLAG_M.width * PX_A_METRE + 1 ||
  Math.abs(one.y - other.y) > FLAG_M.height * PX_A_METRE + 1;
