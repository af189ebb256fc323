import type { ActId, Finding } from '@icewright/engine';
import { memo } from 'react';
import type { Lengths } from '../parts/figures.ts';
import type { WhoIsHere } from '../parts/who-is-here.ts';
import { ActsPanel } from './acts-panel.tsx';
import type { Chosen } from './chosen.ts';
import { FindingsPanel } from './findings/findings-panel.tsx';
import { flowFindings } from './findings/flow-findings.ts';
import type { Wanted } from './findings/use-mend-effects.ts';
import type { Follow } from './follow.ts';
import type { People } from './people/people-of.ts';
import { useFollowed } from './use-follow.ts';
import type { ShownRep } from './use-studio.ts';

/** What is found in the drill, and what the chosen spot does. */
export const StudioPanels = memo(function StudioPanels(props: {
  readonly atRest: ShownRep;
  readonly follow: Follow<ShownRep>;
  readonly isHolding: boolean;
  readonly people: People;
  readonly here: WhoIsHere;
  readonly chosen: Chosen;
  readonly flag: number | null;
  readonly lengths: Lengths;
  readonly wanted: Wanted | null;
  readonly onLook: (finding: Finding, number: number) => void;
  readonly onChoose: (chosen: Chosen) => void;
  readonly onGone: () => void;
}) {
  const { chosen, lengths, onChoose } = props;
  const shown = useFollowed(props.follow, props.atRest);
  const { hand } = shown;
  const { spotId, actId } = chosen;
  const hasNoRep = Object.values(hand.drill.spots).every(spot => Object.keys(spot.acts).length === 0);
  const isGameAlone = hasNoRep && Object.keys(hand.drill.games).length > 0;
  return (
    <>
      <FindingsPanel
        hand={hand}
        isHolding={props.isHolding}
        people={props.people}
        rink={shown.rink}
        findings={shown.findings}
        issues={shown.issues}
        isStale={shown.isStale}
        isStill={hasNoRep && !isGameAlone}
        isGameAlone={isGameAlone}
        lengths={lengths}
        chosen={props.flag}
        wanted={props.wanted}
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
