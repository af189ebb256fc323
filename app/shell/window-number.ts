/**
 * Which of this browser's windows on the workbench this is: 1 for the first, and the lowest free one for each further. It is
 * the same after a reload, and after the browser died the first window opened is the first again. So what is one window's own
 * comes back to it, and two windows never write over each other's.
 */
export const windowNumber = (): Promise<number> => {
  found ??= findNumber();
  return found;
};

let found: Promise<number> | undefined;

const KEPT_AS = 'icewright.window';
/** So long the page that was here before this one may take to let go of its number. */
const LEAVES_WITHIN_MS = 500;

async function findNumber(): Promise<number> {
  // Only a safe place has locks; elsewhere all windows are one.
  if (navigator.locks === undefined) return 1;
  const before = Number(sessionStorage.getItem(KEPT_AS));
  // A window that was doubled has the number of the first, which is held.
  if (before > 0 && (await isHeld(before, { signal: AbortSignal.timeout(LEAVES_WITHIN_MS) }))) return before;
  let number = 1;
  while (!(await isHeld(number, { ifAvailable: true }))) number += 1;
  sessionStorage.setItem(KEPT_AS, String(number));
  return number;
}

/** Takes the number until the page goes: by itself a page that is loaded again lets go of it only some time after the new one has begun. */
const isHeld = (number: number, how: LockOptions): Promise<boolean> =>
  new Promise(resolve => {
    navigator.locks
      .request(`icewright.window.${number}`, how, lock => {
        resolve(lock !== null);
        if (lock === null) return;
        takeBackWhenShownAgain(number);
        return untilPageGoes();
      })
      .catch(() => resolve(false));
  });

const untilPageGoes = (): Promise<void> =>
  new Promise(resolve => addEventListener('pagehide', () => resolve(), { once: true }));

/** A browser may keep a page that was left, and show it again as it was. */
const takeBackWhenShownAgain = (number: number): void => {
  const shown = ({ persisted }: PageTransitionEvent) => {
    if (persisted) void isHeld(number, { ifAvailable: true });
  };
  addEventListener('pageshow', shown, { once: true });
};
