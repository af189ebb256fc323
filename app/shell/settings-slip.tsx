import type { RinkChoice, Team } from '@icewright/book';
import { useState } from 'react';
import { Act, ActLink } from '../parts/act.tsx';
import { ChoiceField, ValueField } from '../parts/field.tsx';
import { Slip } from '../parts/slip.tsx';
import { edit } from './book.ts';
import { LEVELS, RINKS } from './rinks.ts';
import { StartOwnTeam } from './start-own-team.tsx';
import { TeamFile } from './team-file.tsx';
import { changeTeam, lookRound, useTeams } from './teams.ts';

/** Units, clock, sheet and level belong to the team; which team is open belongs to this window. */
export function SettingsSlip({
  team,
  onClose,
}: {
  readonly team: Team | null;
  readonly onClose: () => void;
}) {
  const { teams, teamId, failed } = useTeams();
  const [isNaming, setNaming] = useState(false);
  if (teamId === null) return null;
  const set = (key: string, value: unknown) => edit(teamId).set([key], value);
  return (
    <Slip label="Settings" onClose={onClose}>
      {team !== null && (
        <span className="settings">
          <ChoiceField
            label="Lengths in"
            value={team.lengths}
            choices={[
              { value: 'metres', said: 'metres' },
              { value: 'feet', said: 'feet' },
            ]}
            onChange={value => set('lengths', value)}
          />
          <ChoiceField
            label="Clock"
            value={team.clockFace}
            choices={[
              { value: '24', said: '24 hours' },
              { value: '12', said: '12 hours' },
            ]}
            onChange={value => set('clockFace', value)}
          />
          <ChoiceField
            label="Level"
            value={team.level}
            choices={LEVELS}
            onChange={value => set('level', value)}
          />
          <ChoiceField
            label="Our sheet"
            value={team.rink.preset}
            choices={RINKS}
            onChange={preset => set('rink', rinkOf(preset))}
          />
          {team.rink.preset === 'own' && <OwnRink rink={team.rink} onChange={rink => set('rink', rink)} />}
        </span>
      )}
      <span className="slip-acts">
        {teams
          .filter(other => other.id !== teamId)
          .map(other => (
            <Act key={other.id} onPress={() => changeTeam(other.id)}>
              Go to {other.name}
            </Act>
          ))}
        {!teams.some(other => other.demo) && (
          <Act onPress={() => void lookRound()}>Look round with the Lanterns</Act>
        )}
        {!isNaming && <Act onPress={() => setNaming(true)}>Start my own team</Act>}
        <ActLink to="/figures">What the figures rest on</ActLink>
        <TeamFile teamId={teamId} />
        <Act bare onPress={onClose}>
          Close
        </Act>
      </span>
      {isNaming && <StartOwnTeam onDone={onClose} />}
      {failed !== null && (
        <span className="warm" role="alert">
          {failed}
        </span>
      )}
    </Slip>
  );
}

type OwnSize = Extract<RinkChoice, { preset: 'own' }>;

function OwnRink({ rink, onChange }: { readonly rink: OwnSize; readonly onChange: (rink: OwnSize) => void }) {
  const size = (key: 'lengthM' | 'widthM' | 'cornerRadiusM', label: string, min: number, max: number) => (
    <ValueField
      type="number"
      label={label}
      unit="m"
      min={min}
      max={max}
      value={String(rink[key])}
      onChange={value => onChange({ ...rink, [key]: Number(value) })}
    />
  );
  return (
    <>
      {size('lengthM', 'Length', 15, 75)}
      {size('widthM', 'Width', 10, 40)}
      {size('cornerRadiusM', 'Corner radius', 0, 12)}
    </>
  );
}

function rinkOf(preset: RinkChoice['preset']): RinkChoice {
  return preset === 'own' ? { preset, lengthM: 60, widthM: 30, cornerRadiusM: 8.5 } : { preset };
}
