import type { Team } from '@icewright/book';
import { judgeStandard, type Numbers, numbersIn, zoneAreaOf } from '@icewright/engine';
import type { ReactNode } from 'react';
import { writtenStandardOf } from '../habits/written-standard.ts';
import { Act } from '../parts/act.tsx';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { gapPairs } from './gap-pairs.ts';
import { measuredWhy, measureOf } from './measure-of.ts';
import { measuredFigure, measuredWords, numbersWhy, wantedWords, ZONE } from './standard-words.ts';
import { WhyRow } from './why-row.tsx';

/** Figures of the freeze, each with its ± and askable: what was asked for first, then the standard, gaps, numbers. */
export function Readings({
  desk,
  view,
  team,
  isBlind,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
  /** Somebody judges the moments blind: the figure beside what was wanted is the standard's answer. */
  readonly isBlind: boolean;
}) {
  const why = measuredWhy(view);
  const gaps = gapPairs(view).filter(pair => !desk.pairs.some(one => one.join() === pair.join()));
  return (
    <table className="tt readings">
      <thead>
        <tr>
          <th>Readings</th>
          <th className="r">
            <span className="vh">figure</span>
          </th>
          <th>
            <span className="vh">what was wanted</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {desk.pairs.map(pair => (
          <PairRows key={pair.join()} desk={desk} view={view} pair={pair} why={why} />
        ))}
        {!isBlind && <StandardRow view={view} team={team} why={why} />}
        {gaps.map(pair => {
          const measured = measureOf(view, pair);
          return measured?.distance ? (
            <WhyRow key={pair.join()} columns={3} why={why} {...measured.distance}>
              {figure => (
                <>
                  <td>{measured.names[0]} to the carrier</td>
                  <td className="r">{figure}</td>
                  <td className="q3">gap</td>
                </>
              )}
            </WhyRow>
          ) : null;
        })}
        {AREAS.map(zone => (
          <NumbersRow key={zone} view={view} zone={zone} />
        ))}
      </tbody>
    </table>
  );
}

function PairRows({
  desk,
  view,
  pair,
  why,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly pair: readonly [string, string];
  readonly why: string;
}) {
  const measured = measureOf(view, pair);
  if (!measured) return null;
  const { names, distance, along } = measured;
  const cells = (figure: ReactNode) => (
    <>
      <td>
        {names[0]} to {names[1]}
      </td>
      <td className="r">{figure}</td>
      <td>
        <Act bare onPress={() => desk.dropPair(pair)} label={`Take ${names[0]} to ${names[1]} out`}>
          take out
        </Act>
      </td>
    </>
  );
  return (
    <>
      {distance ? (
        <WhyRow columns={3} className="asked" testId="measured" why={why} {...distance}>
          {cells}
        </WhyRow>
      ) : (
        <tr className="asked" data-testid="measured">
          {cells(<span className="q3">cannot be measured here</span>)}
        </tr>
      )}
      {along && (
        <WhyRow
          columns={3}
          className="asked"
          why={`Along the rink only. ${why}`}
          value={along.value}
          plusMinus={along.plusMinus}
        >
          {figure => (
            <>
              <td>{along.says}</td>
              <td className="r">{figure}</td>
              <td className="q3">along the rink</td>
            </>
          )}
        </WhyRow>
      )}
    </>
  );
}

function StandardRow({
  view,
  team,
  why,
}: {
  readonly view: FreezeView;
  readonly team: Team;
  readonly why: string;
}) {
  const habit = view.freeze.habit && team.habits[view.freeze.habit];
  const standard = habit ? writtenStandardOf(habit) : undefined;
  if (!standard || !view.ice) return null;
  const judged = judgeStandard(view.ice.scene, standard);
  const figure = measuredFigure(standard, judged, view.lengths);
  if (!figure) return null;
  return (
    <WhyRow
      columns={3}
      value={figure.value}
      plusMinus={figure.plusMinus || undefined}
      warm={judged.answer === 'no'}
      why={standard.kind === 'numbers' ? numbersWhy(view) : why}
    >
      {shown => (
        <>
          <td>{measuredWords(standard, judged, view)}</td>
          <td className="r">{shown}</td>
          <td className="q3">{wantedWords(standard, view.lengths)}</td>
        </>
      )}
    </WhyRow>
  );
}

/** How many of each side are surely there; those whose ± reaches over the edge are said as "to". */
function NumbersRow({ view, zone }: { readonly view: FreezeView; readonly zone: (typeof AREAS)[number] }) {
  const scene = view.ice?.scene;
  const area = scene && zoneAreaOf(view.rink, zone, view.freeze.attacks);
  if (!scene || !area || scene.skaters.length === 0) return null;
  const [us, them] = (['us', 'them'] as const).map(side => numbersIn(scene, area, side));
  if (!us || !them) return null;
  // An empty zone says nothing; an empty house does.
  if (zone.endsWith('Zone') && us.possibleCount + them.possibleCount === 0) return null;
  return (
    <WhyRow
      columns={3}
      value={`${countWords(us)} : ${countWords(them)}`}
      why="Skaters by their feet, goalies not counted. Surely inside when the edge is further away than the 95 % of where the feet may be; the second figure counts those who may be inside too."
    >
      {figure => (
        <>
          <td>In {ZONE[zone]}, us : them</td>
          <td className="r">{figure}</td>
          <td className="q3">
            of the {scene.skaters.filter(one => one.kind === 'skater').length} skaters placed
          </td>
        </>
      )}
    </WhyRow>
  );
}

const AREAS = ['house', 'middleLane', 'ourZone', 'neutralZone', 'theirZone'] as const;

const countWords = ({ certainCount, possibleCount }: Numbers): string =>
  certainCount === possibleCount ? `${certainCount}` : `${certainCount} to ${possibleCount}`;
