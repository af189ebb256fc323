import { useEffect, useMemo, useRef } from 'react';
import { clockText } from '../film/film-clock.ts';
import { timeOfFrame } from '../film/frame-index.ts';
import { MarksShown } from '../film/marks/marks-shown.tsx';
import { Picture } from '../film/picture.tsx';
import { playTo } from '../film/play-to.ts';
import type { Player } from '../film/player.ts';
import { usePlayerPart } from '../film/use-player.ts';
import { Act } from '../parts/act.tsx';
import type { Editing } from '../shell/book.ts';
import { useKeys } from '../shell/keys.ts';
import { itemFramesOf } from './item-frames.ts';
import type { ShownFilm, ShownItem } from './shown-item.ts';

/** The stretch of one item: played as in the meeting, and set by the picture that is shown. */
export function ItemPicture({
  shown,
  player,
  editing,
}: {
  readonly shown: ShownFilm & Pick<ShownItem, 'id' | 'item'>;
  readonly player: Player;
  readonly editing: Editing;
}) {
  const { id, item, fromS, toS } = shown;
  const { index } = player.film;
  const frames = useMemo(() => itemFramesOf(shown, index), [shown, index]);
  const begin = frames.stop ?? shown.frameIndex;
  const letGo = useRef(() => {});
  // biome-ignore lint/correctness/useExhaustiveDependencies: another item is another picture; what is set of this one is not
  useEffect(() => {
    void player.jump(begin);
    return () => letGo.current();
  }, [player, id]);
  const frame = usePlayerPart(player, state => state.frameIndex);
  const playing = usePlayerPart(player, state => state.playing);
  const atS = timeOfFrame(index, frame);
  const at = (key: string) => ['items', id, key];
  const play = async () => {
    letGo.current();
    if (playing) return player.pause();
    if (frame < frames.first || frame >= frames.last) await player.jump(frames.first);
    const from = player.now().frameIndex;
    letGo.current = playTo(
      player,
      frames.stop !== undefined && from < frames.stop ? frames.stop : frames.last,
      () => {},
    );
  };
  const step = (by: number) => {
    letGo.current();
    player.step(by);
  };
  const set = {
    begin: () => editing.set(at('stretch'), { fromS: atS, toS }),
    end: () => editing.set(at('stretch'), { fromS, toS: atS }),
    stop: () =>
      editing.set(at('stop'), {
        frameIndex: frame,
        filmTimeS: atS,
        ...(item.stop?.seconds === undefined ? {} : { seconds: item.stop.seconds }),
      }),
  };
  const isLate = frame >= frames.last;
  const isEarly = frame <= frames.first;
  useKeys([
    { keys: 'Space', says: 'play the stretch', act: () => void play() },
    { keys: 'ArrowRight', says: 'one frame on', act: () => step(1) },
    { keys: 'ArrowLeft', says: 'one frame back', act: () => step(-1) },
    { keys: 'Shift+ArrowRight', says: 'ten frames on', act: () => step(10) },
    { keys: 'Shift+ArrowLeft', says: 'ten frames back', act: () => step(-10) },
    { keys: '[', says: 'the stretch begins here', act: () => isLate || set.begin() },
    { keys: ']', says: 'the stretch ends here', act: () => isEarly || set.end() },
    { keys: 's', says: 'the film stands here', act: () => set.stop() },
  ]);
  return (
    <section className="item-picture" aria-label="Its stretch of film">
      <Picture
        key={shown.part.hash}
        player={player}
        says="The stretch of this moment"
        over={unit => (
          <MarksShown gameId={shown.gameId} filmId={shown.partId} player={player} filmPerScreen={unit} />
        )}
      />
      <p className="item-bar">
        <b>{clockText(atS)}</b> <span className="q2">frame {frame}</span>
        <span className="item-bar-acts">
          <Act onPress={() => step(-1)} label="Back one frame">
            <span aria-hidden="true">−1</span>
          </Act>
          <Act onPress={() => void play()}>{playing ? 'Pause' : 'Play'}</Act>
          <Act onPress={() => step(1)} label="On one frame">
            <span aria-hidden="true">+1</span>
          </Act>
        </span>
      </p>
      <p className="item-bar-acts">
        <Act onPress={set.begin} notNow={isLate ? 'the stretch would end before it' : undefined}>
          Begins here <kbd>[</kbd>
        </Act>
        <Act onPress={set.stop}>
          Stands here <kbd>S</kbd>
        </Act>
        <Act onPress={set.end} notNow={isEarly ? 'the stretch would begin after it' : undefined}>
          Ends here <kbd>]</kbd>
        </Act>
      </p>
      <p className="q2">
        From {clockText(fromS)} to {clockText(toS)}
        {item.stretch === undefined ? ', as it was marked' : ', for this meeting'}
        {item.stop !== undefined &&
          (frames.stop === undefined
            ? '. It stands at no picture of this stretch'
            : `. Stands at ${clockText(item.stop.filmTimeS)}`)}
        .{' '}
        {item.stretch !== undefined && (
          <Act bare onPress={() => editing.remove(at('stretch'))}>
            As it was marked
          </Act>
        )}
      </p>
    </section>
  );
}
