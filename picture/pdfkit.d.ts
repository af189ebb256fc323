/** pdfkit brings no types; `print.test.ts` says what the tests use of it. */
declare module 'pdfkit';
