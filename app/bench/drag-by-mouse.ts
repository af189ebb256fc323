import type { Page } from 'playwright-core';

export const MOVES = 60;

/** A spot once round in a circle. */
export const drag = async (page: Page, role: string, turn: 1 | -1): Promise<void> => {
  const at = await middleOf(page, role);
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  for (let move = 1; move <= MOVES; move++) {
    const angle = (2 * Math.PI * move) / MOVES;
    await page.mouse.move(at.x + 40 * Math.sin(angle), at.y + turn * 30 * (1 - Math.cos(angle)));
  }
  await page.mouse.up();
};

export interface Busy {
  readonly taskMs: number;
  readonly scriptMs: number;
  readonly layoutMs: number;
}

/** What the page's own thread did meanwhile, by the processor's clock: others on the machine do not count. */
export const busyIn = async (page: Page, work: () => Promise<void>): Promise<Busy> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const read = async (): Promise<Busy> => {
    const { metrics } = await session.send('Performance.getMetrics');
    const ms = (name: string): number => 1000 * (metrics.find(one => one.name === name)?.value ?? 0);
    return {
      taskMs: ms('TaskDuration'),
      scriptMs: ms('ScriptDuration'),
      layoutMs: ms('LayoutDuration') + ms('RecalcStyleDuration'),
    };
  };
  const before = await read();
  await work();
  const after = await read();
  await session.detach();
  return {
    taskMs: after.taskMs - before.taskMs,
    scriptMs: after.scriptMs - before.scriptMs,
    layoutMs: after.layoutMs - before.layoutMs,
  };
};

export const middleOf = async (page: Page, role: string): Promise<{ x: number; y: number }> => {
  const spot = page.getByRole('button', { name: new RegExp(`^${role}, one of`) });
  const box = await spot.locator('.hit').boundingBox();
  if (box === null) throw new Error(`${role} is not on the board`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};
