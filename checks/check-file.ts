import { CaseShapeError, Fields, isRecord } from './fields.ts';

/** A file of cases: `{about, source, units, tolerance, cases: [{name, input, expected}]}`. */
export interface CheckFile {
  readonly about: string;
  readonly source: string;
  readonly tolerance: Fields;
  readonly cases: readonly NamedCase[];
}

export interface NamedCase {
  readonly name: string;
  readonly value: Readonly<Record<string, unknown>>;
}

/** Why a text is no file of cases: one sentence that says what and where. */
export interface NotACheckFile {
  readonly kind: 'none';
  readonly reason: string;
}

/** Reads the text of a file. Cases are checked one by one when they run; here only the frame has to be right. */
export const checkFileOf = (text: string): CheckFile | NotACheckFile => {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (error) {
    return refuse(`it is not JSON (${error instanceof Error ? error.message : 'unreadable'})`);
  }
  if (!isRecord(parsed)) return refuse('its top level is not an object');
  const { cases, tolerance } = parsed;
  if (!Array.isArray(cases)) return refuse('it has no list "cases"');
  if (cases.length === 0) return refuse('its list "cases" is empty');
  if (tolerance !== undefined && !isRecord(tolerance)) return refuse('its "tolerance" is not an object');
  try {
    return {
      about: textOf(parsed.about),
      source: textOf(parsed.source),
      tolerance: new Fields(tolerance ?? {}, 'tolerance'),
      cases: cases.map(namedCaseOf),
    };
  } catch (error) {
    if (error instanceof CaseShapeError) return refuse(error.message);
    throw error;
  }
};

const refuse = (reason: string): NotACheckFile => ({ kind: 'none', reason });

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

const namedCaseOf = (value: unknown, index: number): NamedCase => {
  if (!isRecord(value)) throw new CaseShapeError(`cases[${index}] is not an object`);
  const name = typeof value.name === 'string' ? value.name : `case ${index + 1}`;
  return { name, value };
};
