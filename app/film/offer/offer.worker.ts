import { offerPins, rinkOf } from '@icewright/engine';
import type { OfferAsk, OfferSaid } from './offer-messages.ts';

/** Looks for pins in one picture; whoever no longer wants them ends the worker. */
addEventListener('message', ({ data }: MessageEvent<OfferAsk>) => {
  const { widthPx, heightPx, rgba, sheet, known } = data;
  const offer = offerPins({ widthPx, heightPx, rgba }, rinkOf(sheet), known, share =>
    say({ kind: 'progress', share }),
  );
  say({ kind: 'done', offer });
});

const say = (said: OfferSaid): void => postMessage(said);
