import { filmAddressOf } from '../shell/server.ts';

export type Sent =
  | { readonly kind: 'sent' }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly says: string };

/** Sends a film into the film folder of this machine's server. Gives its end, and a way to stop it. */
export const sendFilm = (
  { hash, fileName, file }: { readonly hash: string; readonly fileName: string; readonly file: Blob },
  onShare: (share: number) => void,
): { readonly end: Promise<Sent>; readonly stop: () => void } => {
  // fetch cannot tell how much has been sent; this can.
  const sending = new XMLHttpRequest();
  const end = new Promise<Sent>(resolve => {
    sending.open('PUT', `${filmAddressOf(hash)}?name=${encodeURIComponent(fileName)}`);
    sending.upload.onprogress = event => onShare(event.loaded / Math.max(1, event.total));
    sending.onload = () =>
      resolve(sending.status < 300 ? { kind: 'sent' } : { kind: 'failed', says: saidBy(sending) });
    sending.onerror = () =>
      resolve({ kind: 'failed', says: 'The server cannot be reached; no copy was made.' });
    sending.onabort = () => resolve({ kind: 'stopped' });
    sending.send(file);
  });
  return { end, stop: () => sending.abort() };
};

const saidBy = (request: XMLHttpRequest): string => {
  try {
    const { sentence } = JSON.parse(request.responseText) as { sentence?: string };
    if (sentence) return sentence;
  } catch {
    // Not an answer in our form: the plain sentence below says enough.
  }
  return `The server refused the copy (${request.status}); nothing was changed.`;
};
