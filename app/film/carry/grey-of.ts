/** A picture in grey, row by row. */
export interface Grey {
  readonly grey: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** The grey of a decoded frame as coded: its first plane where it has planes, else by way of red, green and blue. */
export const greyOf = async (frame: VideoFrame): Promise<Grey> => {
  const { width, height } = frame.visibleRect ?? { width: frame.codedWidth, height: frame.codedHeight };
  const grey = new Uint8Array(width * height);
  const isPlanar = PLANAR.has(frame.format ?? '');
  const asked: VideoFrameCopyToOptions = isPlanar ? {} : { format: 'RGBA' };
  const bytes = new Uint8Array(frame.allocationSize(asked));
  const [{ offset, stride }] = (await frame.copyTo(bytes, asked)) as [PlaneLayout];
  for (let y = 0; y < height; y++) {
    const row = offset + y * stride;
    if (isPlanar) grey.set(bytes.subarray(row, row + width), y * width);
    else {
      for (let x = 0, at = row; x < width; x++, at += 4) {
        grey[y * width + x] = 0.299 * bytes[at]! + 0.587 * bytes[at + 1]! + 0.114 * bytes[at + 2]!;
      }
    }
  }
  return { grey, width, height };
};

const PLANAR: ReadonlySet<string> = new Set(['I420', 'I420A', 'I422', 'I444', 'NV12']);

/** A coded picture as it is shown: turned clockwise, then mirrored. */
export const shownGrey = (coded: Grey, rotationDeg: 0 | 90 | 180 | 270, flipped: boolean): Grey => {
  if (rotationDeg === 0 && !flipped) return coded;
  const { grey, width, height } = coded;
  const isSideways = rotationDeg === 90 || rotationDeg === 270;
  const [across, down] = isSideways ? [height, width] : [width, height];
  const shown = new Uint8Array(grey.length);
  for (let y = 0; y < down; y++) {
    for (let x = 0; x < across; x++) {
      const left = flipped ? across - 1 - x : x;
      const from =
        rotationDeg === 90
          ? (height - 1 - left) * width + y
          : rotationDeg === 180
            ? (height - 1 - y) * width + width - 1 - left
            : rotationDeg === 270
              ? left * width + width - 1 - y
              : y * width + left;
      shown[y * across + x] = grey[from]!;
    }
  }
  return { grey: shown, width: across, height: down };
};
