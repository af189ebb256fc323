/** How long something still takes. Rounded up: who is told too little waits twice. */
export const leftSaid = (leftS: number): string =>
  leftS < 60 ? `about ${Math.max(1, Math.ceil(leftS))} s left` : `about ${Math.ceil(leftS / 60)} min left`;
