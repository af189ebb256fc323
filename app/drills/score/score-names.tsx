import { spotsOf } from '../route-writes.ts';
import { Grab } from './grab.tsx';
import { restacked } from './restack.ts';
import { letGo, type ScoreHand, staveNear } from './score-hand.ts';
import { goToNextActs } from './score-next.tsx';

/** Names are this wide before the staves begin, px. */
const NAME_PX = 60;

/** Who stands at the staves: pressed the spot is chosen, drawn up or down its stave lies elsewhere. */
export function ScoreNames({ score }: { readonly score: ScoreHand }) {
  const { layout, hand, chosen } = score;
  const { drill } = hand;
  return layout.staves.map((stave, index) => {
    const role = drill.spots[stave.spot]?.role ?? '';
    const isChosen = chosen.spotId === stave.spot && chosen.actId === null;
    const y = stave.zeroY - stave.pitchPx + 2;
    return (
      <Grab
        key={stave.spot}
        className={isChosen ? 'score-name is-chosen' : 'score-name'}
        name={`${role}, stave ${index + 1} of ${layout.staves.length}`}
        isPressed={isChosen}
        onPress={() => score.onChoose({ spotId: stave.spot, actId: null })}
        onDrag={() => {
          const { kept } = hand;
          score.onHold(true);
          return ({ dyPx }) => {
            const to = staveNear(layout, stave.zeroY - stave.pitchPx / 2 + dyPx)?.index ?? index;
            hand.hold(restacked(kept, stave.spot, to));
            score.onSay(`${role}: stave ${to + 1} of ${layout.staves.length}.`);
          };
        }}
        onDrop={() => letGo(score, true)}
        onCancel={() => letGo(score, false)}
        onKey={event => {
          if (event.key === '+' || event.key === 'Insert') {
            event.preventDefault();
            score.onChoose({ spotId: stave.spot, actId: null });
            goToNextActs();
            return;
          }
          const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
          if (step === undefined) return;
          event.preventDefault();
          event.stopPropagation();
          const writes = restacked(drill, stave.spot, index + step);
          if (writes.length === 0) return;
          hand.keep(writes);
          score.onSay(`${role}: stave ${index + step + 1} of ${spotsOf(drill).length}.`);
        }}
      >
        <rect className="hit" x={1} y={y} width={NAME_PX} height={stave.pitchPx - 2} />
      </Grab>
    );
  });
}
