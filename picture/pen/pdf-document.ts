/**
 * What the PDF pen needs of a document; pdfkit 0.20 has it. Declared here so that pictures depend on no PDF library and
 * a screen can load one only when somebody prints.
 */
export interface PdfDocument {
  save(): unknown;
  restore(): unknown;
  translate(x: number, y: number): unknown;
  rotate(degrees: number): unknown;
  scale(factor: number): unknown;
  path(outline: string): unknown;
  circle(x: number, y: number, radius: number): unknown;
  lineWidth(width: number): unknown;
  lineCap(cap: 'butt' | 'round'): unknown;
  lineJoin(join: 'miter' | 'round'): unknown;
  dash(length: number, set: { space: number }): unknown;
  opacity(opacity: number): unknown;
  fill(colour: string): unknown;
  stroke(colour: string): unknown;
  fillAndStroke(fill: string, stroke: string): unknown;
  fillColor(colour: string): unknown;
  strokeColor(colour: string): unknown;
  clip(): unknown;
  /** By a data address; its upper left corner at x, y. */
  image(dataUrl: string, x: number, y: number, set: { width: number; height: number }): unknown;
  font(name: string): unknown;
  fontSize(size: number): unknown;
  widthOfString(words: string, set: PdfTextSet): number;
  text(words: string, x: number, y: number, set: PdfTextSet): unknown;
}

export interface PdfTextSet {
  readonly lineBreak?: false;
  readonly baseline?: 'alphabetic';
  readonly horizontalScaling?: number;
  readonly features?: string[];
  readonly fill?: boolean;
  readonly stroke?: boolean;
}
