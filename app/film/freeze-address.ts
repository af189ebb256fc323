import { useEffect } from 'react';
import { useLocation, useSearch } from 'wouter';
import { addressOfFreeze, addressOfGame } from '../shell/addresses.ts';

/** Keeps the open freeze in the address of the page, so that Back, a reload and a link bring it back. */
export function useFreezeAddress(gameId: string, freezeId: string | undefined): void {
  const [, go] = useLocation();
  const asked = new URLSearchParams(useSearch()).get('freeze') ?? undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address follows the room, never the room the address
  useEffect(() => {
    if (asked === freezeId) return;
    // No step of Back: opening another freeze is no other page.
    go(freezeId === undefined ? addressOfGame(gameId) : addressOfFreeze(gameId, freezeId), { replace: true });
  }, [gameId, freezeId]);
}
