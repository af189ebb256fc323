import type { ActId, Finding } from '@icewright/engine';
import { memo } from 'react';
import type { Lengths } from '../parts/figures.ts';
import { ActsPanel } from './acts-panel.tsx';
import type { Chosen } from './chosen.ts';
import { FindingsPanel } from './findings/findings-panel.tsx';
import { flowFindings } from './findings/flow-findings.ts';
import type { WhoIsHere } from './flow/use-flow.ts';
import type { Seen } from './use-studio.ts';

/** What is found in the drill, and what the chosen spot does. */
export const StudioPanels = memo(function StudioPanels(props: {
  readonly seen: Seen;
  readonly isHolding: boolean;
  readonly findings: readonly Finding[];
  readonly here: WhoIsHere;
  readonly chosen: Chosen;
  readonly flag: number | null;
  readonly lengths: Lengths;
  readonly onLook: (finding: Finding, number: number) => void;
  readonly onChoose: (chosen: Chosen) => void;
  readonly onGone: () => void;
}) {
  const { seen, chosen, lengths, onChoose } = props;
  const { hand } = seen;
  const { spotId, actId } = chosen;
  const isStill =
    Object.keys(hand.drill.games).length === 0 &&
    Object.values(hand.drill.spots).every(spot => Object.keys(spot.acts).length === 0);
  return (
    <>
      <FindingsPanel
        hand={hand}
        isHolding={props.isHolding}
        rink={seen.rink}
        findings={props.findings}
        issues={seen.issues}
        isStale={seen.isStale}
        isStill={isStill}
        lengths={lengths}
        chosen={props.flag}
        more={flowFindings(props.here)}
        onLook={props.onLook}
      />
      {spotId !== null && (
        <ActsPanel
          hand={hand}
          spotId={spotId}
          actId={actId}
          lengths={lengths}
          onChooseAct={(act: ActId | null) => onChoose({ spotId, actId: act })}
          onGone={props.onGone}
        />
      )}
    </>
  );
});
