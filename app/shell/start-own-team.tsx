import type { Team } from '@icewright/book';
import { useId, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { ChoiceField } from '../parts/field.tsx';
import { LEVELS, RINKS } from './rinks.ts';
import { startOwnTeam } from './teams.ts';

/** An own size is set later, in Settings. */
const NAMED_RINKS = RINKS.filter(rink => rink.value !== 'own');
type Preset = (typeof NAMED_RINKS)[number]['value'];

/** What every length and time of a team depends on is asked, not taken for granted. */
const NOT_CHOSEN = { value: '', said: 'choose' } as const;

/** Names a team and opens it. The demo stays where it is. */
export function StartOwnTeam({ onDone }: { readonly onDone?: () => void }) {
  const id = useId();
  const [name, setName] = useState('');
  const [level, setLevel] = useState<Team['level']>('u18');
  const [preset, setPreset] = useState<Preset | ''>('');
  const [isWorking, setWorking] = useState(false);
  const waits =
    name.trim() === ''
      ? 'the team has no name yet'
      : preset === ''
        ? 'say which sheet of ice you play on'
        : undefined;
  const start = async () => {
    if (waits !== undefined || preset === '' || isWorking) return;
    setWorking(true);
    const isOpen = await startOwnTeam({ name: name.trim(), level, rink: { preset } });
    setWorking(false);
    if (isOpen) onDone?.();
  };
  return (
    <form
      className="own-team"
      onSubmit={event => {
        event.preventDefault();
        void start();
      }}
    >
      <div className="field own-team-name">
        <label htmlFor={id} className="label">
          The team's name
        </label>
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
      </div>
      <ChoiceField label="Level of play" value={level} choices={LEVELS} onChange={setLevel} />
      <ChoiceField
        label="Sheet of ice you play on"
        value={preset}
        choices={preset === '' ? [NOT_CHOSEN, ...NAMED_RINKS] : NAMED_RINKS}
        onChange={setPreset}
      />
      <Act lead working={isWorking} notNow={waits} onPress={() => void start()}>
        Start
      </Act>
      {waits !== undefined && <p className="cap own-team-waits">Start waits: {waits}.</p>}
    </form>
  );
}
