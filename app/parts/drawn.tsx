import { memo } from 'react';

/**
 * A drawing made by the picture room: its markup in an svg of ours. Drawn again only when the markup changes.
 * The markup comes from our own routines, never from a document.
 */
export const Drawn = memo(function Drawn(props: {
  readonly markup: string;
  readonly viewBox: string;
  readonly label: string;
  readonly className?: string;
}) {
  return (
    <svg
      className={props.className ?? 'ice-svg'}
      viewBox={props.viewBox}
      role="img"
      aria-label={props.label}
      // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
      dangerouslySetInnerHTML={{ __html: props.markup }}
    />
  );
});
