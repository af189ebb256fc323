import { useTeam } from '../shell/book.ts';
import { HabitList } from './habit-list.tsx';
import { HabitPage } from './habit-page.tsx';
import './habits.css';

export function HabitsPlace({ habitId }: { readonly habitId?: string }) {
  const { value: team, id } = useTeam();
  if (team === undefined) return null;
  return habitId === undefined ? (
    <HabitList team={team} teamId={id} />
  ) : (
    <HabitPage team={team} teamId={id} habitId={habitId} />
  );
}
