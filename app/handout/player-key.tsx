import type { DrillPlan, Rink, Run } from '@icewright/engine';
import { drawnMarks, KEY_SIGNS, KEY_WORDS, type KeyEntry, NARROW_SIGNS, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import './player-key.css';

/** What the marks on the drawing mean, those on it and no others, as large as a phone needs them. */
export function PlayerKey({
  plan,
  rink,
  run,
}: {
  readonly plan: DrillPlan;
  readonly rink: Rink;
  readonly run: Run | undefined;
}) {
  const signs = useMemo(
    () =>
      drawnMarks([{ plan, rink, ...(run && { run }) }]).map(entry => ({
        entry,
        markup: svgParts(KEY_SIGNS[entry], { idPrefix: `key-${entry}` }),
      })),
    [plan, rink, run],
  );
  if (signs.length === 0) return null;
  return (
    <section aria-label="What the marks mean">
      <h2>What the marks mean</h2>
      <ul className="player-key">
        {signs.map(({ entry, markup }) => (
          <li key={entry}>
            <svg
              className="ice-svg"
              viewBox={VIEW_BOX[widthOf(entry)]}
              aria-hidden="true"
              // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
              dangerouslySetInnerHTML={{ __html: markup }}
            />
            <span>{KEY_WORDS[entry]}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

const widthOf = (entry: KeyEntry) => (NARROW_SIGNS.includes(entry) ? 'thing' : 'line');

/** Ice metres: a small thing is drawn larger than a line's sign, or its letter could not be read. */
const VIEW_BOX = { line: '-3.8 -1.4 7.6 2.8', thing: '-3.3 -1.2 6.6 2.4' } as const;
