import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { type Follow, followAfter, PAGE_TIMES } from './follow.ts';

/** Says each value on to those who follow, as long as something moves. */
export function useFollow<Value>(value: Value, moves: boolean): Follow<Value> {
  const [follow] = useState(() => followAfter<Value>(PAGE_TIMES));
  useLayoutEffect(() => {
    if (moves) follow.tell(value);
    else follow.rest();
  }, [follow, value, moves]);
  return follow;
}

/** The value as it is at rest; while a hand moves the one that moves along, shown in turn with the others who follow. */
export function useFollowed<Value>(follow: Follow<Value>, atRest: Value): Value {
  const [moved, setMoved] = useState<{ readonly since: Value; readonly value: Value } | null>(null);
  const latest = useRef(atRest);
  latest.current = atRest;
  useEffect(
    () => follow.join(value => flushSync(() => setMoved({ since: latest.current, value }))),
    [follow],
  );
  // A newer rest has overtaken what moved.
  return moved !== null && moved.since === atRest ? moved.value : atRest;
}
