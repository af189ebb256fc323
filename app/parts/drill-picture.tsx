import type { Drill, RinkChoice } from '@icewright/book';
import { type Lengths, rinkOf } from '@icewright/engine';
import { drawDrill, drawRink, drawUpright, rinkViewBox, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import { Drawn } from './drawn.tsx';
import { findRun } from './played-drill.ts';

/** Small drawings have larger marks; the sheet stays true. */
const SMALL = { k: 2.05, thinFloor: 0.16 } as const;
const POSTCARD = { k: 1.35, thinFloor: 0.11 } as const;

/** A drill small: on end over the time of a practice, or lying in a list. */
export function DrillPicture(props: {
  readonly drill: Drill;
  readonly upright: boolean;
  readonly idPrefix: string;
  /** Larger than in a plan, so its marks need not grow as much. */
  readonly postcard?: boolean;
  readonly lengths: Lengths;
}) {
  const { drill, upright, idPrefix, postcard, lengths } = props;
  const { markup, viewBox } = useMemo(() => {
    const rink = rinkOf(drill.rink);
    const run = findRun(drill);
    return {
      viewBox: rinkViewBox(rink, upright).join(' '),
      markup: svgParts(
        pen => {
          const draw = () =>
            drawDrill(pen, drill, rink, {
              ...(run && { run }),
              level: drill.level,
              ticks: false,
              findings: [],
              lengths,
            });
          if (upright) drawUpright(pen, draw);
          else draw();
        },
        { ...(postcard ? POSTCARD : SMALL), idPrefix },
      ),
    };
  }, [drill, upright, idPrefix, postcard, lengths]);
  return (
    <Drawn markup={markup} viewBox={viewBox} label={`The drill ${drill.title}`} className="ice-svg small" />
  );
}

/** The sheet on end without a drill: it names the thirds beside the plan. */
export function BareSheet({ rink: choice }: { readonly rink: RinkChoice }) {
  const { markup, viewBox } = useMemo(() => {
    const rink = rinkOf(choice);
    return {
      viewBox: rinkViewBox(rink, true).join(' '),
      markup: svgParts(pen => drawUpright(pen, () => drawRink(pen, rink)), SMALL),
    };
  }, [choice]);
  return <Drawn markup={markup} viewBox={viewBox} label="The sheet on end" className="ice-svg small" />;
}
