import type { FilmPart } from '@icewright/book';
import { useEffect, useRef, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { filmAddressOf } from '../shell/server.ts';
import { filmInHand } from './film-hand.ts';

type Sending =
  | { readonly kind: 'asked' }
  | { readonly kind: 'going'; readonly share: number }
  | { readonly kind: 'kept' }
  | { readonly kind: 'failed'; readonly says: string };

/** Puts a copy into the film folder of this machine's server, so that the film is found here whatever browser asks. */
export function KeepCopy({ part }: { readonly part: FilmPart }) {
  const [state, setState] = useState<Sending>({ kind: 'asked' });
  const request = useRef<XMLHttpRequest>(undefined);
  useEffect(() => () => request.current?.abort(), []);
  const file = filmInHand(part.hash);
  if (!file) return null;
  const send = () => {
    // fetch cannot tell how much has been sent; this can.
    const sending = new XMLHttpRequest();
    request.current = sending;
    sending.open('PUT', `${filmAddressOf(part.hash)}?name=${encodeURIComponent(part.fileName)}`);
    sending.upload.onprogress = event =>
      setState({ kind: 'going', share: event.loaded / Math.max(1, event.total) });
    sending.onload = () =>
      setState(sending.status < 300 ? { kind: 'kept' } : { kind: 'failed', says: saidBy(sending) });
    sending.onerror = () =>
      setState({ kind: 'failed', says: 'The server cannot be reached; no copy was made.' });
    sending.onabort = () => setState({ kind: 'asked' });
    sending.send(file);
    setState({ kind: 'going', share: 0 });
  };
  if (state.kind === 'kept') return <span className="q3">a copy is kept on this machine</span>;
  if (state.kind === 'going') {
    return (
      <span className="keep-copy">
        <progress max={1} value={state.share} aria-label="Copying the film" /> {Math.round(state.share * 100)}{' '}
        %{' '}
        <Act bare onPress={() => request.current?.abort()}>
          stop
        </Act>
      </span>
    );
  }
  return (
    <span className="keep-copy">
      <Act bare onPress={send}>
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

const saidBy = (request: XMLHttpRequest): string => {
  try {
    const { said } = JSON.parse(request.responseText) as { said?: string };
    if (said) return said;
  } catch {
    // Not an answer in our form: the plain sentence below says enough.
  }
  return `The server refused the copy (${request.status}); nothing was changed.`;
};
