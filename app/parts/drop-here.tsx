import { type ReactNode, useState } from 'react';

/** A place that takes files dropped on it; always a second way beside an act that opens them. `says` stands in it while they hover. */
export function DropHere(props: {
  readonly className: string;
  readonly says?: string;
  readonly onDrop: (files: DataTransfer) => void;
  readonly children: ReactNode;
}) {
  const [isOver, setOver] = useState(false);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; an act beside it is the first
    <div
      className={isOver ? `${props.className} over` : props.className}
      onDragOver={event => {
        if (!event.dataTransfer.types.includes('Files')) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={event => {
        if (event.currentTarget === event.target) setOver(false);
      }}
      onDrop={event => {
        event.preventDefault();
        setOver(false);
        props.onDrop(event.dataTransfer);
      }}
    >
      {props.children}
      {isOver && props.says !== undefined && <p className="drop-says w">{props.says}</p>}
    </div>
  );
}
