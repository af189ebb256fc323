import { roleOf } from '../act-words.ts';
import { Grab } from './grab.tsx';
import type { ScoreHand } from './score-hand.ts';

const FROM_END_PX = 33;
const MIDDLE = 1.9;
const RADIUS_PX = 8;
const HIT_PX = { mouse: 14, finger: 44 } as const;

/** At the end of the stave of who is chosen: leads to the line of words with what comes next. */
export function ScoreNext({ score }: { readonly score: ScoreHand }) {
  const { layout, chosen, hand, forFingers } = score;
  const stave = layout.staves.find(each => each.spot === chosen.spotId);
  if (stave === undefined) return null;
  const x = layout.right + FROM_END_PX;
  const y = stave.zeroY - (stave.isLineAlone ? 0 : stave.pitchPx / 2 / MIDDLE);
  const sizePx = HIT_PX[forFingers ? 'finger' : 'mouse'];
  return (
    <Grab
      className="score-next"
      name={`What ${roleOf(hand.drill, stave.spot)} does next`}
      onPress={goToNextActs}
    >
      <rect className="hit" x={x - sizePx / 2} y={y - sizePx / 2} width={sizePx} height={sizePx} />
      <circle className="shown" cx={x} cy={y} r={RADIUS_PX} />
      <path className="plus" d={`M${x - 4} ${y}H${x + 4}M${x} ${y - 4}V${y + 4}`} />
    </Grab>
  );
}

/** To the line of words below the ice, once it speaks of who was chosen just now. */
export const goToNextActs = (): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.hand-line .add-acts button')?.focus());
};
