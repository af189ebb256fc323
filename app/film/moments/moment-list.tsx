import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { type ReactNode, useCallback, useLayoutEffect, useRef, useState } from 'react';
import type { ListedMoment } from './filter-moments.ts';
import { MomentRows, type RowActs } from './moment-rows.tsx';

/** Up to here every row is in the page; a whole game with more has only the rows about the window. */
const ALL_ROWS = 80;
const ROW_PX = 28;

/** The moments as a timetable; the chosen one opens below itself to be changed. */
export function MomentList(
  props: RowActs & {
    readonly moments: readonly ListedMoment[];
    readonly chosen: string | undefined;
  },
) {
  const { moments, ...rows } = props;
  if (moments.length === 0) return null;
  if (moments.length <= ALL_ROWS) {
    return (
      <Timetable>
        {moments.map(([id, moment]) => (
          <tbody key={id}>
            <MomentRows {...rows} id={id} moment={moment} isChosen={rows.chosen === id} />
          </tbody>
        ))}
      </Timetable>
    );
  }
  return <LongList {...props} />;
}

function LongList(
  props: RowActs & { readonly moments: readonly ListedMoment[]; readonly chosen: string | undefined },
) {
  const { moments, ...rows } = props;
  const frame = useRef<HTMLDivElement>(null);
  const [scrollMargin, setScrollMargin] = useState(0);
  useLayoutEffect(() => {
    const top = frame.current?.getBoundingClientRect().top ?? 0;
    setScrollMargin(top + window.scrollY);
  }, []);
  const virtual = useWindowVirtualizer({
    count: moments.length,
    estimateSize: () => ROW_PX,
    overscan: 20,
    scrollMargin,
    // The same while the moments are: with another, all of them are measured anew.
    getItemKey: useCallback((index: number) => moments[index]![0], [moments]),
  });
  const shown = virtual.getVirtualItems();
  const above = (shown[0]?.start ?? scrollMargin) - scrollMargin;
  const below = virtual.getTotalSize() - ((shown.at(-1)?.end ?? scrollMargin) - scrollMargin);
  return (
    <div ref={frame}>
      <Timetable rowCount={moments.length + 1}>
        <Gap px={above} />
        {shown.map(({ key, index }) => {
          const [id, moment] = moments[index]!;
          return (
            <tbody key={key} data-index={index} ref={virtual.measureElement}>
              <MomentRows {...rows} id={id} moment={moment} isChosen={rows.chosen === id} />
            </tbody>
          );
        })}
        <Gap px={below} />
      </Timetable>
    </div>
  );
}

/** Of a long list only the rows about the window are there: its columns must not go by what stands in those. */
function Timetable({ rowCount, children }: { readonly rowCount?: number; readonly children: ReactNode }) {
  return (
    <table className={rowCount === undefined ? 'tt moments' : 'tt moments long'} aria-rowcount={rowCount}>
      <thead>
        <tr>
          <th>Clock</th>
          <th>Habit</th>
          <th>
            <span className="vh">Verdict</span>
          </th>
          <th>Who</th>
          <th>What was seen</th>
          <th className="r">Cost, goals</th>
          <th>By</th>
        </tr>
      </thead>
      {children}
    </table>
  );
}

/** Stands for the rows that are not in the page. */
const Gap = ({ px }: { readonly px: number }) =>
  px <= 0 ? null : (
    <tbody aria-hidden="true" className="rows-away">
      <tr style={{ height: px }}>
        <td colSpan={7} />
      </tr>
    </tbody>
  );
