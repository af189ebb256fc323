/** JSON whose bytes depend on the content alone: keys by name, one space a level, a line at the end. */
export const stableJson = (value: unknown): string => `${JSON.stringify(sorted(value), null, 1)}\n`;

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, sorted(inner)]));
}
