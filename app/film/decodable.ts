/** Asks the browser whether it decodes a picture track; a test puts its own answer here. */
export type CanDecode = (config: VideoDecoderConfig) => Promise<boolean>;

/**
 * The track's description in a form that the browser says it decodes; undefined when there is none. HEVC goes under two
 * names, by whether its parameter sets may lie among the pictures too (ISO/IEC 14496-15 8.4); some browsers know only one.
 */
export const decodableOf = async (
  config: VideoDecoderConfig,
  canDecode: CanDecode,
): Promise<VideoDecoderConfig | undefined> => {
  for (const codec of namesOf(config.codec)) {
    const asked = { ...config, codec };
    if (await canDecode(asked)) return asked;
  }
  return undefined;
};

export const browserDecodes: CanDecode = async config => {
  if (typeof VideoDecoder === 'undefined') return false;
  try {
    return (await VideoDecoder.isConfigSupported(config)).supported === true;
  } catch {
    return false;
  }
};

const namesOf = (codec: string): readonly string[] => {
  const hevc = /^(hvc1|hev1)(\..*)$/.exec(codec);
  return hevc ? [codec, `${hevc[1] === 'hvc1' ? 'hev1' : 'hvc1'}${hevc[2]}`] : [codec];
};
