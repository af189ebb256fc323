/**
 * Matroska can wrap an older codec as `V_MS/VFW/FOURCC`; its name is then the four letters at byte 16 of the
 * BITMAPINFOHEADER kept in CodecPrivate (element 0x63A2, RFC 9559 §5.1.4.1.23). Looked for near the start of the file.
 */
export const findFourcc = async (file: Blob): Promise<string | undefined> => {
  const head = new Uint8Array(await file.slice(0, 65_536).arrayBuffer());
  for (let at = 0; at + 24 < head.length; at++) {
    if (head[at] !== 0x63 || head[at + 1] !== 0xa2) continue;
    const first = head[at + 2]!;
    if (first === 0) continue;
    const payload = at + 2 + Math.clz32(first) - 23;
    const letters = String.fromCharCode(...Array.from(head.subarray(payload + 16, payload + 20)));
    if (/^[A-Za-z0-9]{4}$/.test(letters)) return letters;
  }
  return undefined;
};
