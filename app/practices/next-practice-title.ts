/** Counts on from the highest number that a title ends with, whatever was taken out or named otherwise. */
export function nextPracticeTitle(titles: readonly string[]): string {
  const numbers = titles.map(title => Number(/\b(\d{1,4})\s*$/.exec(title)?.[1] ?? 0));
  return `Practice ${Math.max(0, ...numbers) + 1}`;
}
