/** Which pictures are asked for: every `step`th up to the one of this rank. */
export interface Asked {
  readonly step: number;
  readonly lastIndex: number;
}

/** One picture as shown: turned, in grey. The number is its rank in the order of showing. */
export type OnFrame = (frameIndex: number, grey: Uint8Array, widthPx: number, heightPx: number) => void;
