import type { Body } from '../drill/in-boards.ts';

/**
 * A body that is moved in place, metres and metres a second. Made here and not as a literal: literals whose names begin alike
 * are one kind of object for the compiler, and where one of them holds lists (a track, a way) each number stored in any makes garbage.
 * The numbers are set where they are declared, else they would be undefined first, with the same end; and not to whole ones, else the
 * first fraction would make it another kind of object.
 */
class MovingBody implements Body {
  xM = Number.NaN;
  yM = Number.NaN;
  xMps = Number.NaN;
  yMps = Number.NaN;
}

/** A body at rest there, metres, to be changed in place. */
export const movingBodyAt = (xM: number, yM: number): Body => {
  const body = new MovingBody();
  body.xM = xM;
  body.yM = yM;
  body.xMps = 0;
  body.yMps = 0;
  return body;
};
