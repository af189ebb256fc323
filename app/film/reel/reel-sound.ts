import {
  ALL_FORMATS,
  AudioSample,
  AudioSampleSink,
  AudioSampleSource,
  type AudioSource,
  BlobSource,
  EncodedAudioPacketSource,
  EncodedPacket,
  EncodedPacketSink,
  Input,
  type InputAudioTrack,
  QUALITY_HIGH,
  UrlSource,
} from 'mediabunny';
import type { FilmSource } from '../open-film.ts';
import type { ReelKind } from './reel-kinds.ts';
import type { ReelSound } from './reel-plan.ts';
import { AAC_SAMPLES, silentAac } from './silent-aac.ts';

/** Writes the sound of a reel beside its pictures. */
export interface SoundWriter {
  readonly source: AudioSource;
  /** How it is done, for people: copied as it is, or coded anew. */
  readonly how: 'copied' | 'coded';
  /** Everything that is heard before this time of the reel. */
  writeUntil(atS: number): Promise<void>;
  close(): void;
}

/**
 * AAC goes into an MP4 as it is, packet by packet; any other sound is coded as Opus. Undefined when the film has no sound, or none that
 * this browser can take.
 */
export const soundWriterOf = async (
  film: FilmSource,
  sounds: readonly ReelSound[],
  kind: ReelKind,
): Promise<SoundWriter | undefined> => {
  const input = new Input({
    formats: ALL_FORMATS,
    source: 'file' in film ? new BlobSource(film.file) : new UrlSource(film.url),
  });
  const track = await input.getPrimaryAudioTrack();
  const writer = track && (await writerFor(track, sounds, kind));
  if (!writer) {
    input.dispose();
    return undefined;
  }
  const steps = writer.write();
  let reachedS = 0;
  return {
    source: writer.source,
    how: writer.how,
    writeUntil: async atS => {
      while (reachedS < atS) {
        const step = await steps.next();
        reachedS = step.done ? Number.POSITIVE_INFINITY : step.value;
      }
    },
    close: () => {
      void steps.return();
      input.dispose();
    },
  };
};

/** `write` gives, after each packet, the time of the reel up to which the sound stands. */
interface Writing {
  readonly source: AudioSource;
  readonly how: SoundWriter['how'];
  readonly write: () => AsyncGenerator<number, void>;
}

const writerFor = async (
  track: InputAudioTrack,
  sounds: readonly ReelSound[],
  kind: ReelKind,
): Promise<Writing | undefined> => {
  const [codec, rateHz, channelCount] = await Promise.all([
    track.getCodec(),
    track.getSampleRate(),
    track.getNumberOfChannels(),
  ]);
  const silence = silentAac(channelCount);
  const decoderConfig = await track.getDecoderConfig();
  const packetS = AAC_SAMPLES / rateHz;
  if (kind === 'mp4' && codec === 'aac' && silence && decoderConfig?.codec === 'mp4a.40.2') {
    const source = new EncodedAudioPacketSource('aac');
    const packets = new EncodedPacketSink(track);
    return {
      source,
      how: 'copied',
      write: () => copied(source, packets, sounds, silence, packetS, decoderConfig),
    };
  }
  if (!(await track.canDecode())) return undefined;
  const source = new AudioSampleSource({ codec: 'opus', quality: QUALITY_HIGH });
  const samples = new AudioSampleSink(track);
  return { source, how: 'coded', write: () => coded(source, samples, sounds, rateHz, channelCount) };
};

/**
 * Packets follow each other without a gap, silent ones where the reel is silent: every piece begins at the packet's edge that is
 * nearest, at most half a packet (11 ms at 48 kHz) off.
 */
async function* copied(
  source: EncodedAudioPacketSource,
  packets: EncodedPacketSink,
  sounds: readonly ReelSound[],
  silence: Uint8Array,
  packetS: number,
  decoderConfig: AudioDecoderConfig,
): AsyncGenerator<number, void> {
  let count = 0;
  const add = async (data: Uint8Array) => {
    const packet = new EncodedPacket(data, 'key', count * packetS, packetS);
    await source.add(packet, count === 0 ? { decoderConfig } : undefined);
    count++;
  };
  for (const { fromS, toS, atS } of sounds) {
    while ((count + 0.5) * packetS < atS) {
      await add(silence);
      yield count * packetS;
    }
    const last = Math.round((atS + toS - fromS) / packetS);
    const first = await packets.getPacket(fromS + packetS / 2);
    if (!first) continue;
    for await (const packet of packets.packets(first)) {
      if (count >= last || packet.timestamp >= toS) break;
      await add(packet.data);
      yield count * packetS;
    }
  }
}

async function* coded(
  source: AudioSampleSource,
  samples: AudioSampleSink,
  sounds: readonly ReelSound[],
  rateHz: number,
  channelCount: number,
): AsyncGenerator<number, void> {
  let written = 0;
  const put = async (sample: AudioSample) => {
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
  for (const { fromS, toS, atS } of sounds) {
    const start = Math.round(atS * rateHz);
    while (written < start) {
      await put(silent(Math.min(start - written, rateHz / 10)));
      yield written / rateHz;
    }
    for await (const sample of samples.samples(fromS, toS)) {
      const cutFrom = Math.max(0, Math.round((fromS - sample.timestamp) * rateHz));
      const cutTo = Math.min(sample.numberOfFrames, Math.round((toS - sample.timestamp) * rateHz));
      if (cutTo > cutFrom) await put(sample.trim(cutFrom, cutTo));
      sample.close();
      yield written / rateHz;
    }
  }
}
