import type { createServer, IncomingMessage, ServerResponse } from 'node:http';
import { Refusal } from '../refusal.ts';

/** Waits until a server listens; throws a refusal, one clear sentence, when it cannot. */
export function listen(server: ReturnType<typeof createServer>, port: number, host: string): Promise<void> {
  return new Promise((done, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') {
        fail(new Refusal(`Port ${port} is taken by another program. Choose another one with --port.`));
      } else if (error.code === 'EACCES')
        fail(new Refusal(`Port ${port} may not be used here. Choose one above 1023.`));
      else fail(error);
    });
    server.listen(port, host, done);
  });
}

/** Answers with what went wrong: a refusal as its sentence, anything else without its inside. */
export function sayRefusal(error: unknown, request: IncomingMessage, response: ServerResponse): void {
  const isKnown = error instanceof Refusal;
  if (!isKnown) console.error(error);
  if (response.headersSent || response.destroyed) {
    response.destroy();
    return;
  }
  // What is still coming in is not read any more.
  if (!request.complete) response.setHeader('Connection', 'close');
  response.writeHead(isKnown ? error.status : 500, { 'Content-Type': 'application/json; charset=utf-8' });
  const sentence = isKnown ? error.message : 'Something went wrong in the server; its window says what.';
  response.end(JSON.stringify({ sentence }));
}
