import type { Drill } from '@icewright/book';
import type { Lengths } from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { findRun } from '../../parts/played-drill.ts';
import { saveFile } from '../../parts/save-file.ts';
import type { FilmKind } from './film-file.ts';
import { OutRow } from './out-row.tsx';

interface Making {
  readonly kind: FilmKind;
  readonly doneRatio: number;
}

/** The rep as a film: made here, frame by frame, with its progress and a way to stop. */
export function FilmActs({ drill, lengths }: { readonly drill: Drill; readonly lengths: Lengths }) {
  const [kinds, setKinds] = useState<readonly FilmKind[] | null>(null);
  const [isSlow, setSlow] = useState(false);
  const [making, setMaking] = useState<Making | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const stop = useRef<AbortController | null>(null);
  useEffect(() => {
    void import('./film-file.ts').then(async ({ findFilmKinds }) => setKinds(await findFilmKinds()));
    return () => stop.current?.abort();
  }, []);
  const run = findRun(drill);
  const make = async (kind: FilmKind) => {
    if (run === undefined) return;
    stop.current = new AbortController();
    const { signal } = stop.current;
    setMaking({ kind, doneRatio: 0 });
    setSaid(null);
    try {
      const { drillFilm } = await import('./film-file.ts');
      const film = await drillFilm({
        drill,
        run,
        lengths,
        kind,
        speedRatio: isSlow ? 0.5 : 1,
        signal,
        onProgress: doneRatio => setMaking({ kind, doneRatio }),
      });
      const fileName = `${named(drill.title, 'drill')}${isSlow ? ', half speed' : ''}.${kind}`;
      if (film !== null) saveFile(film, fileName);
      setSaid(film === null ? 'Stopped. Nothing was saved.' : `Saved as ${fileName}.`);
    } catch (error) {
      setSaid(`The film could not be made: ${(error as Error).message}. Nothing was changed.`);
    }
    setMaking(null);
  };
  return (
    <OutRow name="Film" says={saysOf(kinds, run === undefined)}>
      {(kinds ?? []).map(kind => (
        <Act
          key={kind}
          working={making?.kind === kind}
          notNow={
            run === undefined
              ? 'the drill cannot be run yet'
              : making === null
                ? undefined
                : 'one is being made'
          }
          onPress={() => void make(kind)}
        >
          {kind === 'webm' ? 'WebM' : 'MP4'}
        </Act>
      ))}
      {(kinds?.length ?? 0) > 0 && (
        <Act
          isOn={isSlow}
          notNow={making === null ? undefined : 'one is being made'}
          onPress={() => setSlow(!isSlow)}
        >
          Half speed
        </Act>
      )}
      {making !== null && (
        <span className="out-making">
          <progress max={1} value={making.doneRatio} aria-label="Frames that are done" />
          <span className="q2">{Math.floor(making.doneRatio * 100)} %</span>
          <Act onPress={() => stop.current?.abort()}>Cancel</Act>
        </span>
      )}
      {said !== null && (
        <span className="q2" role="status">
          {said}
        </span>
      )}
    </OutRow>
  );
}

function saysOf(kinds: readonly FilmKind[] | null, isStill: boolean): string {
  if (kinds === null) return 'looking what this browser can write';
  if (isStill) return 'nothing moves yet: the drill must run first';
  if (kinds.length === 0) return 'this browser cannot write films';
  if (!kinds.includes('mp4'))
    return 'one rep, 30 frames a second. This browser has no H.264 encoder: no MP4 here';
  if (!kinds.includes('webm')) return 'one rep, 30 frames a second. This browser writes no WebM';
  return 'one rep, 30 frames a second; phones take MP4';
}
