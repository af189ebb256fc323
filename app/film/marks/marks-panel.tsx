import type { Game } from '@icewright/book';
import { FILM_MARK_KINDS, type FilmMarkKind } from '@icewright/picture';
import { useEffect, useRef } from 'react';
import { Act } from '../../parts/act.tsx';
import { useKeys } from '../../shell/keys.ts';
import type { Player } from '../player.ts';
import { toPins } from '../to-pins.ts';
import { usePlayerPart } from '../use-player.ts';
import type { FilmTie } from './film-tie.ts';
import { MarkChosen } from './mark-chosen.tsx';
import { KIND_SAID, LIE_SAID, layingHint, NOT_TIED } from './mark-words.ts';
import type { MarksTeam } from './marks-at.ts';
import { MarksStrip } from './marks-strip.tsx';
import { StillActs } from './still-acts.tsx';
import type { MarksDesk } from './use-marks-desk.ts';

/** Under the picture while marks are laid: the kinds, when each is seen, and what the chosen one says. */
export function MarksPanel({
  gameId,
  game,
  film,
  player,
  tie,
  team,
  desk,
  title,
  onFreeze,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly film: string;
  readonly player: Player;
  readonly tie: FilmTie;
  readonly team: MarksTeam;
  readonly desk: MarksDesk;
  /** What a still of this picture is called. */
  readonly title: string;
  readonly onFreeze: () => void;
}) {
  const frameIndex = usePlayerPart(player, state => state.frameIndex);
  const isPlaying = usePlayerPart(player, state => state.playing);
  const fit = tie.fitAt(frameIndex);
  const notNow = isPlaying ? 'stop at a picture first' : fit ? undefined : NOT_TIED;
  const chosen = desk.chosen ? game.marks[desk.chosen as keyof Game['marks']] : undefined;
  const panel = useRef<HTMLElement>(null);
  useEffect(() => panel.current?.querySelector('button')?.focus({ preventScroll: true }), []);
  const take = (kind: FilmMarkKind) => {
    desk.take(desk.kind === kind ? undefined : kind);
    // What comes next is done on the picture, by keys too.
    document.querySelector<SVGElement>('.marks-layer.worked')?.focus({ preventScroll: true });
  };
  const toItsPins = () => {
    onFreeze();
    toPins();
  };
  useKeys([
    {
      keys: 'Escape',
      says: 'put the mark back, or close the marks',
      act: () =>
        desk.kind ? desk.take(undefined) : desk.chosen ? desk.choose(undefined) : desk.setOpen(false),
    },
    {
      keys: 'Delete',
      says: 'take the chosen mark out',
      act: () => {
        if (desk.chosen) desk.write.remove(desk.chosen);
        desk.choose(undefined);
      },
    },
  ]);
  return (
    <section className="marks-panel" aria-label="Marks on the picture" ref={panel}>
      {!fit && !isPlaying && (
        <p className="q2 marks-hint" role="status">
          {NOT_TIED} <Act onPress={toItsPins}>To its pins</Act>
        </p>
      )}
      <p className="marks-kinds">
        {FILM_MARK_KINDS.map(kind => (
          <Act key={kind} isOn={desk.kind === kind} notNow={notNow} onPress={() => take(kind)}>
            {KIND_SAID[kind]}
          </Act>
        ))}
        <StillActs game={game} film={film} player={player} tie={tie} team={team} title={title} />
        <Act bare onPress={() => desk.setOpen(false)}>
          Close the marks
        </Act>
      </p>
      {fit && (
        <p className="q2 marks-hint" role="status">
          {desk.kind ? layingHint(desk.kind, desk.laid.length) : ''}
        </p>
      )}
      {fit && !desk.kind && !chosen && <p className="q3">{LIE_SAID}</p>}
      {chosen && desk.chosen && (
        <MarkChosen
          id={desk.chosen}
          mark={chosen}
          gameId={gameId}
          game={game}
          player={player}
          tie={tie}
          lengths={team.lengths}
          desk={desk}
        />
      )}
      <MarksStrip game={game} film={film} player={player} desk={desk} />
    </section>
  );
}
