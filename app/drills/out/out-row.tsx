import type { ReactNode } from 'react';

/** One way out: its name, what it is good for, and its acts. */
export function OutRow(props: {
  readonly name: string;
  readonly says?: ReactNode;
  /** Over both columns: it has a list. */
  readonly wide?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <div className={props.wide ? 'out-row is-wide' : 'out-row'}>
      <h3>{props.name}</h3>
      <div className="out-acts">{props.children}</div>
      {props.says !== undefined && <p className="q3 out-says">{props.says}</p>}
    </div>
  );
}
