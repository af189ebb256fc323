import type { Game, Track } from '@icewright/book';
import { type FoundWays, type HandMark, type Id, type LevelId, skatePowerOf } from '@icewright/engine';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { OpenFilm } from '../open-film.ts';
import { feetOffered } from './feet-offered.ts';
import { gapKey } from './hand-gaps.ts';
import type { Tied, TrackAsk, TrackSaid } from './track-messages.ts';
import { writeFollowed } from './track-writing.ts';

export type SkatersState =
  | { readonly kind: 'still' }
  | { readonly kind: 'looking'; readonly ids: readonly string[]; readonly share: number }
  | { readonly kind: 'failed'; readonly why: string };

export interface FollowingSkaters {
  readonly state: SkatersState;
  /** Follows these anew wherever their hands have changed, in a moment: several changes in a row are one. */
  readonly follow: (ids: readonly string[]) => void;
  readonly stop: () => void;
}

/** Hands of a track as the engine takes them, in order of time; feet taken from an offer are only as well known as they were offered. */
const marksOf = ({ film, hands }: Track, freezes: Game['freezes']): HandMark[] =>
  Object.values(hands)
    .map(hand => {
      const footSdPx = feetOffered(film, hand, freezes);
      return {
        frameIndex: hand.frameIndex,
        timeS: hand.filmTimeS,
        footPx: hand.feet,
        ...(footSdPx === undefined ? {} : { footSdPx }),
      };
    })
    .sort((a, b) => a.frameIndex - b.frameIndex);

/** Skaters of one film followed in a worker of its own; what was found between two hands is kept while those two stay. */
export const useFollowingSkaters = (
  gameId: string,
  game: Game,
  filmId: string,
  film: OpenFilm,
  tieds: readonly Tied[],
  level: LevelId,
): FollowingSkaters => {
  const [state, setState] = useState<SkatersState>({ kind: 'still' });
  const worker = useRef<Worker | null>(null);
  const timer = useRef(0);
  const waiting = useRef(new Set<string>());
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was found hangs on how the frames are tied
  const found = useMemo(() => new Map<string, readonly FoundWays[]>(), [tieds]);
  const now = useRef({ game, tieds, found });
  now.current = { game, tieds, found };

  const asked = useRef(new Map<string, string>());

  const end = () => {
    worker.current?.terminate();
    worker.current = null;
  };
  useEffect(
    () => () => {
      worker.current?.terminate();
      clearTimeout(timer.current);
    },
    [],
  );
  const start = () => {
    const { game, tieds, found } = now.current;
    const tiedFor = (id: string) => tiedOfTrack(tieds, game.tracks[id as Id<'track'>]);
    const tied = [...waiting.current].map(tiedFor).find(one => one !== undefined);
    const ids = [...waiting.current].filter(id => tiedFor(id) === tied);
    if (!tied) return waiting.current.clear();
    end();
    setState({ kind: 'looking', ids, share: 0 });
    const { source, index, rotationDeg, flipped, widthPx, heightPx } = film;
    const { timesS, endS } = index;
    const skaters = ids.map(id => {
      const marks = marksOf(game.tracks[id as Id<'track'>]!, game.freezes);
      return { id, marks, known: stillTrue(found.get(id) ?? [], marks) };
    });
    const power = skatePowerOf(level);
    const ask: TrackAsk = {
      ...{ source, timesS, endS, rotationDeg, flipped, widthPx, heightPx },
      ...{ tied, power, skaters },
    };
    const made = new Worker(new URL('./track.worker.ts', import.meta.url), { type: 'module' });
    worker.current = made;
    made.addEventListener('message', ({ data }: MessageEvent<TrackSaid>) => {
      if (worker.current !== made) return;
      if (data.kind === 'looked') {
        setState({ kind: 'looking', ids, share: data.frameCount / Math.max(1, data.ofCount) });
        return;
      }
      end();
      for (const id of ids) waiting.current.delete(id);
      if (data.kind === 'failed') return setState(data);
      setState({ kind: 'still' });
      for (const { id, ways, looks } of data.skaters) {
        found.set(id, ways);
        if (now.current.game.tracks[id as Id<'track'>]) writeFollowed(gameId, id, looks);
      }
      // Those of another stretch come after.
      if (waiting.current.size > 0) start();
    });
    made.addEventListener('error', ({ message }) => {
      if (worker.current !== made) return;
      end();
      setState({ kind: 'failed', why: message });
    });
    made.postMessage(ask);
  };
  const follow = (ids: readonly string[]) => {
    for (const id of ids) waiting.current.add(id);
    clearTimeout(timer.current);
    timer.current = window.setTimeout(start, SETTLED_MS);
  };
  // Whoever moved a hand, and undo too: what was found before it is no longer true.
  useEffect(() => {
    const changed: string[] = [];
    for (const [id, track] of Object.entries(game.tracks)) {
      if (track.film !== filmId) continue;
      const key = JSON.stringify(marksOf(track, game.freezes));
      const before = asked.current.get(id) ?? (track.followed ? key : '');
      if (before === key && track.followed) asked.current.set(id, key);
      else if (before !== key && tiedOfTrack(tieds, track)) {
        asked.current.set(id, key);
        changed.push(id);
      }
    }
    if (changed.length > 0) follow(changed);
  });
  const stop = () => {
    clearTimeout(timer.current);
    waiting.current.clear();
    end();
    setState({ kind: 'still' });
  };
  return { state, follow, stop };
};

/** The newest stretch in which a hand put him. */
const tiedOfTrack = (tieds: readonly Tied[], track: Track | undefined): Tied | undefined => {
  const hands = track ? Object.values(track.hands) : [];
  return tieds.find(({ stretch: { frames } }) => {
    const [first, last] = [frames[0], frames[frames.length - 1]];
    return hands.some(
      ({ frameIndex }) => first && last && frameIndex >= first.frameIndex && frameIndex <= last.frameIndex,
    );
  });
};

/** A hand that is moved by keys is moved many times. */
const SETTLED_MS = 400;

const stillTrue = (ways: readonly FoundWays[], marks: readonly HandMark[]): readonly FoundWays[] => {
  const keys = new Set(
    Array.from({ length: marks.length + 1 }, (_, i) =>
      gapKey({ from: marks[i - 1] ?? null, to: marks[i] ?? null }),
    ),
  );
  return ways.filter(one => keys.has(gapKey(one)));
};
