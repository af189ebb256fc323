import { type ReactNode, useEffect } from 'react';
import { Link } from 'wouter';

/** What is open. The way back is always its first word, at the same place. */
export function RunningHead(props: {
  readonly back?: { readonly to: string; readonly said: string };
  readonly title: ReactNode;
  /** For the window, when the title on the page is a field. */
  readonly titleWords: string;
  readonly meta?: ReactNode;
  readonly acts?: ReactNode;
}) {
  useEffect(() => {
    document.title = `${props.titleWords} · Icewright`;
  }, [props.titleWords]);
  return (
    <div className={props.back === undefined ? 'head of-place' : 'head'}>
      {props.back !== undefined && (
        <Link href={props.back.to} className="back">
          {props.back.said}
        </Link>
      )}
      <h1>{props.title}</h1>
      {props.meta !== undefined && <p className="meta">{props.meta}</p>}
      {props.acts !== undefined && <div className="acts">{props.acts}</div>}
    </div>
  );
}
