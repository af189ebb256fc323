import { useRef } from 'react';
import { Act } from './act.tsx';

/** An act that asks for one file of this kind and hands it on; the same file can be chosen twice. */
export function FileAct(props: {
  readonly says: string;
  /** Names the hidden entry. */
  readonly label: string;
  readonly accept: string;
  readonly onFile: (file: File) => void;
}) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept={props.accept}
        className="vh"
        tabIndex={-1}
        aria-label={props.label}
        onChange={event => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) props.onFile(file);
        }}
      />
      <Act onPress={() => input.current?.click()}>{props.says}</Act>
    </>
  );
}
