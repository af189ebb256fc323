/** "There is no answer", as a value that says why. */
export interface None<Reason extends string> {
  readonly kind: 'none';
  readonly reason: Reason;
}

/** The absence of an answer, with its reason. */
export const noneBecause = <Reason extends string>(reason: Reason): None<Reason> => ({
  kind: 'none',
  reason,
});

/** Tells an answer from its absence. Works for any value that has no field `kind` with the word 'none'. */
export const isNone = <Answer, Reason extends string>(
  answer: Answer | None<Reason>,
): answer is None<Reason> =>
  typeof answer === 'object' && answer !== null && 'kind' in answer && answer.kind === 'none';
