import {
  boardsDistance,
  type CarryOption,
  type LevelId,
  levelOf,
  type OptionSkater,
  otherEnd,
  type PassOption,
  passOptions,
  puckModelOf,
  type SceneOptions,
} from '@icewright/engine';
import type { FreezeView } from './freeze-view.ts';

/** What whoever has the puck can do, or the one thing that is missing before it can be said. */
export type OptionsView =
  | { readonly kind: 'options'; readonly carrierId: string; readonly found: SceneOptions }
  | { readonly kind: 'none'; readonly says: string };

/**
 * Options of the carrier of a freeze, ours or theirs. Both teams skate like the team's level: a picture tells neither speeds
 * nor who they are. Goalies are no receivers.
 */
export const optionsOf = (view: FreezeView, level: LevelId): OptionsView => {
  const scene = view.ice?.scene;
  const puck = scene?.puck;
  const carrier = scene?.skaters.find(one => one.id === puck?.carrierId);
  if (!scene || !puck) return { kind: 'none', says: 'Place the puck to see where it can go.' };
  if (!carrier) return { kind: 'none', says: 'Say who has the puck to see where it can go.' };
  const { boards, layout } = view.rink;
  if (boardsDistance(boards, puck.atM) <= PUCK_CLEAR_M) {
    return {
      kind: 'none',
      says: 'The puck lies on the boards here, within its ±: passes from there are not computed.',
    };
  }
  const { model } = levelOf(level);
  const skaters = scene.skaters.filter(one => boardsDistance(boards, one.atM) > PUCK_CLEAR_M);
  if (!skaters.includes(carrier))
    return { kind: 'none', says: 'Whoever has the puck stands outside the boards here.' };
  const of = (side: 'us' | 'them', goalies: boolean): OptionSkater[] =>
    skaters
      .filter(one => one.side === side && (goalies || one.kind === 'skater' || one === carrier))
      .map(({ id, kind, atM }) => ({ id, kind, atM, model }));
  const other = carrier.side === 'us' ? 'them' : 'us';
  const found = passOptions({
    boards,
    puck: puckModelOf(),
    puckM: puck.atM,
    carrierId: carrier.id,
    us: of(carrier.side, false),
    them: of(other, true),
    attacks: carrier.side === 'us' ? scene.attacks : otherEnd(scene.attacks),
    blueLineXM: layout.blueLineInnerXM,
  });
  return { kind: 'options', carrierId: carrier.id, found };
};

/** The puck's own radius and a little: nearer to the boards its path cannot begin. */
const PUCK_CLEAR_M = 0.05;

export const optionKey = (option: PassOption | CarryOption): string =>
  option.kind === 'carry' ? 'carry' : `${option.kind}:${option.toId}`;

/** Where a pass goes: from the puck over the boards, if it uses them, to the meeting. */
export const legsOf = (view: FreezeView, option: PassOption | CarryOption) => {
  const from = view.ice?.scene.puck?.atM;
  if (!from) return [];
  if (option.kind === 'carry') return [from, option.endsM];
  const { pass } = option;
  return [from, ...(pass.kind === 'bank' ? pass.bounces.map(one => one.centreM) : []), pass.meetM];
};
