import type { OfferAccuracy, OfferReport } from './measure-offers.ts';

/** Lines that say how true offered pins are. */
export const offerWords = (report: OfferReport): string[] => [
  'Pins offered by the machine, each picture alone (within: middle one of all places in view ≤ 0.5 m from the truth)',
  '              pictures   offered    within   confidently wrong   median     p95   a picture',
  lineOf('even samples', report.even),
  lineOf('odd samples', report.odd),
  'Thresholds were chosen by looking at even samples of the four films of the fixtures; odd ones, and other films, were not looked at.',
];

const lineOf = (name: string, one: OfferAccuracy): string => {
  const share = (count: number) =>
    ` ${count} (${one.count > 0 ? ((100 * count) / one.count).toFixed(0) : '–'} %)`.padStart(10);
  const metres = (value: number) => (Number.isFinite(value) ? `${value.toFixed(2)} m` : '–').padStart(8);
  const listed = (counts: Readonly<Record<string, number>>) =>
    Object.entries(counts)
      .map(([key, times]) => `${times} × ${key}`)
      .join(', ');
  const none = listed(one.refused);
  const wrong = one.wrong.length > 0 ? ` (pictures ${one.wrong.join(', ')})` : '';
  return `${name.padEnd(13)}${String(one.count).padStart(9)}${share(one.offered)}${share(one.within)}${`${one.wrong.length}${wrong}`.padStart(20)} ${metres(one.medianM)}${metres(one.p95M)}${`${one.perPictureMs.toFixed(0)} ms`.padStart(12)}${none === '' ? '' : `   none: ${none}`}   ends: ${listed(one.ends)}`;
};
