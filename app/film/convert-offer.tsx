import { useEffect, useRef, useState } from 'react';
import { Act } from '../parts/act.tsx';
import {
  canConvertFilms,
  convertFilm,
  type FolderFilm,
  findConversion,
  isFilmThere,
  stopConversion,
} from '../shell/server.ts';
import { hashOfFile, type UnreadFilm } from './film-door.ts';
import { sendFilm } from './send-film.ts';
import { ShareDone } from './share-done.tsx';

type Converting =
  | { readonly kind: 'asked'; readonly says?: string }
  | { readonly kind: 'going'; readonly step: 'Copying' | 'Converting'; readonly share: number | null };

/** Where the machine has an ffmpeg: an H.264 film made of this one, beside it in the film folder. The old one stays. */
export function ConvertOffer({
  film,
  onMade,
}: {
  readonly film: UnreadFilm;
  readonly onMade: (film: FolderFilm) => void;
}) {
  const [canConvert, setCanConvert] = useState(false);
  const [state, setState] = useState<Converting>({ kind: 'asked' });
  const stop = useRef<() => void>(undefined);
  const isGone = useRef(false);
  useEffect(() => {
    isGone.current = false;
    void canConvertFilms().then(setCanConvert);
    return () => {
      isGone.current = true;
      stop.current?.();
    };
  }, []);
  if (!canConvert) return null;
  const convert = async () => {
    setState({ kind: 'going', step: 'Copying', share: null });
    const hash = 'hash' in film ? film.hash : await hashOfFile(film.file);
    if ('file' in film && !(await isFilmThere(hash))) {
      const sending = sendFilm({ hash, fileName: film.fileName, file: film.file }, share =>
        setState({ kind: 'going', step: 'Copying', share }),
      );
      stop.current = sending.stop;
      const end = await sending.end;
      if (end.kind !== 'sent')
        return setState({ kind: 'asked', ...(end.kind === 'failed' ? { says: end.says } : {}) });
    }
    stop.current = () => void stopConversion(hash);
    const begun = await convertFilm(hash);
    for (let answer = begun; ; answer = await findConversion(hash)) {
      if (isGone.current) return;
      if (answer.kind === 'none') return setState({ kind: 'asked', says: answer.said });
      const now = answer.value;
      if (now.kind === 'done') {
        stop.current = undefined;
        return onMade(now.film);
      }
      if (now.kind === 'failed') return setState({ kind: 'asked', says: now.said });
      if (now.kind === 'none') return setState({ kind: 'asked' });
      setState({ kind: 'going', step: 'Converting', share: now.share });
      await new Promise(resolve => setTimeout(resolve, LOOK_MS));
    }
  };
  if (state.kind === 'going') {
    const says = `${state.step} ${film.fileName}`;
    return (
      <>
        <span className="q2">{says}</span>{' '}
        <ShareDone says={says} share={state.share} onStop={() => stop.current?.()} />
      </>
    );
  }
  return (
    <>
      <Act onPress={() => void convert()}>Convert it here</Act>{' '}
      <span className="q2">with this machine’s ffmpeg, into the film folder</span>
      {state.says !== undefined && (
        <span className="warm" role="alert">
          {' '}
          {state.says}
        </span>
      )}
    </>
  );
}

const LOOK_MS = 400;
