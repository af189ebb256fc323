/** pdfkit brings no types; `parts/paper-pdf.ts` says what it uses of it. */
declare module 'pdfkit';
