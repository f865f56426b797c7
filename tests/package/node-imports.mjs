import fs from 'node:fs';
import { builtinModules } from 'node:module';
import path from 'node:path';

const builtin = new Set(builtinModules);

/** Imports of Node's own modules in the compiled files and types of a package, as `file imports module`. */
export function nodeImports(dist) {
  const found = [];
  for (const file of fs.readdirSync(dist, { recursive: true, encoding: 'utf8' })) {
    if (!/\.(js|d\.ts)$/.test(file)) continue;
    const text = fs.readFileSync(path.join(dist, file), 'utf8');
    for (const [, name] of text.matchAll(/(?:from|import\(?)\s*['"]([^'"]+)['"]/g)) {
      if (name.startsWith('node:') || builtin.has(name.split('/')[0])) found.push(`${file} imports ${name}`);
    }
  }
  return found;
}
