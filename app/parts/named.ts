/** A title as it is shown: what has none yet still says what it is. */
export const named = (
  title: string,
  what: 'habit' | 'skater' | 'practice' | 'drill' | 'block' | 'unit' | 'meeting',
): string => (title.trim() === '' ? `${what} without a name` : title);
