import type { DrillPlan } from '../drill/drill.ts';
import type { MendWrite } from './mend.ts';

/**
 * The plan as it stands after these writes, in their order; parts that do not change keep their identity. Any path of keys; one
 * that leads nowhere yet is made. The plan given is not changed.
 */
export const planAfter = <Plan extends DrillPlan>(plan: Plan, writes: readonly MendWrite[]): Plan =>
  writes.reduce<Plan>((before, { path, value }) => withValue(before, path, value) as Plan, plan);

const withValue = (node: unknown, path: readonly string[], value: unknown): unknown => {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const before = (node ?? {}) as Record<string, unknown>;
  if (rest.length > 0) return { ...before, [key]: withValue(before[key], rest, value) };
  if (value !== undefined) return { ...before, [key]: value };
  const { [key]: _gone, ...left } = before;
  return left;
};
