import { lookAtEveryPlace } from './every-place.ts';

lookAtEveryPlace({ width: 1440, height: 900, touch: false });
