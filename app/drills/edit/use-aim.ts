import { useEffect, useState } from 'react';
import type { Aim } from './aim.ts';

/** The act that the next press on the board is for. A press anywhere else on the page means that something else is wanted. */
export function useAim(): readonly [Aim | null, (aim: Aim | null) => void] {
  const [aim, setAim] = useState<Aim | null>(null);
  useEffect(() => {
    if (aim === null) return;
    const down = (event: PointerEvent) => {
      if (!(event.target instanceof Element) || event.target.closest('.board') === null) setAim(null);
    };
    window.addEventListener('pointerdown', down, { capture: true });
    return () => window.removeEventListener('pointerdown', down, { capture: true });
  }, [aim]);
  return [aim, setAim];
}
