/** One value under a moving hand, shown by a few parts of the page that each take their turn after a picture. */
export interface Follow<Value> {
  /** The value of the picture that is being made. It is shown further once that picture is out. */
  readonly tell: (value: Value) => void;
  /** Nothing moves any more: everybody has the value by itself. */
  readonly rest: () => void;
  /** Joins those who follow; what is given back leaves them. */
  readonly join: (show: (value: Value) => void) => () => void;
}

/** How the page times its pictures; tests give one of their own. */
export interface PictureTimes {
  /** Calls when the picture that is being made is out. What it gives back calls it off. */
  readonly afterPicture: (call: () => void) => () => void;
  /** How long the page has been at this picture, ms. */
  readonly spentMs: () => number;
  readonly nowMs: () => number;
}

/** A picture that took no longer leaves room for a follower before the next one, ms. Our choice: most of a frame of 16 ms. */
const ROOM_MS = 12;
/** No figure is older than this without its word, as --m-stale-after of the tokens, ms. */
const LATEST_MS = 400;

/**
 * The picture of the hand comes first. After it one follower shows the same value, the one that has waited longest, if
 * there was room; where pictures are slow, only one that would else be late.
 */
export function followAfter<Value>(times: PictureTimes): Follow<Value> {
  const followers = new Map<(value: Value) => void, number>();
  let told: { readonly value: Value } | null = null;
  let callOff = (): void => {};

  const turn = (): void => {
    if (told === null) return;
    const [show, shownMs] =
      [...followers].sort(([, one], [, other]) => one - other)[0] ?? ([null, 0] as const);
    if (show === null) return;
    const nowMs = times.nowMs();
    if (times.spentMs() > ROOM_MS && nowMs - shownMs < LATEST_MS) return;
    followers.set(show, nowMs);
    show(told.value);
  };
  return {
    tell: value => {
      // The first of a movement: until now everybody had it.
      if (told === null) for (const show of followers.keys()) followers.set(show, times.nowMs());
      told = { value };
      callOff();
      callOff = times.afterPicture(turn);
    },
    rest: () => {
      callOff();
      told = null;
    },
    join: show => {
      followers.set(show, times.nowMs());
      return () => followers.delete(show);
    },
  };
}

/** The first task after the next frame: the picture is out. */
export const PAGE_TIMES: PictureTimes = {
  afterPicture: call => {
    let isOff = false;
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      if (!isOff) call();
    };
    // Told inside a frame, that frame's picture is made before the next task.
    channel.port2.postMessage(0);
    return () => {
      isOff = true;
    };
  },
  spentMs: () => performance.now() - Number(document.timeline.currentTime ?? 0),
  nowMs: () => performance.now(),
};
