/** The two ends of the sheet. Never "left" or "right", never "home" or "away" in the engine. */
export type End = 'minusX' | 'plusX';

/** Us (the team that is coached) and them. */
export type Side = 'us' | 'them';

/** The end that is not this one. */
export const otherEnd = (end: End): End => (end === 'plusX' ? 'minusX' : 'plusX');
