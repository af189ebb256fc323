/** Something that cannot be done, in one sentence a person can act on. Shown as it is, never with a stack. */
export class Refusal extends Error {
  /** Close code on the sync line; 4000 to 4999 are free for programs (RFC 6455 §7.4.2). */
  readonly code: number;
  /** Status over HTTP. */
  readonly status: number;

  constructor(sentence: string, { code = 4400, status = 400 }: { code?: number; status?: number } = {}) {
    super(sentence);
    this.name = 'Refusal';
    this.code = code;
    this.status = status;
  }

  get reason(): string {
    return this.message;
  }
}
