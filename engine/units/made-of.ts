/**
 * As `list.map(make)`, but at all times the same kind of list for the compiler. The kind that `map` gives changes once the code
 * round it has been compiled, hundreds of runs later, and with it goes all that was compiled for lists of the kind before.
 */
export const madeOf = <From, To extends object>(
  list: readonly From[],
  make: (one: From, index: number) => To,
): To[] => {
  const made: To[] = [];
  for (let i = 0; i < list.length; i++) made.push(make(list[i]!, i));
  return made;
};
