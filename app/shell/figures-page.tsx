import { defaultsOf, type Row, rinkOf } from '@icewright/engine';
import { Fragment, useMemo } from 'react';
import { useTeam } from './book.ts';
import { RunningHead } from './running-head.tsx';

/** What every computed figure rests on: value, edges, source. Sloping figures are estimates. */
export function FiguresPage() {
  const { value: team } = useTeam();
  const level = team?.level;
  const rink = team?.rink;
  const groups = useMemo(
    () => (level === undefined || rink === undefined ? [] : defaultsOf(level, rinkOf(rink))),
    [level, rink],
  );
  const rows = groups.flatMap(group => group.rows);
  const count = (status: Row['status']) => rows.filter(row => row.status === status).length;
  return (
    <>
      <RunningHead
        back={{ to: '/film', said: 'Film' }}
        title="What the figures rest on"
        titleWords="What the figures rest on"
        meta={
          <>
            <b>{rows.length}</b> defaults: {count('sourced')} with a source, {count('derived')} derived,{' '}
            <i className="est">{count('estimate')} estimates, sloping</i>
          </>
        }
      />
      <div className="place figures-page">
        <table className="tt">
          <thead>
            <tr>
              <th>What</th>
              <th className="r">Value</th>
              <th>Between</th>
              <th>Where it is from</th>
            </tr>
          </thead>
          <tbody>
            {groups.map(group => (
              <Fragment key={group.name}>
                <tr>
                  <th colSpan={4} scope="rowgroup" className="figures-group">
                    {group.name}
                  </th>
                </tr>
                {group.rows.map(row => (
                  <tr key={row.name}>
                    <td>{row.name}</td>
                    <td className={row.status === 'estimate' ? 'r nw b est' : 'r nw b'}>
                      {figureOf(row.value)} {row.unit}
                    </td>
                    <td className="nw q2">
                      {row.range[0] === row.range[1]
                        ? 'exact'
                        : `${figureOf(row.range[0])} to ${figureOf(row.range[1])}`}
                    </td>
                    <td className="q2">
                      {row.status}: {row.source}
                    </td>
                  </tr>
                ))}
              </Fragment>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

const figureOf = (value: number): string => String(Number(value.toPrecision(4)));
