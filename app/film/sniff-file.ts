import { containerRefusal, type Refusal, refusalOf } from './film-refusal.ts';

/**
 * What the first bytes say about a file that may not be film. Answers only where the bytes are plain about it;
 * undefined means: let the container library look.
 */
export const refusalFromBytes = async (file: Blob): Promise<Refusal | undefined> => {
  if (file.size === 0) return refusalOf('empty');
  const head = await bytesAt(file, 0, 4096);
  if (isPhoto(head)) return refusalOf('photo');
  if (boxTypeAt(head, 4) === 'ftyp') {
    return (await hasMovieBox(file)) ? undefined : refusalOf('indexMissing');
  }
  return refusalFromContainer(head) ?? (isText(head) ? refusalOf('text') : undefined);
};

/** Names the container of a film that the reader does not take; undefined when the first bytes are none of those. */
export const refusalFromContainer = (head: Uint8Array): Refusal | undefined => {
  const container = OTHER_FILMS.find(([, isOne]) => isOne(head));
  return container && containerRefusal(container[0]);
};

const bytesAt = async (file: Blob, from: number, length: number): Promise<Uint8Array> =>
  new Uint8Array(await file.slice(from, from + length).arrayBuffer());

const boxTypeAt = (bytes: Uint8Array, at: number): string =>
  String.fromCharCode(...Array.from(bytes.subarray(at, at + 4)));

/** Walks the outermost boxes of an ISO base media file (ISO/IEC 14496-12 §4.2): `moov` is the index, `moof` begins a fragment. */
const hasMovieBox = async (file: Blob): Promise<boolean> => {
  let at = 0;
  for (let box = 0; box < MOST_OUTER_BOXES && at + 8 <= file.size; box++) {
    const header = await bytesAt(file, at, 16);
    const view = new DataView(header.buffer);
    const type = boxTypeAt(header, 4);
    if (type === 'moov') return true;
    let size = view.getUint32(0);
    if (size === 1 && header.length === 16) size = Number(view.getBigUint64(8));
    if (size < 8) return false;
    at += size;
  }
  return false;
};
const MOST_OUTER_BOXES = 10_000;

/** Good films in containers that the browser's reader does not take, by their first bytes. */
const OTHER_FILMS: readonly (readonly [string, (head: Uint8Array) => boolean])[] = [
  // "RIFF", its size, "AVI ".
  ['an AVI', head => boxTypeAt(head, 0) === 'RIFF' && boxTypeAt(head, 8) === 'AVI '],
  // A pack header begins a programme stream (ISO/IEC 13818-1 §2.5.3.3).
  ['an MPEG programme stream', head => beginsWith(head, [0, 0, 1, 0xba])],
  // The header object's GUID (Advanced Systems Format §3.1).
  ['a Windows Media', head => beginsWith(head, [0x30, 0x26, 0xb2, 0x75, 0x8e, 0x66, 0xcf, 0x11])],
  ['a Flash video', head => boxTypeAt(head, 0).startsWith('FLV')],
];

const beginsWith = (head: Uint8Array, magic: readonly number[]): boolean =>
  magic.every((byte, i) => head[i] === byte);

const PHOTO_MAGIC: readonly (readonly number[])[] = [
  [0xff, 0xd8, 0xff],
  [0x89, 0x50, 0x4e, 0x47],
  [0x47, 0x49, 0x46, 0x38],
  [0x49, 0x49, 0x2a, 0x00],
  [0x4d, 0x4d, 0x00, 0x2a],
];

const isPhoto = (head: Uint8Array): boolean => {
  if (PHOTO_MAGIC.some(magic => beginsWith(head, magic))) return true;
  if (boxTypeAt(head, 0) === 'RIFF' && boxTypeAt(head, 8) === 'WEBP') return true;
  return boxTypeAt(head, 4) === 'ftyp' && /^(heic|heix|mif1|avif)$/.test(boxTypeAt(head, 8));
};

const isText = (head: Uint8Array): boolean => {
  const control = head.filter(byte => byte < 9 || (byte > 13 && byte < 32)).length;
  return head.length > 0 && control === 0;
};
