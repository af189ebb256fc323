import { offerPins, rinkOf } from '@icewright/engine';
import type { OfferAsk, OfferSaid } from './offer-messages.ts';

/** Looks for pins in one picture; whoever no longer wants them ends the worker. */
addEventListener('message', ({ data }: MessageEvent<OfferAsk>) => {
  const say = (said: OfferSaid): void => postMessage(said);
  try {
    const offer = offerPins(data, rinkOf(data.sheet), data.known, share => say({ kind: 'progress', share }));
    say({ kind: 'done', offer });
  } catch (error) {
    say({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
  }
});
