/** Full and open segments by turns, one thickness everywhere. */
export function GraduatedRule({
  segments,
  start = 0,
}: {
  readonly segments: number;
  readonly start?: 0 | 1;
}) {
  return (
    <div className={start === 0 ? 'zebra' : 'zebra from-open'} aria-hidden="true">
      {Array.from({ length: Math.max(1, segments) }, (_, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: segments of a rule are nothing but their place
        <i key={index} />
      ))}
    </div>
  );
}
