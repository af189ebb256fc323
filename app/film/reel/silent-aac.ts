/**
 * One AAC-LC packet of 1,024 silent samples, for one or two channels; undefined for more. A raw data block whose bands hold
 * nothing (max_sfb 0), bit by bit after the syntax of ISO/IEC 14496-3, table 4.4 ff. (from memory; proven by decoding in
 * `reel.e2e.ts`).
 */
export const silentAac = (channelCount: number): Uint8Array | undefined => {
  if (channelCount === 1) return bytesOf(`${SINGLE}${INSTANCE}${GAIN}${ICS_INFO}${NO_TOOLS}${END}`);
  if (channelCount === 2)
    return bytesOf(
      `${PAIR}${INSTANCE}${COMMON_WINDOW}${ICS_INFO}${NO_MID_SIDE}${GAIN}${NO_TOOLS}${GAIN}${NO_TOOLS}${END}`,
    );
  return undefined;
};

export const AAC_SAMPLES = 1024;

const SINGLE = '000';
const PAIR = '001';
const INSTANCE = '0000';
const COMMON_WINDOW = '1';
/** Reserved bit, long window, its shape, no bands, no prediction. */
const ICS_INFO = '0' + '00' + '0' + '000000' + '0';
const NO_MID_SIDE = '00';
const GAIN = '00000000';
/** No pulses, no noise shaping, no gain control. */
const NO_TOOLS = '000';
const END = '111';

const bytesOf = (bits: string): Uint8Array =>
  Uint8Array.from({ length: Math.ceil(bits.length / 8) }, (_, i) =>
    Number.parseInt(bits.slice(8 * i, 8 * i + 8).padEnd(8, '0'), 2),
  );
