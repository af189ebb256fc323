import type { Drill } from '@icewright/book';
import type { Lengths, Run, SpotId } from '@icewright/engine';
import { lengthSaid } from '../../parts/figures.ts';
import { roleOf } from '../act-words.ts';
import { halfWidthRad } from './camera.ts';
import { clockOf, type InView, inViewOf } from './in-view.ts';
import type { Eye } from './seat.ts';

/** Who is in the picture and who is not, in words: for who cannot see it, and for who counts. */
export function SightWords(props: {
  readonly drill: Drill;
  readonly run: Run;
  readonly sample: number;
  readonly eye: Eye;
  readonly aspect: number;
  readonly self: SpotId | null;
  readonly lengths: Lengths;
}) {
  const { drill, run, sample, eye, lengths } = props;
  const view = inViewOf(run, sample, eye, halfWidthRad(props.aspect), props.self ?? undefined);
  const said = (each: InView): string =>
    `${each.spot === 'puck' ? 'the puck' : roleOf(drill, each.spot)} ${lengthSaid(each.awayM, lengths)} at ${clockOf(each.roundRad)}`;
  const seen = view.filter(each => each.isSeen);
  const unseen = view.filter(each => !each.isSeen);
  return (
    <p className="q2 sight-words">
      <b className="b">In the picture:</b> {seen.map(said).join(' · ') || 'nobody'}.{' '}
      {unseen.length > 0 && (
        <>
          <b className="b">Outside it:</b> {unseen.map(said).join(' · ')}.{' '}
        </>
      )}
      <span className="q3">
        Hours as on a clock, 12 straight ahead. Nobody is taken to hide another; heights are <i>estimates</i>.
      </span>
    </p>
  );
}
