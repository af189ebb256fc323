import { describe, expect, it } from 'vitest';
import type { Thing, Tool } from './freeze-desk.ts';
import { isCaught } from './press-at.ts';

const PIN: Thing = { kind: 'pin', id: 'pin-1' };
const SKATER: Thing = { kind: 'skater', id: 'placed-1' };
const PUCK: Thing = { kind: 'puck', id: 'puck' };

describe('a press on something that lies there', () => {
  it.each<Tool>([
    { kind: 'puck' },
    { kind: 'place', side: 'us', who: 'skater' },
    { kind: 'place', side: 'them', who: 'goalie' },
    { kind: 'wanted' },
    { kind: 'pin', landmark: 'centreSpot' },
  ])('puts down what is in use, $kind, and takes hold of nothing', tool => {
    for (const thing of [PIN, SKATER, PUCK]) expect(isCaught(tool, thing)).toBe(false);
  });

  it('takes hold of anything while nothing is in use', () => {
    for (const thing of [PIN, SKATER, PUCK]) expect(isCaught({ kind: 'look' }, thing)).toBe(true);
  });

  it('lets a pin be mended while pins are put down, and nobody be moved by it', () => {
    expect(isCaught({ kind: 'pin' }, PIN)).toBe(true);
    expect(isCaught({ kind: 'pin' }, SKATER)).toBe(false);
  });
});
