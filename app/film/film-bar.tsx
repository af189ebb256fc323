import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { clockText, isPastEnd, type JumpTarget, jumpTarget } from './film-clock.ts';
import type { FilmLoop } from './film-loop.ts';
import { exactTimeOf, timeOfFrame } from './frame-index.ts';
import { isHeardAt, rateWords } from './play-rates.ts';
import type { Player } from './player.ts';
import { usePlayerState } from './use-player.ts';

/** Where the film is: clock and frame, a place to type either, and the acts of a player. */
export function FilmBar({ player, counts }: { readonly player: Player; readonly counts: string }) {
  const { frameIndex, playing, rate, stuck, muted, loop, knownToS } = usePlayerState(player);
  const { index, unheard } = player.film;
  const exact = exactTimeOf(index, frameIndex);
  const words = [
    playing && rateWords(rate),
    playing && !muted && !isHeardAt(rate) && 'no sound at this speed',
    loopWords(loop),
    knownToS !== undefined && `looked through to ${clockText(knownToS, 0)}`,
  ].filter(Boolean);
  return (
    <div className="film-bar">
      <p>
        <b data-testid="clock" title={`exactly ${exact.num}/${exact.den} s of the film`}>
          {clockText(timeOfFrame(index, frameIndex))}
        </b>{' '}
        <span className="q2">
          frame <span data-testid="frame">{frameIndex}</span>
          {words.map(one => `, ${one}`).join('')}
        </span>
      </p>
      <p className="film-acts">
        <Act onPress={() => player.step(-1)} label="Back one frame">
          <span aria-hidden="true">−1</span>
        </Act>
        <Act onPress={() => player.toggle()}>{playing ? 'Pause' : 'Play'}</Act>
        <Act onPress={() => player.step(1)} label="On one frame">
          <span aria-hidden="true">+1</span>
        </Act>
        <Act onPress={() => player.slower(1)} isOn={playing && Math.abs(rate) < 1} label="Slow motion">
          Slow
        </Act>
        <Act onPress={() => player.setLoop()} isOn={loop !== undefined} label={loopAct(loop)}>
          {loop && loop.toFrame === undefined ? 'to here' : 'Loop'}
        </Act>
        {unheard === undefined && (
          <Act onPress={() => player.mute(!muted)} isOn={!muted}>
            Sound
          </Act>
        )}
        <JumpField player={player} />
      </p>
      {stuck ? (
        <p className="warm film-counts" role="status">
          It does not play on from here: the file is damaged. Step on with the arrows, or jump over it.
        </p>
      ) : (
        <p className="q2 film-counts">{counts}</p>
      )}
      {unheard !== undefined && (
        <p className="q2 film-counts">
          It plays without its sound: that is {unheard}, which this browser does not play.
        </p>
      )}
      <p className="q3 nw film-keys">
        <kbd>J</kbd> <kbd>K</kbd> <kbd>L</kbd> play &nbsp;<kbd>←</kbd> <kbd>→</kbd> frame &nbsp;<kbd>[</kbd>{' '}
        <kbd>]</kbd> moment
      </p>
    </div>
  );
}

const loopAct = (loop: FilmLoop | undefined): string =>
  loop === undefined ? 'Loop from here' : loop.toFrame === undefined ? 'Loop to here' : 'Let go of the loop';

const loopWords = (loop: FilmLoop | undefined): string | undefined =>
  loop &&
  (loop.toFrame === undefined ? `loop from ${loop.fromFrame}` : `loop ${loop.fromFrame} to ${loop.toFrame}`);

function JumpField({ player }: { readonly player: Player }) {
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState(false);
  const [isPast, setPast] = useState(false);
  const { index } = player.film;
  const isAtEnd = usePlayerState(player).frameIndex === index.frameCount - 1;
  const go = async (target: JumpTarget) => {
    await ('timeS' in target ? player.jumpToTime(target.timeS) : player.jump(target.frameIndex));
    // A long film that is still looked through has waited for its end by now.
    setPast(isPastEnd(target, player.film.index));
  };
  return (
    <form
      className="jump"
      onSubmit={event => {
        event.preventDefault();
        const target = jumpTarget(typed);
        setWrong(target === undefined);
        setPast(false);
        if (target === undefined) return;
        void go(target);
        setTyped('');
        // The keys belong to the film again.
        (document.activeElement as HTMLElement | null)?.blur();
      }}
    >
      <input
        className="entry jump-entry"
        aria-label="Jump to a time or a frame"
        placeholder="12:34.5 or frame"
        value={typed}
        aria-invalid={wrong || undefined}
        onChange={event => {
          setTyped(event.target.value);
          setWrong(false);
          setPast(false);
        }}
      />
      {wrong && (
        <span className="cap warm" role="alert">
          A time such as 12:34.5, or a frame number.
        </span>
      )}
      {isPast && isAtEnd && (
        <span className="cap warm" role="status">
          The film ends at {clockText(index.endS, 1)}, frame {index.frameCount - 1}: this is its last picture.
        </span>
      )}
    </form>
  );
}
