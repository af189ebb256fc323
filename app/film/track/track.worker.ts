import {
  carriedFitsOf,
  type FoundWays,
  followedWay,
  type GreyPicture,
  lookStrideCount,
  type SkaterFollower,
  skaterFollowerOf,
} from '@icewright/engine';
import { greyFrames } from '../carry/grey-frames.ts';
import { gapKey, type HandGap, handGaps } from './hand-gaps.ts';
import type { FollowedSkater, SoughtSkater, TrackAsk, TrackSaid } from './track-messages.ts';

/** Follows skaters through the gaps between their hands that are not known yet; whoever no longer wants it ends the worker. */
addEventListener('message', ({ data }: MessageEvent<TrackAsk>) => {
  follow(data).catch((error: unknown) =>
    say({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
  );
});

const say = (said: TrackSaid): void => postMessage(said);

interface Sought {
  readonly skater: SoughtSkater;
  readonly follower: SkaterFollower;
  readonly gaps: readonly HandGap[];
}

const follow = async (ask: TrackAsk): Promise<void> => {
  const { timesS, tied, power, skaters } = ask;
  const { frames } = tied.stretch;
  const [first, last] = [frames[0], frames[frames.length - 1]];
  if (!first || !last) return say({ kind: 'failed', why: 'the camera was not followed' });
  const within = { fromFrame: first.frameIndex, toFrame: last.frameIndex };
  const fitAt = carriedFitsOf(tied.stretch, tied.lens, tied.pinned);
  const stride = lookStrideCount(frames.length / (timesS[within.toFrame]! - timesS[within.fromFrame]! || 1));
  const hands = new Set(skaters.flatMap(({ marks }) => marks.map(({ frameIndex }) => frameIndex)));
  const isLook = (frame: number) => (frame - within.fromFrame) % stride === 0 || hands.has(frame);
  const sought = skaters.map((skater): Sought => {
    const known = new Set(skater.known.map(gapKey));
    const gaps = handGaps(skater.marks, within, timesS).filter(gap => !known.has(gapKey(gap)));
    return { skater, gaps, follower: skaterFollowerOf(skater.marks, fitAt, power) };
  });
  const covers = (gaps: readonly HandGap[], frame: number) =>
    gaps.some(({ fromFrame, toFrame }) => frame >= fromFrame && frame <= toFrame);
  const all = sought.flatMap(({ gaps }) => gaps);
  if (all.length > 0) {
    const fromFrame = Math.min(...all.map(gap => gap.fromFrame));
    const toFrame = Math.max(...all.map(gap => gap.toFrame));
    const wanted = (frame: number) => isLook(frame) && covers(all, frame);
    let ofCount = 0;
    for (let frame = fromFrame; frame <= toFrame; frame++) if (wanted(frame)) ofCount++;
    let frameCount = 0;
    const why = await greyFrames(ask, fromFrame, toFrame, wanted, (at, { grey, width, height }) => {
      const picture = shownSize({ widthPx: width, heightPx: height, grey }, ask);
      for (const { gaps, follower } of sought) if (covers(gaps, at)) follower.next(at, timesS[at]!, picture);
      frameCount++;
      if (frameCount % SAY_EVERY === 0) say({ kind: 'looked', frameCount, ofCount });
    });
    if (why !== undefined) return say({ kind: 'failed', why });
  }
  const looks: { frameIndex: number; timeS: number }[] = [];
  for (let frame = within.fromFrame; frame <= within.toFrame; frame++) {
    if (isLook(frame)) looks.push({ frameIndex: frame, timeS: timesS[frame]! });
  }
  say({
    kind: 'done',
    skaters: sought.map(({ skater, gaps, follower }): FollowedSkater => {
      const fresh = new Set(gaps.map(gapKey));
      const ways: FoundWays[] = [...skater.known, ...follower.end().filter(one => fresh.has(gapKey(one)))];
      return { id: skater.id, ways, looks: followedWay(ways, skater.marks, fitAt, looks, power) };
    }),
  });
};

const SAY_EVERY = 4;

/** Films whose pixels are not square are shown wider or higher than they are coded. */
const shownSize = (
  picture: GreyPicture,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): GreyPicture => {
  if (picture.widthPx === widthPx && picture.heightPx === heightPx) return picture;
  const grey = new Uint8Array(widthPx * heightPx);
  for (let y = 0, to = 0; y < heightPx; y++) {
    const row = Math.floor((y * picture.heightPx) / heightPx) * picture.widthPx;
    for (let x = 0; x < widthPx; x++, to++) {
      grey[to] = picture.grey[row + Math.floor((x * picture.widthPx) / widthPx)]!;
    }
  }
  return { widthPx, heightPx, grey };
};
