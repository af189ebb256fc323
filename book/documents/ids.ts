import type { Id } from '@icewright/engine';

const letters = 'abcdefghijkmnpqrstuvwxyz23456789';

/**
 * A fresh random id of 100 bits. Random, because two people who add an item offline must never pick the same id.
 * `randomUUID` is absent where a page is not served securely; `getRandomValues` is everywhere.
 */
export function newId<Kind extends string>(): Id<Kind> {
  const bytes = globalThis.crypto.getRandomValues(new Uint8Array(20));
  return Array.from(bytes, byte => letters[byte & 31]).join('') as Id<Kind>;
}

/** True for a text that can be a document's id and a part of an address. */
export const isDocumentId = (text: string): boolean => /^[A-Za-z0-9_-]{4,64}$/.test(text);
