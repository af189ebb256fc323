import { useTeam } from '../shell/book.ts';
import { PracticeList } from './practice-list.tsx';
import { PracticePage } from './practice-page.tsx';
import './practice-list.css';
import './plan-over-time.css';
import './plan-margin.css';
import './plan-rail.css';
import './mini-plan.css';

export function PracticesPlace({
  practiceId,
  card,
}: {
  readonly practiceId?: string;
  readonly card?: boolean;
}) {
  const { value: team, id } = useTeam();
  if (team === undefined) return null;
  return practiceId === undefined ? (
    <PracticeList team={team} />
  ) : (
    <PracticePage team={team} teamId={id} practiceId={practiceId} asCard={card === true} />
  );
}
