import { lookAtEveryPlace } from './every-place.ts';

lookAtEveryPlace({ width: 1024, height: 768, touch: false });
