import {
  drawFilmBeam,
  drawFilmMarks,
  drawFilmShade,
  drawMarksAbove,
  drawMarksOnIce,
  type FilmMark,
  type FilmView,
  svgParts,
} from '@icewright/picture';
import { useId } from 'react';
import type { BodiesBefore } from './use-bodies.ts';

/** Marks over a picture: what lies on the ice goes under who stands on it, where that is known; words stand above all. */
export function UnderBodies({
  marks,
  view,
  bodies,
}: {
  readonly marks: readonly FilmMark[];
  readonly view: FilmView;
  readonly bodies: BodiesBefore | undefined;
}) {
  const id = useId();
  const layer = (draw: typeof drawFilmMarks, part: string) => (
    <g
      // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
      dangerouslySetInnerHTML={{
        __html: svgParts(pen => draw(pen, marks, view), { digits: 1, idPrefix: `marks-${part}` }),
      }}
    />
  );
  if (!bodies) return layer(drawFilmMarks, 'all');
  const { href, leftPx, topPx, widthPx, heightPx } = bodies;
  return (
    <g data-bodies="before">
      <mask id={id} maskUnits="userSpaceOnUse" x={0} y={0} width={view.widthPx} height={view.heightPx}>
        <rect width={view.widthPx} height={view.heightPx} fill="white" />
        <image
          href={href}
          x={leftPx}
          y={topPx}
          width={widthPx}
          height={heightPx}
          preserveAspectRatio="none"
        />
      </mask>
      {layer(drawFilmShade, 'shade')}
      <g mask={`url(#${id})`}>
        {layer(drawFilmBeam, 'beam')}
        {layer(drawMarksOnIce, 'ice')}
      </g>
      {layer(drawMarksAbove, 'above')}
    </g>
  );
}
