/** What is wrong with a value, as data: a screen makes a sentence of it. */
export interface Issue {
  readonly code: string;
  /** From the root of the document to the value. */
  readonly path: readonly string[];
  /** The value that was found, kept so that a person can be asked about it. */
  readonly value: unknown;
  readonly message: string;
}
