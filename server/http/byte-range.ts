export type ByteRange =
  | { readonly kind: 'whole' }
  | { readonly kind: 'part'; readonly first: number; readonly last: number }
  | { readonly kind: 'outside' };

/**
 * What a Range header asks of `byteCount` bytes (RFC 9110 §14). Several ranges at once, another unit or a header that
 * is no range get the whole, as §14.2 allows; a range that begins behind the end is outside (416).
 */
export function byteRangeOf(header: string | undefined, byteCount: number): ByteRange {
  const match = /^bytes=[ \t]*(\d*)-(\d*)[ \t]*$/i.exec(header ?? '');
  const [, from = '', to = ''] = match ?? [];
  if (match === null || (from === '' && to === '')) return { kind: 'whole' };
  if (from === '') {
    const length = Math.min(Number(to), byteCount);
    return length === 0
      ? { kind: 'outside' }
      : { kind: 'part', first: byteCount - length, last: byteCount - 1 };
  }
  const first = Number(from);
  const last = to === '' ? byteCount - 1 : Math.min(Number(to), byteCount - 1);
  if (to !== '' && Number(to) < first) return { kind: 'whole' };
  return first >= byteCount ? { kind: 'outside' } : { kind: 'part', first, last };
}
