/**
 * An act that goes away with what it did takes the focus with it; whoever works by keys goes on from the first of these that is there.
 * Asked while the act still has the focus.
 */
export const focusNext = (...selectors: readonly string[]): void => {
  if (!document.activeElement?.matches(':focus-visible')) return;
  requestAnimationFrame(() => {
    if (document.activeElement !== document.body && document.activeElement?.isConnected) return;
    for (const selector of selectors) {
      const next = document.querySelector<HTMLElement>(selector);
      if (next) return next.focus();
    }
  });
};
