import { spawn } from 'node:child_process';
import { homedir, platform } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { RunningServer, ServerOptions } from '@icewright/server';

const defaultPort = 4680;

const help = `npm start -- [--data FOLDER] [--port NUMBER] [--handouts ADDRESS:PORT] [--no-open]

Starts Icewright on this machine and opens it in the browser.

  --data FOLDER   where everything is kept (default: ${defaultDataFolder()})
  --port NUMBER   default ${defaultPort}; 0 takes any free one
  --handouts ADDRESS:PORT
                  opens the links for players, and nothing else, to your network: this machine's address in it,
                  as 192.168.1.20:4681. Without it they work on this machine only
  --no-open       do not open the browser
  --help          this text
`;

/** Ends the command with one sentence. */
class NotStarted extends Error {}

try {
  await main(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof NotStarted)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}

async function main(args: string[]): Promise<void> {
  const wanted = wantedFrom(args);
  if (wanted === null) {
    process.stdout.write(help);
    return;
  }
  const { dataFolder, port, handouts } = wanted;
  const server = await started({ dataFolder, port, ...(handouts === null ? {} : { handouts }) });
  const address = `http://localhost:${server.port}`;
  process.stdout.write(
    `Icewright: ${address}\nEverything is kept in ${dataFolder}\n${
      handouts === null ? '' : `Links for players open at http://${handouts.host}:${server.handoutPort}\n`
    }Ctrl-C ends it.\n`,
  );
  endOnSignal(server);
  if (wanted.opens) openBrowser(address);
}

/** The server is read in only when it is to start: it takes a second, which a word about an option need not wait for. */
async function started(asked: ServerOptions): Promise<RunningServer> {
  const { Refusal, startServer } = await import('@icewright/server');
  try {
    return await startServer(asked);
  } catch (error) {
    throw error instanceof Refusal ? new NotStarted(error.message) : error;
  }
}

interface Wanted {
  readonly dataFolder: string;
  readonly port: number;
  readonly opens: boolean;
  readonly handouts: { readonly host: string; readonly port: number } | null;
}

function wantedFrom(args: string[]): Wanted | null {
  let values: { data?: string; port?: string; handouts?: string; 'no-open'?: boolean; help?: boolean };
  try {
    ({ values } = parseArgs({
      args,
      options: {
        data: { type: 'string' },
        port: { type: 'string' },
        handouts: { type: 'string' },
        'no-open': { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }));
  } catch (error) {
    throw new NotStarted(`${(error as Error).message.split('\n')[0]} See --help.`);
  }
  if (values.help === true) return null;
  return {
    dataFolder: resolve(values.data ?? defaultDataFolder()),
    port: portFrom('--port', values.port ?? `${defaultPort}`),
    opens: values['no-open'] !== true,
    handouts: handoutsFrom(values.handouts),
  };
}

function portFrom(option: string, text: string): number {
  const port = Number(text);
  if (text === '' || !Number.isInteger(port) || port < 0 || port > 65535) {
    throw new NotStarted(`${option} takes a whole number from 0 to 65535, not ${text}.`);
  }
  return port;
}

function handoutsFrom(text: string | undefined): Wanted['handouts'] {
  if (text === undefined) return null;
  const [, host, port] = /^\[?(.+?)\]?:(\d+)$/.exec(text) ?? [];
  if (host === undefined || port === undefined) {
    throw new NotStarted(`--handouts takes an address and a port, as 192.168.1.20:4681, not ${text}.`);
  }
  return { host, port: portFrom('The port of --handouts', port) };
}

/** Where programs of this system keep what is the user's. */
function defaultDataFolder(): string {
  const home = homedir();
  if (platform() === 'darwin') return join(home, 'Library', 'Application Support', 'Icewright');
  if (platform() === 'win32')
    return join(process.env.LOCALAPPDATA ?? join(home, 'AppData', 'Local'), 'Icewright');
  return join(process.env.XDG_DATA_HOME ?? join(home, '.local', 'share'), 'icewright');
}

function endOnSignal(server: RunningServer): void {
  const end = () => {
    server.close().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  process.once('SIGINT', end);
  process.once('SIGTERM', end);
}

/** Opens the page with what the system has for it; without one the printed address has to do. */
function openBrowser(address: string): void {
  const [command, ...args] =
    platform() === 'darwin'
      ? ['open', address]
      : platform() === 'win32'
        ? ['cmd', '/c', 'start', '""', address]
        : ['xdg-open', address];
  const child = spawn(command!, args, { stdio: 'ignore', detached: true });
  child.on('error', () => {});
  child.unref();
}
