import { type ReactNode, useEffect, useId, useRef } from 'react';
import { ListBox, ListBoxItem, type Selection } from 'react-aria-components';
import { create } from 'zustand';

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

/** The one drawer of the page that is open: a second would push the page further, and Escape could close only one of them. */
const useOpenDrawer = create<
  { readonly sentence: string; readonly slot: string } | { readonly sentence: null }
>(() => ({ sentence: null }));

/**
 * A sentence with menus in it. A slot is pressed; its choices stand in the drawer below the sentence, in the page, until one is
 * taken, or Escape, or another slot is pressed. Where a slot has several lines of choices it stays for the others.
 * `children` gets a function that sets a slot at its place in the words; the stop after one is given to it, or on a narrow page it would
 * stand on a line alone.
 */
export function Sentence(props: {
  readonly slots: Readonly<Record<string, readonly SlotLine[]>>;
  readonly children: (slot: SetSlot) => ReactNode;
}) {
  const drawerId = useId();
  const openKey = useOpenDrawer(open => (open.sentence === drawerId ? open.slot : null));
  const words = useRef<HTMLParagraphElement>(null);
  const setOpenKey = (key: string | null) =>
    useOpenDrawer.setState(key === null ? SHUT : { sentence: drawerId, slot: key }, true);
  const shut = () => {
    const slot = words.current?.querySelector<HTMLElement>('[aria-expanded="true"]');
    setOpenKey(null);
    // After the press is over: a choice that is pressed takes the focus with it.
    requestAnimationFrame(() => slot?.focus());
  };
  useEscape(openKey !== null, shut);
  useEffect(
    () => () => {
      if (useOpenDrawer.getState().sentence === drawerId) useOpenDrawer.setState(SHUT, true);
    },
    [drawerId],
  );
  const lines = openKey === null ? undefined : props.slots[openKey];
  const slot: SetSlot = (key, said, figure = false, stop = '') => (
    <button
      key={key}
      type="button"
      className={figure ? 'slot num' : 'slot'}
      aria-expanded={openKey === key}
      aria-controls={openKey === key ? drawerId : undefined}
      onClick={() => setOpenKey(openKey === key ? null : key)}
    >
      {said.slice(0, lastWordOf(said))}
      {/* Stop and arrow stay on the line of the last word. */}
      <span className="slot-last">
        {said.slice(lastWordOf(said))}
        {stop !== '' && <span aria-hidden="true">{stop}</span>}
      </span>
    </button>
  );
  return (
    <>
      <p className="say w" ref={words}>
        {props.children(slot)}
      </p>
      {lines !== undefined && (
        <div id={drawerId} className="drawer">
          {lines.map(line => (
            <DrawerLine key={line.label} line={line} onChosen={lines.length === 1 ? shut : undefined} />
          ))}
        </div>
      )}
    </>
  );
}

const lastWordOf = (said: string): number => said.lastIndexOf(' ') + 1;

type SetSlot = (key: string, said: string, figure?: boolean, stop?: string) => ReactNode;

const SHUT = { sentence: null } as const;

/** Heard before the keys of the place, wherever the focus is: one press closes the drawer and nothing else. */
function useEscape(isOpen: boolean, shut: () => void): void {
  const latest = useRef(shut);
  latest.current = shut;
  useEffect(() => {
    if (!isOpen) return;
    const heard = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      event.preventDefault();
      event.stopPropagation();
      latest.current();
    };
    window.addEventListener('keydown', heard, { capture: true });
    return () => window.removeEventListener('keydown', heard, { capture: true });
  }, [isOpen]);
}

function DrawerLine({
  line,
  onChosen,
}: {
  readonly line: SlotLine;
  readonly onChosen: (() => void) | undefined;
}) {
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
          if (typeof value !== 'string') return;
          line.onChoose(value);
          onChosen?.();
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
