import { BESIDE, type TeamFilePlan } from './team-file-plan.ts';

/** True where taking the file in would change anything. */
export const hasNews = ({ added, merged, beside }: TeamFilePlan): boolean =>
  added.length + merged.length + beside.length > 0;

/** One sentence of what will happen. */
export function teamFileSentence({ way, teamName, added, merged, sameCount, beside }: TeamFilePlan): string {
  const count = added.length + merged.length + sameCount + beside.length;
  if (way === 'fresh') return `“${teamName}” comes in with ${counted(count, 'document')}.`;
  if (way === 'apart')
    return added.length === 0
      ? `“${teamName}” came in from this file before: there is nothing to take in.`
      : `A team of the same documents is here that was made apart from this one: it comes in as a second team, “${teamName}”, with ${counted(count, 'document')}, and nothing here changes.`;
  if (sameCount === count)
    return `“${teamName}” is here, and its ${counted(count, 'document')} in this file bring nothing new: there is nothing to take in.`;
  const parts = [
    `${are(added.length)} new`,
    `${are(merged.length)} merged with what is here`,
    `${are(sameCount)} the same`,
    ...(beside.length === 0
      ? []
      : [`${are(beside.length)} made apart from the one here and kept beside it, as “… ${BESIDE.trim()}”`]),
  ];
  return `“${teamName}” is here; of the ${counted(count, 'document')} in this file ${listed(parts)}.`;
}

const are = (count: number) => `${count} ${count === 1 ? 'is' : 'are'}`;
const counted = (count: number, thing: string) => `${count} ${thing}${count === 1 ? '' : 's'}`;
const listed = (parts: readonly string[]) => `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
