import type { Kind } from './kind.ts';
import { BANK_KINDS } from './kinds/bank.ts';
import { CONTROL_KINDS } from './kinds/control.ts';
import { GATE_FIT_KINDS } from './kinds/gate-fit.ts';
import { PIN_KINDS } from './kinds/pins.ts';
import { PUCK_KINDS } from './kinds/puck.ts';
import { RINK_KINDS } from './kinds/rink.ts';
import { SPRINT_KINDS } from './kinds/sprint.ts';
import { STATISTICS_KINDS } from './kinds/statistics.ts';

/** Every kind of case that can be computed. */
export const KINDS: readonly Kind[] = [
  ...BANK_KINDS,
  ...CONTROL_KINDS,
  ...GATE_FIT_KINDS,
  ...PIN_KINDS,
  ...PUCK_KINDS,
  ...RINK_KINDS,
  ...SPRINT_KINDS,
  ...STATISTICS_KINDS,
];
