import fs from 'node:fs';
import path from 'node:path';

/** Folders of the sources that have an index: each is a sub-path of the package. */
export function sourceFolders(folder) {
  return fs
    .readdirSync(path.join(folder, 'src'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && fs.existsSync(path.join(folder, 'src', entry.name, 'index.ts')))
    .map((entry) => entry.name)
    .sort();
}

/** The `exports` that the manifest must have for these folders. */
export function expectedExports(folders) {
  const entry = (file) => ({
    'boothwright-source': `./src/${file}.ts`,
    types: `./dist/${file}.d.ts`,
    default: `./dist/${file}.js`,
  });
  return {
    '.': entry('index'),
    ...Object.fromEntries(folders.map((name) => [`./${name}`, entry(`${name}/index`)])),
    './package.json': './package.json',
  };
}
