// The face of the checks room: read a file of cases, compute them, report.
export { type CheckFile, checkFileOf, type NotACheckFile } from './check-file.ts';
export { type CheckFailure, type CheckReport, runChecks } from './run-checks.ts';
