import type { ReactNode } from 'react';

/** Opens below what was asked and pushes the page; never over the work. Escape closes it. */
export function Slip(props: {
  readonly children: ReactNode;
  readonly id?: string;
  readonly label?: string;
  readonly attention?: boolean;
  readonly onClose?: () => void;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a slip is a run of words, not a set of fields
    <span
      id={props.id}
      role="group"
      aria-label={props.label ?? 'Why'}
      className={props.attention ? 'slip attention' : 'slip'}
      onKeyDown={event => {
        if (event.key !== 'Escape' || props.onClose === undefined) return;
        // One press closes one thing.
        event.stopPropagation();
        props.onClose();
      }}
    >
      {props.children}
    </span>
  );
}
