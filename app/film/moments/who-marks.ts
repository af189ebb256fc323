/** Whose initials stand at a new moment: remembered by this browser, changed where a moment is changed. */
export const kept = (): string => localStorage.getItem(KEY) ?? '';

export const keep = (by: string): void => localStorage.setItem(KEY, by);

const KEY = 'icewright.marks-as';
