import {
  ALL_FORMATS,
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
import type { ReelFilms } from './reel-films.ts';
import type { ReelKind } from './reel-kinds.ts';
import type { ReelSound } from './reel-plan.ts';
import { sampleWriter } from './sample-writer.ts';
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
 * AAC goes into an MP4 as it is, packet by packet, where all films have the same; any other sound is coded as Opus. Undefined when no
 * film has a sound that this browser can take; a film without one is silent.
 */
export const soundWriterOf = async (
  films: ReelFilms,
  sounds: readonly ReelSound[],
  kind: ReelKind,
): Promise<SoundWriter | undefined> => {
  const inputs: Input[] = [];
  const tracks = new Map<string, SoundTrack>();
  for (const key of new Set(sounds.map(({ film }) => film))) {
    const input = inputOf(films.get(key)!.film.source);
    inputs.push(input);
    const track = await input.getPrimaryAudioTrack();
    if (track) tracks.set(key, await soundTrackOf(track));
  }
  const writing = writingOf(tracks, sounds, kind);
  const close = () => {
    for (const input of inputs) input.dispose();
  };
  if (!writing) {
    close();
    return undefined;
  }
  const steps = writing.write();
  let reachedS = 0;
  return {
    source: writing.source,
    how: writing.how,
    writeUntil: async atS => {
      while (reachedS < atS) {
        const step = await steps.next();
        reachedS = step.done ? Number.POSITIVE_INFINITY : step.value;
      }
    },
    close: () => {
      void steps.return();
      close();
    },
  };
};

const inputOf = (film: FilmSource): Input =>
  new Input({
    formats: ALL_FORMATS,
    source: 'file' in film ? new BlobSource(film.file) : new UrlSource(film.url),
  });

interface SoundTrack {
  readonly track: InputAudioTrack;
  readonly rateHz: number;
  readonly channelCount: number;
  readonly canDecode: boolean;
  /** Of AAC that can be taken packet by packet. */
  readonly aac: AudioDecoderConfig | undefined;
}

const soundTrackOf = async (track: InputAudioTrack): Promise<SoundTrack> => {
  const [codec, config, canDecode, rateHz, channelCount] = await Promise.all([
    track.getCodec(),
    track.getDecoderConfig(),
    track.canDecode(),
    track.getSampleRate(),
    track.getNumberOfChannels(),
  ]);
  const aac = codec === 'aac' && config?.codec === 'mp4a.40.2' ? config : undefined;
  return { track, rateHz, channelCount, canDecode, aac };
};

/** `write` gives, after each packet, the time of the reel up to which the sound stands. */
interface Writing {
  readonly source: AudioSource;
  readonly how: SoundWriter['how'];
  readonly write: () => AsyncGenerator<number, void>;
}

const writingOf = (
  tracks: ReadonlyMap<string, SoundTrack>,
  sounds: readonly ReelSound[],
  kind: ReelKind,
): Writing | undefined => {
  const [first] = tracks.values();
  if (!first) return undefined;
  const silence = silentAac(first.channelCount);
  if (kind === 'mp4' && silence && first.aac && [...tracks.values()].every(one => isSameAac(one, first))) {
    const source = new EncodedAudioPacketSource('aac');
    const { aac, rateHz } = first;
    return { source, how: 'copied', write: () => copied(source, tracks, sounds, silence, rateHz, aac) };
  }
  const heard = [...tracks].filter(([, { canDecode }]) => canDecode);
  if (heard.length === 0) return undefined;
  const source = new AudioSampleSource({ codec: 'opus', quality: QUALITY_HIGH });
  const sinks = new Map(heard.map(([key, { track }]) => [key, new AudioSampleSink(track)]));
  const { rateHz, channelCount } = heard[0]![1];
  return { source, how: 'coded', write: () => coded(source, sinks, sounds, rateHz, channelCount) };
};

const isSameAac = (one: SoundTrack, other: SoundTrack): boolean =>
  one.aac !== undefined &&
  other.aac !== undefined &&
  one.rateHz === other.rateHz &&
  one.channelCount === other.channelCount &&
  bytesSaid(one.aac.description) === bytesSaid(other.aac.description);

const bytesSaid = (bytes: AllowSharedBufferSource | undefined): string =>
  bytes === undefined
    ? ''
    : new Uint8Array(
        'buffer' in bytes ? bytes.buffer : bytes,
        'buffer' in bytes ? bytes.byteOffset : 0,
        bytes.byteLength,
      ).join();

/**
 * Packets follow each other without a gap, silent ones where the reel is silent: every piece begins at the packet's edge that is
 * nearest, at most half a packet (11 ms at 48 kHz) off.
 */
async function* copied(
  source: EncodedAudioPacketSource,
  tracks: ReadonlyMap<string, SoundTrack>,
  sounds: readonly ReelSound[],
  silence: Uint8Array,
  rateHz: number,
  decoderConfig: AudioDecoderConfig,
): AsyncGenerator<number, void> {
  const packetS = AAC_SAMPLES / rateHz;
  let count = 0;
  const add = async (data: Uint8Array) => {
    const packet = new EncodedPacket(data, 'key', count * packetS, packetS);
    await source.add(packet, count === 0 ? { decoderConfig } : undefined);
    count++;
  };
  for (const { film, fromS, toS, atS } of sounds) {
    const track = tracks.get(film);
    if (!track) continue;
    while ((count + 0.5) * packetS < atS) {
      await add(silence);
      yield count * packetS;
    }
    const packets = new EncodedPacketSink(track.track);
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
  sinks: ReadonlyMap<string, AudioSampleSink>,
  sounds: readonly ReelSound[],
  rateHz: number,
  channelCount: number,
): AsyncGenerator<number, void> {
  const writer = sampleWriter(source, rateHz, channelCount);
  for (const { film, fromS, toS, atS } of sounds) {
    const sink = sinks.get(film);
    if (!sink) continue;
    for await (const reachedS of writer.silentUntil(atS)) yield reachedS;
    for await (const sample of sink.samples(fromS, toS)) {
      const cutFrom = Math.max(0, Math.round((fromS - sample.timestamp) * sample.sampleRate));
      const cutTo = Math.min(sample.numberOfFrames, Math.round((toS - sample.timestamp) * sample.sampleRate));
      if (cutTo > cutFrom) await writer.put(sample.trim(cutFrom, cutTo));
      sample.close();
      yield writer.reachedS();
    }
    await writer.endPiece();
  }
}
