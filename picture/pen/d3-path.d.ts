/** The part of d3-path 3.1 that we use; the package carries no types of its own. */
declare module 'd3-path' {
  export interface Path {
    moveTo(x: number, y: number): void;
    lineTo(x: number, y: number): void;
    quadraticCurveTo(cx: number, cy: number, x: number, y: number): void;
    bezierCurveTo(c1x: number, c1y: number, c2x: number, c2y: number, x: number, y: number): void;
    arc(x: number, y: number, radius: number, from: number, to: number, anticlockwise?: boolean): void;
    rect(x: number, y: number, width: number, height: number): void;
    closePath(): void;
    toString(): string;
  }
  export function pathRound(digits?: number): Path;
}
