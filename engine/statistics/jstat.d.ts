// The part of jstat that the tests use; the package carries no types.
declare module 'jstat' {
  export const jStat: {
    readonly normal: {
      cdf(x: number, mean: number, sd: number): number;
      inv(p: number, mean: number, sd: number): number;
    };
    readonly gamma: { cdf(x: number, shape: number, scale: number): number };
    gammaln(x: number): number;
  };
}
