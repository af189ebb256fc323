import type { Game } from '@icewright/book';
import type { FilmPoint } from '@icewright/engine';
import { type FilmView, outlineOfMark, pointOnFilm } from '@icewright/picture';
import { markSaid } from './mark-words.ts';
import type { SeenMark } from './marks-at.ts';
import type { MarksDesk } from './use-marks-desk.ts';

/** What can be grasped of the marks: each as a whole, and of the chosen one every place. */
export function MarkGrips({
  marks,
  game,
  desk,
  view,
}: {
  readonly marks: readonly SeenMark[];
  readonly game: Game;
  readonly desk: MarksDesk;
  readonly view: FilmView;
}) {
  const { unitPx } = view;
  return (
    <>
      {marks.map(mark => {
        const outline = outlineOfMark(mark, view);
        const kept = game.marks[mark.id as keyof Game['marks']];
        if (!kept || outline.lines.length === 0) return null;
        const isChosen = desk.chosen === mark.id;
        return (
          // biome-ignore lint/a11y/useSemanticElements: a mark in a drawing cannot be a button element
          <path
            key={mark.id}
            className={`mark-grip${outline.isArea ? ' area' : ''}${isChosen ? ' chosen' : ''}`}
            d={outline.lines.map(line => pathOf(line, outline.isArea)).join('')}
            strokeWidth={(outline.isArea ? 8 : 18) * unitPx}
            role="button"
            tabIndex={0}
            aria-pressed={isChosen}
            aria-label={`${markSaid(kept, game)}. Arrows move it by a tenth of a metre, with Shift by one; Delete takes it out.`}
            data-mark={mark.id}
          />
        );
      })}
      {marks
        .filter(mark => mark.id === desk.chosen && mark.placesM.length > 1)
        .map(mark =>
          mark.placesM.map((place, i) => {
            const at = pointOnFilm(view, place);
            return (
              at && (
                // biome-ignore lint/a11y/useSemanticElements: a handle in a drawing cannot be a button element
                <circle
                  // biome-ignore lint/suspicious/noArrayIndexKey: the places of a mark are their order
                  key={i}
                  className="mark-handle"
                  cx={at.xPx}
                  cy={at.yPx}
                  r={7 * unitPx}
                  strokeWidth={2 * unitPx}
                  role="button"
                  tabIndex={0}
                  aria-label={`Place ${i + 1} of ${mark.placesM.length}. Arrows move it.`}
                  data-mark={mark.id}
                  data-place={i}
                />
              )
            );
          }),
        )}
    </>
  );
}

const pathOf = (line: readonly FilmPoint[], isClosed: boolean): string =>
  `${line.map(({ xPx, yPx }, i) => `${i === 0 ? 'M' : 'L'}${xPx.toFixed(1)} ${yPx.toFixed(1)}`).join('')}${isClosed ? 'Z' : ''}`;
