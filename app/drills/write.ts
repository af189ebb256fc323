import type { Drill, Path } from '@icewright/book';

/**
 * One change of a drill, as it will be written into the document: the value at a path, or nothing when it goes.
 * The same writes make the preview under the hand and the change that is kept, so that both are one thing.
 */
export interface Write {
  readonly path: Path;
  readonly value: unknown;
}

/** The drill as it would stand after these writes. Parts that do not change keep their identity. */
export function afterWrites(drill: Drill, writes: readonly Write[]): Drill {
  return writes.reduce<Drill>((plan, { path, value }) => withValue(plan, path, value) as Drill, drill);
}

function withValue(node: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const before = (node ?? {}) as Record<string, unknown>;
  if (rest.length > 0) return { ...before, [key]: withValue(before[key], rest, value) };
  if (value !== undefined) return { ...before, [key]: value };
  const { [key]: _gone, ...left } = before;
  return left;
}
