import type { Drill, RinkChoice } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { drawDrill, drawRink, drawUpright, rinkViewBox, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import { Drawn } from '../parts/drawn.tsx';

/** Small drawings have larger marks; the sheet stays true. */
const SMALL = { k: 2.05, thinFloor: 0.16 } as const;

/** A drill small: on end over the time of a practice, or lying in a list. */
export function DrillPicture(props: {
  readonly drill: Drill;
  readonly upright: boolean;
  readonly idPrefix: string;
}) {
  const { drill, upright, idPrefix } = props;
  const { markup, viewBox } = useMemo(() => {
    const rink = rinkOf(drill.rink);
    return {
      viewBox: rinkViewBox(rink, upright).join(' '),
      markup: svgParts(
        pen => {
          const draw = () => drawDrill(pen, drill, rink, { level: drill.level, ticks: false });
          if (upright) drawUpright(pen, draw);
          else draw();
        },
        { ...SMALL, idPrefix },
      ),
    };
  }, [drill, upright, idPrefix]);
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
