import type { Game, Team } from '@icewright/book';
import type { CarryOption, Id, PassOption } from '@icewright/engine';
import { useDeferredValue, useMemo, useState } from 'react';
import { rinkOfSheet, sheetOfGame } from './fit-of-freeze.ts';
import { useFreezeAddress } from './freeze-address.ts';
import { type Desk, useDesk } from './freeze-desk.ts';
import { freezeViewOf } from './freeze-view.ts';
import { usePinsOffer } from './offer/use-pins-offer.ts';
import { type OptionsView, optionKey, optionsOf } from './options-of.ts';
import { usePeopleOffer } from './people/use-people-offer.ts';
import type { Player } from './player.ts';
import type { Shown } from './shown.ts';
import { usePlayerPart } from './use-player.ts';
import { withoutWanted } from './without-wanted.ts';

/** The freeze that is open in the film room: what it says on the ice, the passes there are, and whether its picture is the one shown. */
export function useOpenFreeze(
  gameId: string,
  game: Game,
  team: Team,
  partId: Id<'film'>,
  player: Player,
  freezeId: string | undefined,
  /** Somebody judges blind: where a skater should have been is what the first pair of eyes said. */
  isBlind = false,
) {
  const [shown, setShown] = useState<Shown>({ paint: false, ellipses: true });
  const rink = rinkOfSheet(sheetOfGame(game, team));
  const kept = freezeId ? game.freezes[freezeId as Id<'freeze'>] : undefined;
  const freeze = useMemo(() => (kept && isBlind ? withoutWanted(kept) : kept), [kept, isBlind]);
  useFreezeAddress(gameId, freeze && freezeId);
  const lying = useDesk(gameId, freeze && freezeId, freeze, game.tracks);
  const desk = lying && isBlind ? withNoWanted(lying) : lying;
  const view = useMemo(
    () => (desk ? freezeViewOf(desk.freeze, rink, team.lengths) : undefined),
    [desk?.freeze, rink, desk, team.lengths],
  );
  const settled = useDeferredValue(view);
  const options = useMemo(() => settled && optionsOf(settled, team.level), [settled, team.level]);
  const drawn = useMemo(() => drawnOf(options, shown), [options, shown]);
  const frozenAt = freeze !== undefined && freeze.film === partId ? freeze.frameIndex : undefined;
  // Asked as yes or no: the room must not be drawn again with every picture that plays.
  const isFrozen = usePlayerPart(player, state => state.frameIndex === frozenAt);
  const offer = usePeopleOffer(player, desk, view, sheetOfGame(game, team));
  const pinsOffer = usePinsOffer(gameId, game, player, desk, view, sheetOfGame(game, team));
  return { offer, pinsOffer, rink, freeze, desk, view, options, drawn, shown, setShown, frozenAt, isFrozen };
}

const withNoWanted = (desk: Desk): Desk => ({
  ...desk,
  tool: desk.tool.kind === 'wanted' ? { kind: 'look' } : desk.tool,
  noWanted: 'moments are being judged a second time',
});

/** Those that are pressed in the table; until one is, the best pass. */
const drawnOf = (options: OptionsView | undefined, shown: Shown): readonly (PassOption | CarryOption)[] => {
  if (options?.kind !== 'options') return [];
  const all = options.found.options;
  if (shown.options) return all.filter(one => shown.options?.includes(optionKey(one)));
  return all.filter(one => one.kind !== 'carry').slice(0, 1);
};
