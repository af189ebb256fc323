/** The five lines across the sheet that a puck or a skater can cross. */
export type LineId = 'goalLineMinusX' | 'blueLineMinusX' | 'centreLine' | 'blueLinePlusX' | 'goalLinePlusX';

export const LINE_IDS: readonly LineId[] = [
  'goalLineMinusX',
  'blueLineMinusX',
  'centreLine',
  'blueLinePlusX',
  'goalLinePlusX',
];
