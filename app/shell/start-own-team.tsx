import { useId, useState } from 'react';
import { startOwnTeam } from './teams.ts';

/** Names a team and opens it. The demo stays where it is. */
export function StartOwnTeam({ onDone }: { readonly onDone?: () => void }) {
  const id = useId();
  const [name, setName] = useState('');
  const [isWorking, setWorking] = useState(false);
  return (
    <form
      className="own-team"
      onSubmit={async event => {
        event.preventDefault();
        if (name.trim() === '' || isWorking) return;
        setWorking(true);
        const isOpen = await startOwnTeam(name.trim());
        setWorking(false);
        if (isOpen) onDone?.();
      }}
    >
      <label htmlFor={id} className="label">
        The team's name
      </label>
      <span>
        <input
          id={id}
          className="entry w"
          maxLength={200}
          // biome-ignore lint/a11y/noAutofocus: the field was asked for by the act before it
          autoFocus
          required
          value={name}
          onChange={event => setName(event.target.value)}
        />{' '}
        <button type="submit" className={isWorking ? 'act lead working' : 'act lead'}>
          Start
        </button>
      </span>
    </form>
  );
}
