/** One picture as shown: turned, in grey. The number is its rank in the order of showing. */
export type OnFrame = (frameIndex: number, grey: Uint8Array, widthPx: number, heightPx: number) => void;
