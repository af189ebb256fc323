import type { Game, Mark } from '@icewright/book';
import { type FilmPoint, type Id, iceFromFilm } from '@icewright/engine';
import { type FilmView, pointOnFilm } from '@icewright/picture';
import { type RefObject, useRef, useState } from 'react';
import { arrowOf, pixelsOf } from '../key-steps.ts';
import type { Player } from '../player.ts';
import type { FilmTie } from './film-tie.ts';
import { isWhole, placeAt, REACH_PX, standingAt, whenSeen } from './lay-mark.ts';
import { type MarkPlace, placeNow } from './mark-places.ts';
import type { PictureTime, SeenMark } from './marks-at.ts';
import { movedOnIce } from './move-on-ice.ts';
import { isEnough, type MarksDesk, movedPlaces } from './use-marks-desk.ts';

interface HandAsk {
  readonly svg: RefObject<SVGSVGElement | null>;
  readonly desk: MarksDesk;
  readonly game: Game;
  readonly picture: PictureTime;
  readonly player: Player;
  readonly tie: FilmTie;
  readonly view: FilmView;
  readonly marks: readonly SeenMark[];
  readonly setPointer: (at: FilmPoint | undefined) => void;
}

interface Grip {
  readonly markId?: string;
  readonly place?: number;
  readonly from: FilmPoint;
  moved: boolean;
}

/** Laying, picking and moving marks by pointer, finger and keys. */
export const useMarksHand = (ask: HandAsk) => {
  const { svg, desk, game, picture, view, marks, tie } = ask;
  const grip = useRef<Grip>(undefined);
  const [cross, setCross] = useState<FilmPoint>();
  const filmPoint = (event: { clientX: number; clientY: number }): FilmPoint => {
    const box = svg.current!.getBoundingClientRect();
    return {
      xPx: within(((event.clientX - box.left) / box.width) * view.widthPx, view.widthPx),
      yPx: within(((event.clientY - box.top) / box.height) * view.heightPx, view.heightPx),
    };
  };
  const meant = (at: FilmPoint) =>
    placeAt(view.fit, at, standingAt(game, picture, tie), REACH_PX * view.unitPx);

  const finish = (laid: readonly MarkPlace[]) => {
    const { kind } = desk;
    if (!kind) return;
    const when = whenSeen(laid, game, picture, ask.player.film.index, tie);
    const id = desk.write.add({ film: picture.film as Id<'film'>, kind, at: [...laid], text: '', ...when });
    desk.take(undefined);
    desk.choose(id);
  };
  const lay = (at: FilmPoint) => {
    const { kind, laid } = desk;
    if (!kind) return;
    // A zone is closed by its first corner, or by pressing its last one once more.
    const isAt = (corner: MarkPlace | undefined) => {
      const px =
        corner && pointOnFilm(view, placeNow(corner, game, picture.filmTimeS, tie)?.atM ?? corner.atM);
      return px !== undefined && Math.hypot(px.xPx - at.xPx, px.yPx - at.yPx) < CLOSE_PX * view.unitPx;
    };
    const closes = isAt(laid[0]) || isAt(laid[laid.length - 1]);
    if (kind === 'zone' && closes && isWhole(kind, laid.length)) return finish(laid);
    const place = meant(at);
    if (!place) return;
    const next = [...laid, place];
    // A ghost on the bare ice is whole with one place; on a skater it waits for where he should have been.
    const isDone = isEnough(kind, next.length) || (kind === 'ghost' && !place.track && !place.placed);
    if (isDone) finish(next);
    else desk.setLaid(next);
  };
  const moved = (
    id: string,
    placeIndex: number | undefined,
    from: FilmPoint,
    to: FilmPoint,
  ): MarkPlace[] | undefined => {
    const mark = game.marks[id as Id<'mark'>];
    if (!mark) return undefined;
    const index = placeIndex ?? (mark.at.length === 1 ? 0 : undefined);
    if (index !== undefined) {
      const place = meant(to);
      return place && mark.at.map((one, i) => (i === index ? place : one));
    }
    const [a, b] = [iceFromFilm(view.fit, from), iceFromFilm(view.fit, to)];
    if (a.kind === 'none' || b.kind === 'none') return undefined;
    return movedPlaces(mark.at, { xM: b.atM.xM - a.atM.xM, yM: b.atM.yM - a.atM.yM });
  };

  const down = (event: React.PointerEvent) => {
    if (event.button !== 0) return;
    const at = filmPoint(event);
    setCross(undefined);
    svg.current?.setPointerCapture(event.pointerId);
    const { id, place } = desk.kind ? { id: undefined, place: undefined } : markOf(event.target);
    grip.current = {
      from: at,
      moved: false,
      ...(id === undefined ? {} : { markId: id }),
      ...(place === undefined ? {} : { place }),
    };
    if (id) desk.choose(id);
    else if (desk.kind) ask.setPointer(at);
    else desk.choose(undefined);
  };
  const move = (event: React.PointerEvent) => {
    const at = filmPoint(event);
    if (desk.kind) ask.setPointer(at);
    const held = grip.current;
    if (!held) return;
    held.moved ||= Math.hypot(at.xPx - held.from.xPx, at.yPx - held.from.yPx) > 3 * view.unitPx;
    if (!held.markId || !held.moved) return;
    const places = moved(held.markId, held.place, held.from, at);
    if (places) desk.hold({ id: held.markId, at: places });
  };
  const up = (event: React.PointerEvent) => {
    const held = grip.current;
    grip.current = undefined;
    if (!held) return;
    const at = filmPoint(event);
    if (held.markId) {
      const places = held.moved && moved(held.markId, held.place, held.from, at);
      desk.hold(undefined);
      if (places) desk.write.set(held.markId, { at: places });
      return;
    }
    if (!desk.kind) return;
    const dragged = Math.hypot(at.xPx - held.from.xPx, at.yPx - held.from.yPx) > DRAG_PX * view.unitPx;
    // Two places may be drawn in one pull.
    if (dragged && isEnough(desk.kind, 2) && desk.laid.length === 0) {
      const [from, to] = [meant(held.from), meant(at)];
      if (from && to) finish(isEnough(desk.kind, 1) ? [to] : [from, to]);
    } else lay(at);
  };
  const key = (event: React.KeyboardEvent) => {
    const arrow = arrowOf(event.key);
    const { id, place } = markOf(event.target);
    const mark = id ? game.marks[id as Id<'mark'>] : undefined;
    const seen = marks.find(one => one.id === id);
    if (arrow && mark && id && seen) {
      event.preventDefault();
      const at = nudged(mark, seen, place, arrow, event.shiftKey ? 1 : 0.1, view);
      desk.write.set(id, { at }, 'keys');
    } else if (arrow) {
      event.preventDefault();
      const step = pixelsOf(event, 12);
      const from = cross ?? { xPx: view.widthPx / 2, yPx: 0.6 * view.heightPx };
      const at = {
        xPx: within(from.xPx + arrow[0] * step, view.widthPx),
        yPx: within(from.yPx + arrow[1] * step, view.heightPx),
      };
      setCross(at);
      if (desk.kind) ask.setPointer(at);
    } else if (event.key === 'Enter') {
      event.preventDefault();
      if (id && !desk.kind) desk.choose(id);
      else if (desk.kind === 'zone' && isWhole('zone', desk.laid.length) && !cross) finish(desk.laid);
      else lay(cross ?? { xPx: view.widthPx / 2, yPx: 0.6 * view.heightPx });
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && id) {
      event.preventDefault();
      desk.write.remove(id);
      desk.choose(undefined);
      svg.current?.focus();
    } else if (event.key === 'Escape') {
      event.preventDefault();
      event.stopPropagation();
      setCross(undefined);
      if (desk.laid.length > 0) desk.setLaid([]);
      else if (desk.kind) desk.take(undefined);
      else if (desk.chosen) desk.choose(undefined);
      else desk.setOpen(false);
    }
  };
  return {
    cross,
    events: {
      onPointerDown: down,
      onPointerMove: move,
      onPointerUp: up,
      onPointerCancel: () => {
        grip.current = undefined;
        desk.hold(undefined);
      },
      onPointerLeave: () => ask.setPointer(undefined),
      onKeyDown: key,
    },
  };
};

/** Moved along the ice by keys; what hung on a skater lies on the ice from now on, where it was seen. */
const nudged = (
  mark: Mark,
  seen: SeenMark,
  placeIndex: number | undefined,
  arrow: readonly [number, number],
  byM: number,
  view: FilmView,
): MarkPlace[] =>
  mark.at.map((place, i) =>
    placeIndex === undefined || placeIndex === i
      ? { atM: movedOnIce(view.fit, seen.placesM[i] ?? place.atM, arrow, byM) }
      : place,
  );

const markOf = (target: EventTarget | null): { id?: string | undefined; place?: number | undefined } => {
  const found = target instanceof Element ? target.closest<SVGElement>('[data-mark]') : null;
  const { mark, place } = found?.dataset ?? {};
  return { id: mark, place: place === undefined ? undefined : Number(place) };
};

const within = (value: number, most: number): number => Math.max(0, Math.min(most, value));

const CLOSE_PX = 14;
/** A press that went so far was a pull. */
const DRAG_PX = 18;
