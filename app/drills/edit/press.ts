/** Movement under this is a press that trembled, px of the screen. */
export const STILL_PX = { mouse: 3, pen: 5, touch: 8 } as const;
/** A finger that rests so long means to select, not to push the page. */
export const LONG_PRESS_MS = 450;
/** Two presses within this are one double press. */
export const DOUBLE_PRESS_MS = 350;
/** Nearer than this on the screen the hand is drawn to a marking: a fingertip is broader than a pointer. */
const CATCH_PX = { mouse: 5, pen: 7, touch: 10 } as const;
/** What a finger holds stands so far above it, so that it can be seen; it gets there as the finger moves. */
const LIFT_PX = 44;

export type Tool = keyof typeof STILL_PX;

export const toolOf = (event: { readonly pointerType: string }): Tool =>
  event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse';

export const catchPx = (tool: Tool): number => CATCH_PX[tool];

/** How far the thing stands above the finger once this has moved so far at most. */
export const liftPx = (tool: Tool, farthestPx: number): number =>
  tool === 'touch' ? Math.min(LIFT_PX, farthestPx * 0.8) : 0;
