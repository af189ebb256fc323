/**
 * Whether no other picture is built on this H.264 packet: every slice in it has nal_ref_idc 0 (ISO/IEC 14496-10 §7.4.1).
 * Such packets need not be decoded on the way to a later frame. Packets are length-prefixed as the decoder
 * configuration record says (ISO/IEC 14496-15 §5.3.3.1: lengthSizeMinusOne in the low bits of byte 4).
 */
export const isSkippable = (data: Uint8Array, lengthSize: number): boolean => {
  let at = 0;
  let slices = 0;
  while (at + lengthSize < data.length) {
    let size = 0;
    for (let i = 0; i < lengthSize; i++) size = size * 256 + data[at + i]!;
    const header = data[at + lengthSize]!;
    const type = header & 0x1f;
    if (type >= 1 && type <= 5) {
      if ((header & 0x60) !== 0) return false;
      slices++;
    }
    at += lengthSize + size;
  }
  return slices > 0;
};

/** Undefined when packets are not H.264 with length prefixes. */
export const lengthSizeOf = (config: VideoDecoderConfig): number | undefined => {
  const description = config.description;
  if (!config.codec.startsWith('avc') || description === undefined) return undefined;
  const bytes = ArrayBuffer.isView(description)
    ? new Uint8Array(description.buffer, description.byteOffset, description.byteLength)
    : new Uint8Array(description as ArrayBuffer);
  return bytes.length > 4 ? (bytes[4]! & 3) + 1 : undefined;
};
