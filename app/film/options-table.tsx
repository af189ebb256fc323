import type { CarryOption, PassOption } from '@icewright/engine';
import { SURELY_SDS } from '@icewright/engine';
import { inUnitsOf, lengthSaid, numberSaid, percentSaid } from '../parts/figures.ts';
import type { FreezeView } from './freeze-view.ts';
import { nameOf } from './measure-of.ts';
import { type OptionsView, optionKey } from './options-of.ts';
import { WhyRow } from './why-row.tsx';

/** What the carrier can do, best first: each pass direct and off the boards, and skating it. Pressed rows are drawn. */
export function OptionsTable({
  view,
  options,
  drawn,
  onDraw,
}: {
  readonly view: FreezeView;
  readonly options: OptionsView;
  readonly drawn: readonly string[];
  readonly onDraw: (drawn: readonly string[]) => void;
}) {
  if (options.kind === 'none') {
    return (
      <section className="sec">
        <h2>Options</h2>
        <p className="note">{options.says}</p>
      </section>
    );
  }
  const { found, carrierId } = options;
  const nobody = new Set(found.none.map(one => one.toId));
  for (const one of found.options) if (one.kind !== 'carry') nobody.delete(one.toId);
  return (
    <table className="tt readings options" data-testid="options">
      <thead>
        <tr>
          <th>Options of {nameOf(view, carrierId)}</th>
          <th className="r">margin</th>
          <th>lane or room</th>
          <th className="r">comes off</th>
        </tr>
      </thead>
      <tbody>
        {found.options.map(option => {
          const key = optionKey(option);
          const isDrawn = drawn.includes(key);
          return (
            <WhyRow
              key={key}
              columns={4}
              isSelected={isDrawn}
              value={shareSaid(option.chance)}
              estimate
              why={whyOf(view, option)}
            >
              {figure => (
                <>
                  <td className="nw">
                    <button
                      type="button"
                      className="quiet person-name"
                      aria-pressed={isDrawn}
                      onClick={() => onDraw(isDrawn ? drawn.filter(one => one !== key) : [...drawn, key])}
                    >
                      {wordsOf(view, option)}
                    </button>
                  </td>
                  <td className="r nw">
                    <span className="est b">{signed(option.marginS)}</span>
                    {option.kind !== 'carry' && (
                      <span className="pm"> ± {numberSaid(spreadOf(option))} s</span>
                    )}
                    {option.kind === 'carry' && <span className="pm"> s free</span>}
                  </td>
                  <td className="nw">
                    {option.kind === 'carry'
                      ? `room ${lengthSaid(option.spaceM, view.lengths)}`
                      : option.lane.band}
                  </td>
                  <td className="r nw">{figure}</td>
                </>
              )}
            </WhyRow>
          );
        })}
      </tbody>
      <tfoot>
        <tr>
          <td colSpan={4} className="cap">
            Comes off = nobody cuts it × it is on the blade × the receiver keeps it. Of skating it: nobody
            gets to the puck.{' '}
            {nobody.size > 0 && `No pass to ${[...nobody].map(id => nameOf(view, id)).join(', ')}. `}A picture
            tells no speeds: all are taken as standing, and the ± is wider for it. The order counts more than
            the share.
          </td>
        </tr>
      </tfoot>
    </table>
  );
}

export const laneWords = (option: PassOption): string => `${option.lane.band}, ${signed(option.marginS)} s`;

const wordsOf = (view: FreezeView, option: PassOption | CarryOption): string =>
  option.kind === 'carry'
    ? 'skates it'
    : `${option.kind === 'bank' ? 'off the boards to' : 'to'} ${nameOf(view, option.toId)}`;

const signed = (seconds: number): string =>
  !Number.isFinite(seconds) || seconds > 9.9
    ? 'over 9.9'
    : `${seconds >= 0 ? '+' : ''}${numberSaid(seconds)}`;

const shareSaid = (ratio: number): string => (ratio < 0.01 ? 'under 1\u2009%' : percentSaid(ratio));

const spreadOf = (option: PassOption): number => SURELY_SDS * (option.margins[0]?.spreadS ?? 0);

const whyOf = (view: FreezeView, option: PassOption | CarryOption): string => {
  const terms = option.why.map(({ term, value, unit, id }) => {
    const figure =
      unit === ''
        ? shareSaid(value)
        : !Number.isFinite(value)
          ? 'more than enough'
          : inUnitsOf(view.lengths, value, unit);
    return `${TERM[term]}${id === undefined ? '' : ` (${nameOf(view, id)})`} ${figure}`;
  });
  const rests =
    option.kind === 'carry'
      ? 'that nobody gets to the puck within the time looked ahead'
      : 'nobody cuts it × it is on the blade × the receiver keeps it';
  return `${terms.join('; ')}. Estimates for this level: ${rests}, with untuned constants.`;
};

const TERM: Record<PassOption['why'][number]['term'], string> = {
  lane: 'nobody cuts it',
  aim: 'it is on the blade',
  control: 'the receiver keeps it',
  margin: 'margin to the nearest stick',
  clearance: 'nearest opponent to the lane',
  coneAtMeet: 'fan of the pass where it meets',
  arrivalSpeed: 'speed on arrival',
  freeFor: 'free for',
  spaceAhead: 'ice ahead',
};
