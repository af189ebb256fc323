import { Act } from '../parts/act.tsx';
import { useKeys } from '../shell/keys.ts';
import type { Looking } from './one-look.ts';

/** The act, and its key, that looks through a freeze, stops looking, and puts away what was found. */
export function LookAct({
  name,
  keys,
  sign,
  says,
  notNow,
  offer,
  words,
}: {
  readonly name: string;
  readonly keys: string;
  /** The key as it is written on the act. */
  readonly sign: string;
  readonly says: string;
  readonly notNow: string | undefined;
  readonly offer: { readonly state: 'none' | Looking['state']; toggle(): void };
  readonly words: { readonly none: string; readonly looked: string };
}) {
  useKeys([{ keys, says, act: () => notNow === undefined && offer.toggle() }]);
  return (
    <Act
      name={name}
      notNow={notNow}
      working={offer.state === 'looking'}
      isOn={offer.state !== 'none'}
      onPress={offer.toggle}
    >
      {offer.state === 'looking' ? 'Looking: stop' : words[offer.state]} <kbd>{sign}</kbd>
    </Act>
  );
}
