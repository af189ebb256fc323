/** pdfkit brings no types; `card-pdf.ts` says what it uses of it. */
declare module 'pdfkit';
