// The part of bezier-js that the tests use; the package carries no types.
declare module 'bezier-js' {
  export class Bezier {
    constructor(...points: readonly { readonly x: number; readonly y: number }[]);
    length(): number;
  }
}
