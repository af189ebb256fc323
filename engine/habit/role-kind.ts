import { isDefenderRole, isForwardRole } from './who.ts';

/**
 * What a role (any words) means where a drill is computed: standards speak of forwards and defenders by the letters, and of nothing else
 * in a name. Always answers. Source: `who.ts`.
 */
export const roleKindOf = (role: string): 'forward' | 'defender' | 'neither' => {
  if (isForwardRole(role)) return 'forward';
  return isDefenderRole(role) ? 'defender' : 'neither';
};
