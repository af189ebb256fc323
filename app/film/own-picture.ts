/** A decoded picture that can be drawn and must be closed. */
export type FilmPicture = VideoFrame | ImageBitmap;

/**
 * A picture of our own made of a decoder's frame, which is closed: decoders of graphics cards hand out few frames and stand
 * still until they are given back, and a frame is converted anew each time it is drawn, which a step cannot wait for.
 */
export const ownPictureOf = async (frame: VideoFrame): Promise<FilmPicture> => {
  try {
    return await createImageBitmap(frame);
  } finally {
    frame.close();
  }
};

/** Bytes that a kept picture takes. */
export const BYTES_A_PIXEL = 4;
