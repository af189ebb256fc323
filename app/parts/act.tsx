import type { ReactNode } from 'react';
import { Link } from 'wouter';

interface Look {
  readonly children: ReactNode;
  /** The one act that moves the page on. One a page. */
  readonly lead?: boolean;
  readonly bare?: boolean;
}

/** A thing to press. `notNow` says why it cannot be pressed; it stays in the tab order so that the reason can be read. */
export function Act(
  props: Look & {
    readonly onPress: () => void;
    readonly isOn?: boolean;
    readonly working?: boolean;
    readonly notNow?: string | undefined;
    readonly label?: string;
    readonly opens?: boolean;
    /** By which the focus can be brought to it. */
    readonly name?: string;
  },
) {
  const { onPress, isOn, working, notNow, label, opens, name } = props;
  return (
    <button
      type="button"
      data-act={name}
      className={classOf(props, working)}
      aria-pressed={isOn}
      aria-expanded={opens}
      aria-label={label}
      aria-disabled={notNow === undefined ? undefined : true}
      title={notNow}
      onClick={() => notNow === undefined && onPress()}
    >
      {props.children}
      {notNow !== undefined && <span className="vh">. Not now: {notNow}</span>}
    </button>
  );
}

export function ActLink(props: Look & { readonly to: string }) {
  return (
    <Link href={props.to} className={classOf(props, false)}>
      {props.children}
    </Link>
  );
}

function classOf({ lead, bare }: Look, working: boolean | undefined): string {
  return ['act', lead && 'lead', bare && 'bare', working && 'working'].filter(Boolean).join(' ');
}
