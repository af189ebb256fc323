import type { ReactNode } from 'react';
import { Act } from '../parts/act.tsx';
import { THINGS, type Thing } from './new-things.ts';

/** What can be set on the ice: press one, then press the ice. By key it is set down at centre ice and moved from there. */
export function ThingsLine(props: {
  readonly placing: Thing | null;
  readonly onPlacing: (thing: Thing | null) => void;
  readonly onPlaceAtCentre: (thing: Thing) => void;
  /** What else can be laid on or under the ice. */
  readonly children?: ReactNode;
}) {
  return (
    <fieldset className="things">
      <legend className="q3">{props.placing === null ? 'Set on the ice' : 'Press the ice'}</legend>
      {THINGS.map(({ what, said }) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: listens for Shift+Enter on the act inside
        <span
          key={what}
          onKeyDown={event => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            props.onPlaceAtCentre(what);
          }}
        >
          <Act
            isOn={props.placing === what}
            onPress={() => props.onPlacing(props.placing === what ? null : what)}
          >
            {said}
          </Act>
        </span>
      ))}
      {props.children}
    </fieldset>
  );
}
