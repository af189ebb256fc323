import type { Game } from '@icewright/book';
import type { FilmPoint, PinFit } from '@icewright/engine';
import type { FilmView } from '@icewright/picture';
import { useMemo, useRef, useState } from 'react';
import { knownFeet } from '../bodies/known-feet.ts';
import { UnderBodies } from '../bodies/under-bodies.tsx';
import { useBodies } from '../bodies/use-bodies.ts';
import { timeOfFrame } from '../frame-index.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import type { FilmTie } from './film-tie.ts';
import { frameSeen } from './frame-seen.ts';
import { MarkGrips } from './mark-grips.tsx';
import { type MarksTeam, marksAt, marksWords, type PictureTime } from './marks-at.ts';
import { previewOf } from './preview-of.ts';
import type { MarksDesk } from './use-marks-desk.ts';
import { useMarksHand } from './use-marks-hand.ts';

export interface MarksLayerProps {
  readonly game: Game;
  readonly film: string;
  readonly player: Player;
  readonly tie: FilmTie;
  readonly team: MarksTeam;
  readonly desk: MarksDesk;
  readonly filmPerScreen: number;
}

/** Marks over the picture, whether it moves or stands; while they are laid, the hand that lays them. */
export function MarksLayer(props: MarksLayerProps) {
  const { player, film, tie } = props;
  const frameIndex = usePlayerPart(player, frameSeen);
  const fit = frameIndex < 0 ? undefined : tie.fitAt(frameIndex);
  const { desk, game } = props;
  if (!fit || (!desk.isOpen && Object.keys(game.marks).length === 0)) return null;
  const picture = { film, frameIndex, filmTimeS: timeOfFrame(player.film.index, frameIndex) };
  return <TiedLayer {...props} fit={fit} picture={picture} />;
}

function TiedLayer({
  game,
  player,
  tie,
  team,
  desk,
  filmPerScreen,
  fit,
  picture,
}: MarksLayerProps & { readonly fit: PinFit; readonly picture: PictureTime }) {
  const svg = useRef<SVGSVGElement>(null);
  const { widthPx, heightPx } = player.film;
  const isStill = usePlayerPart(player, state => !state.playing && !state.onVideo);
  const [pointer, setPointer] = useState<FilmPoint>();
  // On a narrow picture the marks are smaller, or they would hide it.
  const unitPx = filmPerScreen * Math.max(0.62, Math.min(1, widthPx / filmPerScreen / 640));
  const view: FilmView = { fit, widthPx, heightPx, unitPx };
  const shownGame = useMemo(() => withInHand(game, desk.inHand), [game, desk.inHand]);
  const marks = marksAt(shownGame, picture, tie, fit, team);
  const preview = isStill ? previewOf(desk, game, picture, tie, view, pointer) : undefined;
  const drawn = preview ? [...marks, preview] : marks;
  const bodies = useBodies(player, picture.frameIndex, drawn, view, tie.rink, knownFeet(game, picture, fit));
  const hand = useMarksHand({ svg, desk, game, picture, player, tie, view, marks, setPointer });
  const isWorked = desk.isOpen && isStill;
  return (
    <svg
      ref={svg}
      className={`marks-layer${isWorked ? ' worked' : ''}${desk.kind ? ' putting' : ''}`}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      preserveAspectRatio="none"
      data-frame={picture.frameIndex}
      {...(isWorked
        ? {
            role: 'application',
            tabIndex: 0,
            'aria-label':
              'Marks on the picture. Tab goes from mark to mark; arrows move the crosshair or a mark, Enter puts down.',
            ...hand.events,
          }
        : { role: 'img', 'aria-label': marksWords(marks) })}
    >
      <title>Marks on the picture</title>
      <g className="marks-drawn">
        <UnderBodies marks={drawn} view={view} bodies={bodies} />
      </g>
      {isWorked && <MarkGrips marks={marks} game={game} desk={desk} view={view} />}
      {isWorked && hand.cross && <Cross at={hand.cross} unit={unitPx} />}
    </svg>
  );
}

function Cross({ at: { xPx, yPx }, unit }: { readonly at: FilmPoint; readonly unit: number }) {
  const [gap, arm] = [3 * unit, 16 * unit];
  const path = `M${xPx - arm} ${yPx}H${xPx - gap}M${xPx + gap} ${yPx}H${xPx + arm}M${xPx} ${yPx - arm}V${yPx - gap}M${xPx} ${yPx + gap}V${yPx + arm}`;
  return (
    <g className="marks-cross">
      <path className="under" d={path} strokeWidth={4 * unit} />
      <path d={path} strokeWidth={1.5 * unit} />
    </g>
  );
}

const withInHand = (game: Game, inHand: MarksDesk['inHand']): Game => {
  const mark = inHand && game.marks[inHand.id as keyof Game['marks']];
  return mark ? { ...game, marks: { ...game.marks, [inHand.id]: { ...mark, at: [...inHand.at] } } } : game;
};
