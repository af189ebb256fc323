/** Why a file cannot be used as film: one sentence, and one thing to do. */
export interface Refusal {
  readonly kind: 'refused';
  readonly reason: RefusalReason;
  readonly says: string;
  readonly todo: string;
}

export type RefusalReason =
  | 'empty'
  | 'text'
  | 'photo'
  | 'notFilm'
  | 'indexMissing'
  | 'soundOnly'
  | 'unknownCodec'
  | 'unknownContainer'
  | 'noFrames'
  | 'unreadable';

const COPY =
  'Make a copy with the picture in H.264 (an .mp4 file) and open the copy; the old file stays as it is.';
const CHOOSE = 'Choose the recording itself, usually an .mp4, .mov, .mkv or .webm file.';

const WORDS: Record<
  Exclude<RefusalReason, 'unknownCodec' | 'unknownContainer'>,
  readonly [says: string, todo: string]
> = {
  empty: [
    'This file is empty: it has no bytes at all.',
    'Copy it from the camera again, and open that copy.',
  ],
  text: ['This file is text, not a film.', CHOOSE],
  photo: ['This file is a photo, not a film.', CHOOSE],
  notFilm: ['This file is not a film that can be read here.', CHOOSE],
  indexMissing: [
    'This recording was cut off: the index that says where each picture lies is missing.',
    'Copy it from the camera again; if the camera stopped while recording, let the camera repair it first.',
  ],
  soundOnly: ['This file holds only sound: there is no picture in it.', CHOOSE],
  unreadable: [
    'This file could not be read to its end.',
    'It may have been moved, or its disc taken out: open it again.',
  ],
  noFrames: ['This film has no pictures in it.', 'Copy it from the camera again, and open that copy.'],
};

export const refusalOf = (reason: keyof typeof WORDS): Refusal => {
  const [says, todo] = WORDS[reason];
  return { kind: 'refused', reason, says, todo };
};

export const codecRefusal = (codecName: string): Refusal => ({
  kind: 'refused',
  reason: 'unknownCodec',
  says: `This machine cannot show this film: the picture is ${codecName}.`,
  todo: COPY,
});

export const containerRefusal = (containerName: string): Refusal => ({
  kind: 'refused',
  reason: 'unknownContainer',
  says: `Browsers do not read this kind of film: it is ${containerName} file.`,
  todo: COPY,
});

/** The film is whole; only this machine's browser cannot show it as it is. */
export const canBeConverted = ({ reason }: Refusal): boolean =>
  reason === 'unknownCodec' || reason === 'unknownContainer';

/** The trade name of a picture codec, from the library's short name or from the container's own id. */
export const codecNameOf = (codec: string | null, containerId: string | null): string => {
  const id = (codec ?? containerId ?? '').trim();
  return CODEC_NAMES.find(([test]) => test.test(id))?.[1] ?? (id === '' ? 'of an unknown kind' : id);
};

/** The trade name of a sound codec, in the same way. */
export const soundNameOf = (codec: string | null, containerId: string | null): string => {
  const id = (codec ?? containerId ?? '').trim();
  return SOUND_NAMES.find(([test]) => test.test(id))?.[1] ?? (id === '' ? 'of an unknown kind' : id);
};

const SOUND_NAMES: readonly (readonly [RegExp, string])[] = [
  [/^(ec-?3|eac3|A_EAC3)/i, 'E-AC-3 (Dolby Digital Plus)'],
  [/^(ac-?3|A_AC3)/i, 'AC-3 (Dolby Digital)'],
  [/^(dts|A_DTS)/i, 'DTS'],
  [/^(mlpa|A_TRUEHD)/i, 'TrueHD'],
  [/^(alac|A_ALAC)/i, 'Apple Lossless'],
  [/^(mp2|A_MPEG\/L2)/i, 'MPEG layer 2'],
];

const CODEC_NAMES: readonly (readonly [RegExp, string])[] = [
  [/^(hevc|hvc1|hev1|V_MPEGH)/i, 'HEVC (H.265)'],
  [/^(avc|avc1|avc3|V_MPEG4\/ISO\/AVC)/i, 'H.264 in a form this browser does not decode'],
  [/^(mp4v|V_MPEG4\/ISO)/i, 'MPEG-4 part 2'],
  [/FFV1/i, 'FFV1'],
  [/^(ap4h|ap4x|apch|apcn|apcs|apco|V_PRORES)/i, 'ProRes'],
  [/^(mjp|jpeg|V_MJPEG)/i, 'Motion JPEG'],
  [/^(m2v|mp2v|V_MPEG2|xdv|hdv)/i, 'MPEG-2'],
  [/^(av01|av1|V_AV1)/i, 'AV1'],
  [/^(vp09|vp9|V_VP9)/i, 'VP9'],
];
