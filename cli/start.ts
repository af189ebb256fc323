import { spawn } from 'node:child_process';
import { homedir, platform } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { Refusal, type RunningServer, startServer } from '@icewright/server';

const defaultPort = 4680;

const help = `npm start -- [--data FOLDER] [--port NUMBER] [--no-open]

Starts Icewright on this machine and opens it in the browser.

  --data FOLDER   where everything is kept (default: ${defaultDataFolder()})
  --port NUMBER   default ${defaultPort}; 0 takes any free one
  --no-open       do not open the browser
  --help          this text
`;

try {
  await main(process.argv.slice(2));
} catch (error) {
  if (!(error instanceof Refusal)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}

async function main(args: string[]): Promise<void> {
  const wanted = wantedFrom(args);
  if (wanted === null) {
    process.stdout.write(help);
    return;
  }
  const server = await startServer({ dataFolder: wanted.dataFolder, port: wanted.port });
  const address = `http://localhost:${server.port}`;
  process.stdout.write(
    `Icewright: ${address}\nEverything is kept in ${wanted.dataFolder}\nCtrl-C ends it.\n`,
  );
  endOnSignal(server);
  if (wanted.opens) openBrowser(address);
}

function wantedFrom(args: string[]): { dataFolder: string; port: number; opens: boolean } | null {
  let values: { data?: string; port?: string; 'no-open'?: boolean; help?: boolean };
  try {
    ({ values } = parseArgs({
      args,
      options: {
        data: { type: 'string' },
        port: { type: 'string' },
        'no-open': { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }));
  } catch (error) {
    throw new Refusal(`${(error as Error).message.split('\n')[0]} See --help.`);
  }
  if (values.help === true) return null;
  const port = Number(values.port ?? defaultPort);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Refusal(`--port takes a whole number from 0 to 65535, not ${values.port}.`);
  }
  return { dataFolder: resolve(values.data ?? defaultDataFolder()), port, opens: values['no-open'] !== true };
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
