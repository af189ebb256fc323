import type { Drill } from '@icewright/book';

/**
 * Whether nothing at all has been changed between two states of a drill: only then does one undo take back what led to it. In what order
 * their parts lie says nothing.
 */
export const isSameDrill = (one: Drill, other: Drill): boolean => isSame(one, other);

const isSame = (one: unknown, other: unknown): boolean => {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const keys = keysOf(one);
  return (
    Array.isArray(one) === Array.isArray(other) &&
    keys.length === keysOf(other).length &&
    keys.every(key => isSame(one[key as never], other[key as never]))
  );
};

/** What is left out and what is nothing are one. */
const keysOf = (part: object): readonly string[] =>
  Object.keys(part).filter(key => part[key as never] !== undefined);
