/** A decoded picture that can be drawn and must be closed. */
export type FilmPicture = VideoFrame | ImageBitmap;

/**
 * A copy of a decoder's frame in memory of our own: decoders of graphics cards hand out few frames and stand still until
 * they are given back. Kept in the decoder's own colours, a copy takes less than half of the memory of a bitmap and no
 * conversion. The frame itself is closed.
 */
export const ownPictureOf = async (frame: VideoFrame): Promise<FilmPicture> => {
  try {
    const { format, timestamp, codedWidth, codedHeight } = frame;
    if (format === null) return await createImageBitmap(frame);
    const bytes = new Uint8Array(frame.allocationSize());
    const layout = await frame.copyTo(bytes);
    const { width, height } = frame.visibleRect ?? { width: codedWidth, height: codedHeight };
    return new VideoFrame(bytes, {
      format,
      timestamp,
      codedWidth: width,
      codedHeight: height,
      displayWidth: frame.displayWidth,
      displayHeight: frame.displayHeight,
      colorSpace: frame.colorSpace,
      layout,
      transfer: [bytes.buffer],
    } as VideoFrameBufferInit);
  } finally {
    frame.close();
  }
};

/** Bytes that a kept picture of this size takes: 4:2:0, one and a half bytes a pixel. */
export const BYTES_A_PIXEL = 1.5;
