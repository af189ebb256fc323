import type { Moment } from '@icewright/book';
import { named } from '../../parts/named.ts';
import { clockText } from '../film-clock.ts';
import { MomentEdit, type MomentEditing } from './moment-edit.tsx';
import { verdictSaid } from './moment-glyph.tsx';

/** The chosen moment beside its picture, where both are seen at once. */
export function MomentBeside(props: MomentEditing & { readonly id: string; readonly moment: Moment }) {
  const { moment, team } = props;
  return (
    <section className="sec moment-beside" aria-label="The chosen moment">
      <h2>
        {clockText(moment.filmTimeS, 1)}{' '}
        <span className="w">{named(team.habits[moment.habit]?.title ?? '', 'habit')}</span>{' '}
        <span className={moment.verdict === 'missed' ? 'q3 warm' : 'q3'}>{verdictSaid(moment.verdict)}</span>
      </h2>
      <MomentEdit {...props} />
    </section>
  );
}
