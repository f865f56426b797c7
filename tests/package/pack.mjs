import fs from 'node:fs';
import path from 'node:path';
import { root } from '../../scripts/ensure-installed.mjs';
import { execute } from './execute.mjs';

/** Packs a folder as it would be published and answers the file and what is in it. */
export function pack(folder, destination) {
  const printed = execute(
    'npm',
    ['pack', folder, '--json', '--ignore-scripts', '--offline', '--pack-destination', destination],
    {
      cwd: destination,
    },
  );
  const [{ filename, files, size }] = JSON.parse(printed);
  return { tarball: path.join(destination, filename), files: files.map((file) => file.path), size };
}

/** Folders of what a package needs at run time, as installed in this checkout, each once. */
export function runtimeDependencies(folder, seen = new Map()) {
  const { dependencies = {} } = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));
  for (const name of Object.keys(dependencies)) {
    if (seen.has(name)) continue;
    const installed = [path.join(folder, 'node_modules', name), path.join(root, 'node_modules', name)].find((place) =>
      fs.existsSync(place),
    );
    if (installed === undefined) throw new Error(`${name} is not installed in this checkout`);
    seen.set(name, installed);
    runtimeDependencies(installed, seen);
  }
  return seen;
}
