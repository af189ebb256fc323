import { Fragment, useEffect, useRef } from 'react';
import { Act } from '../parts/act.tsx';
import { Slip } from '../parts/slip.tsx';
import { keyWords, setSingleKeys, useKeyLines } from './keys.ts';

/** The keys of the place one is in, from the very lines that bind them. */
export function KeysSlip({ onClose }: { readonly onClose: () => void }) {
  const list = useRef<HTMLElement>(null);
  // Read on by arrows where it is longer than the window, and closed by Escape.
  useEffect(() => list.current?.focus({ preventScroll: true }), []);
  const { lines, singleKeys } = useKeyLines();
  const shown = [...lines.values()].flat();
  return (
    <Slip label="Keys of this place" onClose={onClose}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and is read by keys */}
      <span className="keys-list" ref={list} tabIndex={0}>
        {shown.map(line => (
          <span key={`${line.keys} ${line.says}`}>
            {keyWords(line.keys).map((key, index) => (
              <Fragment key={key}>
                {index > 0 && ' '}
                <kbd>{key}</kbd>
              </Fragment>
            ))}{' '}
            {line.says}
          </span>
        ))}
      </span>
      <span className="slip-acts">
        <Act isOn={singleKeys} onPress={() => setSingleKeys(!singleKeys)}>
          Single keys are {singleKeys ? 'on' : 'off'}
        </Act>
        <Act bare onPress={onClose}>
          Close
        </Act>
      </span>
    </Slip>
  );
}
