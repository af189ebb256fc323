import { lookAtEveryPlace } from './every-place.ts';

lookAtEveryPlace({ width: 390, height: 844, touch: true });
