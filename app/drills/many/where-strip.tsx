import type { Drill } from '@icewright/book';
import { findLineOf, type OutcomeTally, placesOf, type Rink } from '@icewright/engine';
import { drawWhereStrip, rinkViewBox, svgParts, WHERE_STRIP_HEIGHT_PX } from '@icewright/picture';
import { useMemo } from 'react';
import { countSaid, type Lengths } from '../../parts/figures.ts';
import { useWidth } from '../../parts/use-width.ts';
import { wantWords } from './habit-wants.ts';
import type { Many } from './use-many.ts';

interface Props {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly many: Many;
  readonly lengths: Lengths;
  /** There is a rep: the strip has its room below the ice, whatever comes out of it. */
  readonly hasRep: boolean;
}

/** Where the wanted came along the sheet, on the scale of the ice above it. */
export function WhereStrip(props: Props) {
  const { tally, wanted } = props.many;
  if (!props.hasRep) return null;
  // Its rule is kept, with words under it, while it has nothing to show: what is below must not jump under a hand.
  if (wanted === null)
    return (
      <Strip {...props} said="Where it comes to pass stands here, once something can come out two ways." />
    );
  const asked = wantWords(wanted, props.drill, props.many.habitWants);
  if (asked.where === undefined) return <Strip {...props} said="It has no one place on the sheet." />;
  const counted = tally?.outcomes[0];
  if (!tally || !counted) return <Strip {...props} said={`${asked.where}.`} />;
  const words = wantWords(counted.outcome, props.drill, props.many.habitWants);
  if (words.where === undefined) return <Strip {...props} said={`${asked.where}.`} />;
  if (counted.yes.count + counted.other.count === 0)
    return <Strip {...props} said={`${words.where}: in none of ${countSaid(tally.repCount, 'rep')}.`} />;
  const said = `${words.where}, ${countSaid(tally.repCount, 'rep')}. Dark: ${words.yes}. Open: ${words.other}.`;
  return <Strip {...props} counted={counted} said={said} />;
}

function Strip(props: Props & { readonly counted?: OutcomeTally; readonly said: string }) {
  const { rink, many, lengths, counted, said } = props;
  const [box, width] = useWidth<HTMLDivElement>();
  const markup = useMemo(() => {
    if (width === 0) return '';
    const [x, , iceWidth] = rinkViewBox(rink);
    const line = counted && findLineOf(counted.outcome);
    return svgParts(
      pen =>
        drawWhereStrip(
          pen,
          {
            fromXM: x,
            toXM: x + iceWidth,
            minXM: rink.area.minXM,
            maxXM: rink.area.maxXM,
            yesXM: counted === undefined ? [] : placesOf(counted.yes).map(({ xM }) => xM),
            otherXM: counted === undefined ? [] : placesOf(counted.other).map(({ xM }) => xM),
            lengths,
            ...(line !== undefined && { lineXM: rink.lines[line].centreXM }),
          },
          width,
        ),
      { idPrefix: 'where' },
    );
  }, [width, counted, rink, lengths]);
  const isStale = counted !== undefined && many.isStale;
  return (
    <figure className={isStale ? 'where-strip is-stale' : 'where-strip'}>
      <div ref={box}>
        <svg
          className="ice-svg"
          width={width}
          height={WHERE_STRIP_HEIGHT_PX}
          viewBox={`0 0 ${Math.max(1, width)} ${WHERE_STRIP_HEIGHT_PX}`}
          role="img"
          aria-label={said}
          // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
          dangerouslySetInnerHTML={{ __html: markup }}
        />
      </div>
      <figcaption className="cap">
        {isStale && 'was: '}
        {said}
      </figcaption>
    </figure>
  );
}
