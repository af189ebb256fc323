import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/**
 * `serve.ts` with all of our code in one plain file, and the path of that: read as TypeScript it takes more than a second
 * of processor to boot, and it is booted once for every kill. Libraries stay where they are.
 */
export async function bundledServe(): Promise<string> {
  const outDir = join(ROOT, 'node_modules/.cache/icewright-trial');
  await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      ssr: fileURLToPath(new URL('./serve.ts', import.meta.url)),
      outDir,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'serve.mjs' } },
    },
    ssr: { noExternal: [/^@icewright\//] },
  });
  return join(outDir, 'serve.mjs');
}
