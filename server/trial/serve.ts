// A server in a process of its own, for tests that kill it. Boots, waits for a line, then starts on the given folder.
import { once } from 'node:events';
import { startServer } from '../start-server.ts';

process.stdout.write('booted\n');
await once(process.stdin, 'data');
const { port } = await startServer({ dataFolder: process.argv[2]!, port: 0, filmFixtures: null });
process.stdout.write(`port ${port}\n`);
