import { AudioSample, type AudioSampleSource } from 'mediabunny';
import { type Resampler, resamplerOf } from './resampler.ts';

/** Puts sound one after the other, all at one rate and number of channels, as coders want it. */
export const sampleWriter = (source: AudioSampleSource, rateHz: number, channelCount: number) => {
  let written = 0;
  /** Sound of another rate that is being put: its samples go on from each other. */
  let other: { readonly fromHz: number; readonly resampler: Resampler } | undefined;
  const add = async (sample: AudioSample) => {
    sample.setTimestamp(written / rateHz);
    written += sample.numberOfFrames;
    await source.add(sample);
    sample.close();
  };
  const addChannels = async (channels: readonly Float32Array[]) => {
    const frameCount = channels[0]?.length ?? 0;
    if (frameCount === 0) return;
    const data = new Float32Array(frameCount * channelCount);
    for (const [channel, of] of channels.entries()) data.set(of, channel * frameCount);
    await add(
      new AudioSample({
        data,
        format: 'f32-planar',
        numberOfChannels: channelCount,
        sampleRate: rateHz,
        timestamp: 0,
      }),
    );
  };
  const silent = (frameCount: number) =>
    addChannels(Array.from({ length: channelCount }, () => new Float32Array(frameCount)));
  const endPiece = async (): Promise<void> => {
    const ended = other;
    other = undefined;
    if (ended) await addChannels(ended.resampler.end());
  };
  return {
    reachedS: () => written / rateHz,
    /** Closes the sample. It goes on from the one before, unless a piece was ended there. */
    put: async (sample: AudioSample): Promise<void> => {
      const fromHz = sample.sampleRate;
      if (other && other.fromHz !== fromHz) await endPiece();
      if (fromHz === rateHz && sample.numberOfChannels === channelCount) return add(sample);
      const channels = await mixed(sample, channelCount);
      sample.close();
      if (fromHz === rateHz) return addChannels(channels);
      other ??= { fromHz, resampler: resamplerOf(fromHz, rateHz, channelCount) };
      await addChannels(other.resampler.put(channels));
    },
    /** What is put next is from elsewhere. */
    endPiece,
    silentUntil: async function* (atS: number): AsyncGenerator<number, void> {
      const start = Math.round(atS * rateHz);
      while (written < start) {
        await silent(Math.min(start - written, Math.ceil(rateHz / 10)));
        yield written / rateHz;
      }
    },
  };
};

/** Its channels, or as many as are wanted: mixed by the browser at the sound’s own rate, so that each sample is made of that sample alone. */
const mixed = async (sample: AudioSample, channelCount: number): Promise<Float32Array[]> => {
  let buffer = sample.toAudioBuffer();
  if (buffer.numberOfChannels !== channelCount) {
    const context = new OfflineAudioContext(channelCount, buffer.length, buffer.sampleRate);
    const heard = context.createBufferSource();
    heard.buffer = buffer;
    heard.connect(context.destination);
    heard.start();
    buffer = await context.startRendering();
  }
  return Array.from({ length: channelCount }, (_, channel) => buffer.getChannelData(channel));
};
