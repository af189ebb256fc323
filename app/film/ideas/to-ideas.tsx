import { Act } from '../../parts/act.tsx';

/** Where the page is narrow the ideas stand below the picture and the ice: this act in the head leads there. */
export function ToIdeas() {
  return <Act onPress={show}>To practise it</Act>;
}

function show(): void {
  const section = document.querySelector<HTMLElement>('.ideas');
  section?.scrollIntoView({ block: 'start', behavior: 'auto' });
  section?.querySelector('button')?.focus({ preventScroll: true });
}
