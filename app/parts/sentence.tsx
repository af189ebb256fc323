import { type ReactNode, useId, useState } from 'react';
import { ListBox, ListBoxItem, type Selection } from 'react-aria-components';

export interface Choice<Value extends string> {
  readonly value: Value;
  /** As it stands in the sentence. */
  readonly said: string;
  /** As it stands in the drawer, when that is shorter. */
  readonly short?: string;
}

export interface SlotLine {
  readonly label: string;
  readonly choices: readonly Choice<string>[];
  readonly value: string;
  readonly onChoose: (value: string) => void;
}

/**
 * A sentence with menus in it. A slot is pressed; its choices stand in the drawer below the sentence, in the page.
 * `children` gets a function that sets a slot at its place in the words.
 */
export function Sentence(props: {
  readonly slots: Readonly<Record<string, readonly SlotLine[]>>;
  readonly children: (slot: (key: string, said: string, figure?: boolean) => ReactNode) => ReactNode;
}) {
  const [openKey, setOpenKey] = useState<string | null>(null);
  const drawerId = useId();
  const lines = openKey === null ? undefined : props.slots[openKey];
  const slot = (key: string, said: string, figure = false) => (
    <button
      key={key}
      type="button"
      className={figure ? 'slot num' : 'slot'}
      aria-expanded={openKey === key}
      aria-controls={openKey === key ? drawerId : undefined}
      onClick={() => setOpenKey(openKey === key ? null : key)}
    >
      {said}
    </button>
  );
  return (
    <>
      <p className="say w">{props.children(slot)}</p>
      {lines !== undefined && (
        // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes the drawer; the slot that opened it does too
        <div
          id={drawerId}
          className="drawer"
          onKeyDown={event => {
            if (event.key === 'Escape') setOpenKey(null);
          }}
        >
          {lines.map(line => (
            <DrawerLine key={line.label} line={line} />
          ))}
        </div>
      )}
    </>
  );
}

function DrawerLine({ line }: { readonly line: SlotLine }) {
  const id = useId();
  return (
    <>
      <p className="q3" id={id}>
        {line.label}
      </p>
      <ListBox
        aria-labelledby={id}
        className="choices"
        layout="grid"
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[line.value]}
        onSelectionChange={(chosen: Selection) => {
          const value = chosen === 'all' ? undefined : [...chosen][0];
          if (typeof value === 'string') line.onChoose(value);
        }}
      >
        {line.choices.map(choice => (
          <ListBoxItem key={choice.value} id={choice.value} textValue={choice.short ?? choice.said}>
            {choice.short ?? choice.said}
          </ListBoxItem>
        ))}
      </ListBox>
    </>
  );
}
