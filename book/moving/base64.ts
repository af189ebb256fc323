/** Bytes as text that fits into JSON, and back. */
export function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += CHUNK)
    text += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(text);
}

/** Throws on a text that is none. */
export const bytesOfBase64 = (text: string): Uint8Array =>
  Uint8Array.from(atob(text), letter => letter.charCodeAt(0));

/** A call takes only so many arguments. */
const CHUNK = 8192;
