import { type FilmPoint, iceFromFilm } from '@icewright/engine';
import type { Desk, Thing, Tool } from './freeze-desk.ts';
import { type FreezeView, landmarksInPicture, nearestUnpinned } from './freeze-view.ts';

/** What a press on the frozen picture does, by what is in use. */
export const pressAt = (desk: Desk, view: FreezeView, at: FilmPoint, thing: Thing | undefined): void => {
  const { tool, write } = desk;
  if (tool.kind === 'pin') pin(desk, view, at, tool.landmark);
  else if (tool.kind === 'place') desk.choose(write.addSkater(tool.side, tool.who, at));
  else if (tool.kind === 'measure' && thing) measure(desk, thing.id, tool.first);
  else if (tool.kind === 'wanted') want(desk, view, at, thing);
  else if (tool.kind === 'puck') {
    write.setPuck(at);
    desk.choose('puck');
    // There is one puck: where it lies it is moved, not put down again.
    desk.setTool({ kind: 'look' });
  }
};

/**
 * Whether a press on something that lies there takes hold of it. What is being put down goes where the press is, whoever stands
 * beside it; a pin can be mended while pins are put down, unless the next mark is named and wants its own place.
 */
export const isCaught = (tool: Tool, thing: Thing): boolean => {
  if (tool.kind === 'pin') return thing.kind === 'pin' && tool.landmark === undefined;
  return tool.kind === 'look' || (tool.kind === 'measure' && thing.kind !== 'pin');
};

const pin = (desk: Desk, view: FreezeView, at: FilmPoint, named: string | undefined): void => {
  const landmark = named ?? closeLandmark(view, at);
  if (landmark === undefined) desk.setTool({ kind: 'pin', waitingAt: at });
  else {
    desk.write.addPin(landmark, at);
    desk.setTool({ kind: 'pin' });
  }
};

const measure = (desk: Desk, id: string, first: string | undefined): void => {
  if (first === undefined || first === id) desk.setTool({ kind: 'measure', first: id });
  else {
    desk.addPair(first, id);
    desk.setTool({ kind: 'measure' });
  }
};

const want = (desk: Desk, view: FreezeView, at: FilmPoint, thing: Thing | undefined): void => {
  const who = desk.tool.kind === 'wanted' ? desk.tool.who : undefined;
  if (thing?.kind === 'skater') desk.setTool({ kind: 'wanted', who: thing.id });
  else if (who !== undefined && view.fit) {
    const place = iceFromFilm(view.fit, at);
    if (place.kind === 'placed') desk.write.setGhost(who, place.atM);
  }
};

/** The marking that is surely meant: the nearest unpinned one, when the press falls on it. */
const closeLandmark = (view: FreezeView, at: FilmPoint): string | undefined => {
  const id = nearestUnpinned(view, at);
  const there = landmarksInPicture(view).find(one => one.id === id)?.at;
  return there && Math.hypot(there.xPx - at.xPx, there.yPx - at.yPx) <= SURELY_MEANT_PX ? id : undefined;
};
const SURELY_MEANT_PX = 16;
