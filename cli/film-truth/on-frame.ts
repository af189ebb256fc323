/** Which pictures are asked for: every `step`th up to the one of this rank. */
export interface Asked {
  readonly step: number;
  /** In colours, four bytes a pixel, not in grey. */
  readonly inColour?: boolean;
  /** Of those only these ranks. */
  readonly only?: readonly number[];
  readonly lastIndex: number;
}

/** One picture as shown: turned, in grey or in colours. The number is its rank in the order of showing. */
export type OnFrame = (frameIndex: number, picture: Uint8Array, widthPx: number, heightPx: number) => void;
