import type { FilmPart } from '@icewright/book';
import { useEffect, useRef, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { filmInHand } from './film-hand.ts';
import { sendFilm } from './send-film.ts';
import { ShareDone } from './share-done.tsx';

type Sending =
  | { readonly kind: 'asked' }
  | { readonly kind: 'going'; readonly share: number }
  | { readonly kind: 'kept' }
  | { readonly kind: 'failed'; readonly says: string };

/** Puts a copy into the film folder of this machine's server, so that the film is found here whatever browser asks. */
export function KeepCopy({ part }: { readonly part: FilmPart }) {
  const [state, setState] = useState<Sending>({ kind: 'asked' });
  const stop = useRef<() => void>(undefined);
  useEffect(() => () => stop.current?.(), []);
  const file = filmInHand(part.hash);
  if (!file) return null;
  const send = async () => {
    setState({ kind: 'going', share: 0 });
    const sending = sendFilm({ hash: part.hash, fileName: part.fileName, file }, share =>
      setState({ kind: 'going', share }),
    );
    stop.current = sending.stop;
    const end = await sending.end;
    setState(end.kind === 'sent' ? { kind: 'kept' } : end.kind === 'failed' ? end : { kind: 'asked' });
  };
  if (state.kind === 'kept') return <span className="q3">a copy is kept on this machine</span>;
  if (state.kind === 'going')
    return <ShareDone says="Copying the film" share={state.share} onStop={() => stop.current?.()} />;
  return (
    <span className="keep-copy">
      <Act bare onPress={() => void send()}>
        Keep a copy on this machine
      </Act>
      {state.kind === 'failed' && (
        <span className="warm" role="alert">
          {state.says}
        </span>
      )}
    </span>
  );
}
