/** Brings the pins of a freeze that has just been opened into view, with the focus on the act that offers them. */
export const toPins = (framesLeft = 30): void => {
  requestAnimationFrame(() => {
    const act = document.querySelector<HTMLElement>('[data-act="offer-pins"]');
    if (act) {
      act.scrollIntoView({ block: 'center' });
      act.focus({ preventScroll: true });
    } else if (framesLeft > 0) toPins(framesLeft - 1);
  });
};
