import type { Drill } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import { drawDrill, drawUpright, rinkViewBox, svgParts } from '@icewright/picture';
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
