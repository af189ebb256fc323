import { useId, useState } from 'react';
import { ChoiceField } from '../parts/field.tsx';
import { LEVELS, RINKS } from './rinks.ts';
import { startOwnTeam } from './teams.ts';

/** An own size is set later, in Settings. */
const NAMED_RINKS = RINKS.filter(rink => rink.value !== 'own');

/** Names a team and opens it. The demo stays where it is. */
export function StartOwnTeam({ onDone }: { readonly onDone?: () => void }) {
  const id = useId();
  const [name, setName] = useState('');
  const [level, setLevel] = useState<(typeof LEVELS)[number]['value']>('u18');
  const [preset, setPreset] = useState<(typeof NAMED_RINKS)[number]['value']>('60x30m');
  const [isWorking, setWorking] = useState(false);
  return (
    <form
      className="own-team"
      onSubmit={async event => {
        event.preventDefault();
        if (name.trim() === '' || isWorking) return;
        setWorking(true);
        const isOpen = await startOwnTeam({ name: name.trim(), level, rink: { preset } });
        setWorking(false);
        if (isOpen) onDone?.();
      }}
    >
      <label htmlFor={id} className="label">
        The team's name
      </label>
      <span className="own-team-line">
        <input
          id={id}
          className="entry w"
          maxLength={200}
          // biome-ignore lint/a11y/noAutofocus: the field was asked for by the act before it
          autoFocus
          required
          value={name}
          onChange={event => setName(event.target.value)}
        />
        <ChoiceField label="Level" labelHidden value={level} choices={LEVELS} onChange={setLevel} />
        <ChoiceField
          label="Our sheet"
          labelHidden
          value={preset}
          choices={NAMED_RINKS}
          onChange={setPreset}
        />
        <button type="submit" className={isWorking ? 'act lead working' : 'act lead'}>
          Start
        </button>
      </span>
    </form>
  );
}
