import type { ReactNode } from 'react';

/** An empty place says in one sentence what it is for, and has one button. */
export function Empty({ says, children }: { readonly says: string; readonly children?: ReactNode }) {
  return (
    <div className="empty">
      <p className="w">{says}</p>
      {children !== undefined && <p>{children}</p>}
    </div>
  );
}

/** A failure says what, where, that nothing is lost, and what to do. */
export function Failure(props: {
  readonly where: string;
  readonly what: string;
  readonly lost?: string;
  readonly children?: ReactNode;
}) {
  return (
    <div className="failure" role="alert">
      <p className="q2">
        <b className="b warm">{props.where}</b>
      </p>
      <p className="w failure-what">{props.what}</p>
      {props.lost !== undefined && <p className="q2">{props.lost}</p>}
      {props.children !== undefined && <p className="failure-acts">{props.children}</p>}
    </div>
  );
}
