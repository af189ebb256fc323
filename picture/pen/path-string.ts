/// <reference path="./d3-path.d.ts" />
import { pathRound } from 'd3-path';
import type { PathSink } from './pen.ts';

/** The outline as an SVG path string, rounded so that golden pictures are small and stable. */
export const pathString = (draw: (sink: PathSink) => void, digits: number): string => {
  const path = pathRound(digits);
  draw(path);
  return path.toString();
};

/** A number as short as it can be written: no −0, no trailing zeros. */
export const shortNumber = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
};
