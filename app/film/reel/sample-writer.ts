import { AudioSample, type AudioSampleSource } from 'mediabunny';

/** Puts sound one after the other, all at one rate and number of channels, as coders want it. */
export const sampleWriter = (source: AudioSampleSource, rateHz: number, channelCount: number) => {
  let written = 0;
  /** Parts of a sample that were rounded away so far: many short pieces must not add up to a lag. */
  let owed = 0;
  const add = async (sample: AudioSample) => {
    sample.setTimestamp(written / rateHz);
    written += sample.numberOfFrames;
    await source.add(sample);
    sample.close();
  };
  const silent = (frameCount: number) =>
    new AudioSample({
      data: new Float32Array(frameCount * channelCount),
      format: 'f32',
      numberOfChannels: channelCount,
      sampleRate: rateHz,
      timestamp: 0,
    });
  return {
    reachedS: () => written / rateHz,
    /** Closes the sample. */
    put: async (sample: AudioSample): Promise<void> => {
      if (sample.sampleRate === rateHz && sample.numberOfChannels === channelCount) return add(sample);
      owed += (sample.numberOfFrames / sample.sampleRate) * rateHz;
      const frameCount = Math.round(owed);
      owed -= frameCount;
      for (const one of await alike(sample, rateHz, channelCount, frameCount)) await add(one);
      sample.close();
    },
    silentUntil: async function* (atS: number): AsyncGenerator<number, void> {
      const start = Math.round(atS * rateHz);
      while (written < start) {
        await add(silent(Math.min(start - written, rateHz / 10)));
        yield written / rateHz;
      }
    },
  };
};

/** The same sound at another rate or mixed to other channels, by the browser's own resampler. */
const alike = async (
  sample: AudioSample,
  rateHz: number,
  channelCount: number,
  frameCount: number,
): Promise<AudioSample[]> => {
  if (frameCount === 0) return [];
  const context = new OfflineAudioContext(channelCount, frameCount, rateHz);
  const heard = context.createBufferSource();
  heard.buffer = sample.toAudioBuffer();
  heard.connect(context.destination);
  heard.start();
  return AudioSample.fromAudioBuffer(await context.startRendering(), 0);
};
