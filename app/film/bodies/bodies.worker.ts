import { bodyMaskOf } from '@icewright/engine';
import type { BodiesAsk, BodiesSaid } from './bodies-messages.ts';

addEventListener('message', ({ data }: MessageEvent<BodiesAsk>) => {
  const mask = bodyMaskOf(data, data.fit, data.rink, data.known);
  const said: BodiesSaid = { id: data.id, mask: 'kind' in mask ? null : mask };
  postMessage(said);
});
