import { readFileSync } from 'node:fs';

// Lists the licence of every library the lock file names; with --all the development ones too.

interface Locked {
  packages: Record<string, { version?: string; license?: string; dev?: boolean; link?: boolean }>;
}

const all = process.argv.includes('--all');
const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as Locked;
const byLicence = new Map<string, string[]>();
for (const [path, entry] of Object.entries(lock.packages)) {
  if (!path.includes('node_modules/') || entry.link || (entry.dev && !all)) continue;
  const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
  const licence = entry.license ?? 'not stated in the lock file';
  byLicence.set(licence, [...(byLicence.get(licence) ?? []), `${name} ${entry.version ?? ''}`]);
}
for (const [licence, names] of [...byLicence].sort((a, b) => b[1].length - a[1].length)) {
  console.log(`${licence} (${names.length})`);
  for (const name of names.sort()) console.log(`  ${name}`);
}
